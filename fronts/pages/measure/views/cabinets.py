"""Cabinets: entered, changed, copied, moved, deleted."""

from collections.abc import Sequence
from dataclasses import replace
from typing import Any, cast

from django.http import HttpResponse
from django.urls import reverse
from django.utils import timezone

from fronts.models import Cabinet
from fronts.pages.measure.forms.cabinets import CabinetForm, CopyForm, NewCabinetForm
from fronts.pages.measure.rows.kitchen import cabinet_row, wall_id, wall_rows
from fronts.pages.measure.views.editor import Editor, kept, show_editor
from fronts.pages.measure.views.parts import GONE, PAGE, done
from fronts.pages.shared.job_view import found_or_404, job_view, posted, who
from fronts.pages.shared.kitchen_form import KitchenForm
from fronts.rules.kinds import CABINET_KINDS, CabinetKind
from fronts.rules.standards import EMPTY
from fronts.selectors.kitchens import cabinet_of, cabinets_of, with_openings
from fronts.services.cabinets import (
    cabinet_change,
    cabinet_copy,
    cabinet_create,
    cabinet_delete,
    cabinet_move,
    what_goes_with,
)
from fronts.services.saving import AskFirst
from fronts.snapshot import kitchen_of
from fronts.snapshot.cabinets import cabinet_facts
from fronts.snapshot.standards import standard_of
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import render_page, wants_part


@job_view("edit_kitchen")
def cabinet_new(request: SignedInRequest, job: Job) -> HttpResponse:
    """Enter a cabinet; the form of the next one follows."""
    form = new_cabinet_form(request, job)
    editor = new_cabinet_editor(job, form)
    if not form.is_bound:
        return show_editor(request, editor)

    def save() -> None:
        cabinet_create(job=job, facts=form.entered, **who(request))

    refusal = kept(request, editor, save)
    if refusal is not None:
        return refusal
    label, cabinets = form.cleaned_data["label"], list(cabinets_of(job))
    kind = form.cleaned_data["kind"]
    upcoming = NewCabinetForm(
        unit=job.unit, cabinets=kitchen_of(job).cabinets, kind=kind, auto_id="cabinet-new-%s"
    )
    more = {
        "template": "fronts/measure/edit.html#editor",
        "editor": new_cabinet_editor(job, upcoming),
        "form": upcoming,
        "in_place": True,
        **added(cabinets, label, job.unit),
    }
    return done(request, job, "cabinet-new", f"Cabinet {label} is entered.", **more)


def added(cabinets: Sequence[Cabinet], label: str, unit: str) -> dict[str, Any]:
    """What shows a new cabinet: after the others of its wall, or with its wall."""
    cabinet = next(each for each in cabinets if each.label == label)
    group = [each for each in cabinets if each.wall == cabinet.wall]
    shown: dict[str, Any] = {"also": ("added",), "cabinet": cabinet_row(cabinet, unit)}
    if len(group) == 1:
        return shown | {"group": wall_rows(group, unit)[0]}
    return shown | {"group_id": wall_id(cabinet.wall)}


def new_cabinet_form(request: SignedInRequest, job: Job) -> NewCabinetForm:
    """The form of the next cabinet, of the kind that is asked for."""
    asked = (request.POST or request.GET).get("kind", "")
    return NewCabinetForm(
        posted(request),
        unit=job.unit,
        cabinets=kitchen_of(job).cabinets,
        kind=cast(CabinetKind, asked if asked in CABINET_KINDS else "base"),
        auto_id="cabinet-new-%s",
    )


def new_cabinet_editor(job: Job, form: KitchenForm) -> Editor:
    """Where the next cabinet is entered."""
    form.fields["width"].widget.attrs["autofocus"] = True
    return Editor(
        job=job,
        form=form,
        target="cabinet-new",
        heading="New cabinet",
        action=reverse("fronts:cabinet-new", args=[job.pk]),
        preview=reverse("fronts:cabinet-new-preview", args=[job.pk]),
        button="Enter the cabinet",
        leave="Close",
    )


@job_view("edit_kitchen")
def cabinet_edit(request: SignedInRequest, job: Job, cabinet_id: int) -> HttpResponse:
    """Change a cabinet's sizes and place."""
    cabinet = found_or_404(cabinet_of, job, cabinet_id)
    target = f"cabinet-{cabinet.pk}"
    held = replace(cabinet_facts(cabinet), standard=EMPTY)
    form = CabinetForm(posted(request), unit=job.unit, cabinet=held, auto_id=f"{target}-%s")
    wall = cabinet.wall
    editor = Editor(
        job=job,
        form=form,
        target=target,
        heading=f"Cabinet {cabinet.label}",
        action=reverse("fronts:cabinet-edit", args=[job.pk, cabinet.pk]),
        preview=reverse("fronts:cabinet-preview", args=[job.pk, cabinet.pk]),
        drawn=cabinet.label,
        rows=(cabinet,),
        held=held,
    )
    if not form.is_bound:
        return show_editor(request, editor)

    def save() -> None:
        facts = replace(form.entered, standard=standard_of(cabinet))
        cabinet_change(cabinet=cabinet, facts=facts, **who(request))

    refusal = kept(request, editor, save)
    if refusal is not None:
        return refusal
    said = f"Cabinet {cabinet.label} is saved."
    if cabinet.wall != wall:
        return done(request, job, "cabinets", said, anchor=target)
    row = cabinet_row(with_openings(cabinet), job.unit)
    return done(request, job, target, said, template=f"{PAGE}#cabinet", cabinet=row)


@job_view("edit_kitchen")
def cabinet_copy_page(request: SignedInRequest, job: Job, cabinet_id: int) -> HttpResponse:
    """Copy a cabinet with its openings and boxes to the end of its run."""
    cabinet = found_or_404(cabinet_of, job, cabinet_id)
    editor = _copy_editor(request, job, cabinet)
    form = editor.form
    if not form.is_bound:
        return show_editor(request, editor)
    made: list[Cabinet] = []

    def save() -> None:
        copy = cabinet_copy(cabinet=cabinet, **who(request), **form.values)
        made.append(copy)

    refusal = kept(request, editor, save)
    if refusal is not None:
        return refusal
    said = f"Cabinet {cabinet.label} is copied as {made[0].label}."
    return done(request, job, "cabinets", said, anchor=f"cabinet-{made[0].pk}")


def _copy_editor(request: SignedInRequest, job: Job, cabinet: Cabinet) -> Editor:
    others = kitchen_of(job).cabinets
    form = CopyForm(posted(request), unit=job.unit, cabinet=cabinet, cabinets=others)
    form.fields["label"].widget.attrs["autofocus"] = True
    return Editor(
        job=job,
        form=form,
        target=f"cabinet-{cabinet.pk}",
        heading=f"Copy cabinet {cabinet.label}",
        action=reverse("fronts:cabinet-copy", args=[job.pk, cabinet.pk]),
        button="Copy it",
        hint="Its openings and boxes come with it. A door on hand that it names stays where it is.",
    )


@job_view("edit_kitchen", "POST")
def cabinet_move_by(request: SignedInRequest, job: Job, cabinet_id: int) -> HttpResponse:
    """Move a cabinet one place up or down among those of its wall."""
    cabinet = found_or_404(cabinet_of, job, cabinet_id)
    order = list(Cabinet.objects.filter(job=job).order_by("position", "pk"))
    place = next(i for i, each in enumerate(order) if each.pk == cabinet.pk)
    up = request.POST.get("to") == "up"
    places = range(place - 1, -1, -1) if up else range(place + 1, len(order))
    to = next((i for i in places if order[i].wall == cabinet.wall), place)
    if to != place:
        cabinet_move(cabinet=cabinet, to=to, **who(request))
    said = f"Cabinet {cabinet.label} is moved."
    return done(request, job, "cabinets", said, anchor=f"cabinet-{cabinet.pk}")


@job_view("edit_kitchen")
def cabinet_delete_page(request: SignedInRequest, job: Job, cabinet_id: int) -> HttpResponse:
    """Say what goes with a cabinet, then delete it."""
    cabinet = found_or_404(cabinet_of, job, cabinet_id)
    label = cabinet.label
    if request.method == "POST":
        cabinet_delete(cabinet=cabinet, at=timezone.now(), confirmed=True, by=request.user)
        part, said = f"cabinet-{cabinet_id}", f"Cabinet {label} is deleted."
        return done(request, job, part, said, template=GONE)
    question = AskFirst(f"Delete cabinet {label}?", what_goes_with(cabinet))
    action = reverse("fronts:cabinet-delete", args=[job.pk, cabinet.pk])
    return ask(request, job, f"cabinet-{cabinet.pk}", question, action, f"Delete cabinet {label}")


def ask(
    request: SignedInRequest, job: Job, target: str, question: AskFirst, action: str, button: str
) -> HttpResponse:
    """Ask before what can't be undone, naming what goes with it."""
    context = {
        "job": job,
        "step": "measure",
        "target": target,
        "question": question,
        "action": action,
        "button": button,
        "in_place": wants_part(request),
    }
    return render_page(request, "fronts/measure/ask.html", context, partial="ask")
