"""What each door on hand could become, drawn over its opening before it is accepted."""

from dataclasses import dataclass
from functools import partial

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import redirect
from django.utils.safestring import SafeString, mark_safe

from fronts.drawings.door_use import door_alone, door_over_opening
from fronts.figures.fronts import AS_IT_IS, trims_of
from fronts.figures.sizes import size
from fronts.pages.measure.forms.door_uses import DoorUsesForm
from fronts.pages.shared.finding_links import FindingRow, finding_row
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import job_view, posted, who
from fronts.rules.door_uses import ProposedUse, proposed_uses
from fronts.rules.kitchen import DoorOnHand
from fronts.rules.rect import Rect
from fronts.services.door_uses import door_uses_accept
from fronts.snapshot import kitchen_of
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import render_page

PAGE = "fronts/measure/door_uses.html"


@dataclass(frozen=True, slots=True)
class DoorRow:
    """A door, and what it could become; without a `front` it serves nowhere."""

    label: str
    size: str
    drawing: SafeString
    front: str = ""
    becomes: str = ""
    decided: bool = False
    findings: tuple[FindingRow, ...] = ()


@job_view("edit_kitchen")
def job_door_uses(request: SignedInRequest, job: Job) -> HttpResponse:
    """Show the proposed uses, or accept those that were chosen."""
    kitchen = kitchen_of(job)
    uses = {use.door.label: use for use in proposed_uses(kitchen)}
    free = [label for label, use in uses.items() if not use.decided]
    form = DoorUsesForm(posted(request), doors=free)

    def save() -> int:
        chosen = [uses[label] for label in form.cleaned_data["doors"]]
        return door_uses_accept(job=job, uses=chosen, **who(request))

    rows = [_row(door, uses.get(door.label), kitchen.job.unit) for door in kitchen.doors_on_hand]
    return form_answer(
        request, form, show=partial(_show, request, job, form, rows), save=save,
        done=partial(_accepted, request, job),
    )  # fmt: skip


def _row(door: DoorOnHand, use: ProposedUse | None, unit: str) -> DoorRow:
    sizes = size(unit, door.width, door.height, door.thickness)
    if use is None:
        return DoorRow(door.label, sizes, _safe(door_alone(door)))
    hole = Rect(use.x, use.y, use.opening.width, use.opening.height)
    over = door_over_opening(door, use.front, hole)
    trims = trims_of(use.front.trim, unit)
    return DoorRow(
        label=door.label,
        size=sizes,
        drawing=_safe(over),
        front=use.front.label,
        becomes=trims or AS_IT_IS,
        decided=use.decided,
        findings=tuple(finding_row(each) for each in use.findings),
    )


def _safe(svg: str) -> SafeString:
    return mark_safe(svg)  # noqa: S308 - drawn by us, every word in it escaped


def _show(
    request: SignedInRequest,
    job: Job,
    form: DoorUsesForm,
    rows: list[DoorRow],
    *,
    status: int = 200,
) -> HttpResponse:
    chosen = set(form["doors"].value() or ())
    context = {
        "job": job,
        "step": "measure",
        "form": form,
        "rows": [(row, row.label in chosen) for row in rows],
        "any_free": any(row.front and not row.decided for row in rows),
    }
    return render_page(request, PAGE, context, status=status)


def _accepted(request: SignedInRequest, job: Job, count: int | None) -> HttpResponse:
    doors = "1 door becomes a front." if count == 1 else f"{count} doors become fronts."
    messages.success(request, doors if count else "It is done already.")
    return redirect("fronts:job-door-uses", job.pk)
