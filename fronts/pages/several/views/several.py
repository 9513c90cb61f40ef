"""The page on which several rows are chosen, and what is done to them."""

from collections.abc import Callable, Mapping
from functools import partial
from typing import Any

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import redirect
from django.urls import reverse

from fronts.models import Cabinet, Front, Thing
from fronts.pages.several.forms.chosen import (
    COPY,
    DELETE,
    FRONTS,
    MIRROR,
    SeveralForm,
    Standing,
    jobs_to_copy_to,
)
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.item_choice import items_of
from fronts.pages.shared.job_view import job_view, posted, who
from fronts.pages.shared.wall_addresses import new_walls_said, wall_query, walls_in
from fronts.rules.kinds import CABINET_KINDS
from fronts.rules.kitchen import Cabinet as CabinetFacts
from fronts.rules.kitchen import Kitchen
from fronts.rules.runs import on_walls, runs_of
from fronts.rules.thing_kinds import THING_KINDS
from fronts.selectors.kitchens import fronts_in
from fronts.services.several import (
    cabinets_mirror,
    fronts_set,
    standing_copy,
    standing_delete,
)
from fronts.snapshot import kitchen_of
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import render_page

PAGE = "fronts/several/page.html"
WALLS_TO = "walls-to"
"""The part of it that another job to copy to changes."""
Rows = Mapping[str, Cabinet | Thing]


@job_view("edit_kitchen")
def job_several(request: SignedInRequest, job: Job) -> HttpResponse:
    """Show what may be chosen, or do what the button says to what was chosen."""
    rows, wall = rows_by_key(job), request.GET.get("wall", "")
    form = _form(request, job, rows, wall)
    act = _ACTS.get(form.do)
    if form.is_bound and act is None:
        form.add_error(None, "Press one of the buttons.")
    return form_answer(
        request,
        form,
        show=partial(_show, request, job, form, wall),
        save=lambda: act(request, job, form, rows) if act else "",
        done=partial(_done, request, job, form, rows),
    )


def _form(request: SignedInRequest, job: Job, rows: Rows, wall: str) -> SeveralForm:
    """The form as it was sent, or with what the address chooses."""
    kitchen = kitchen_of(job)
    standing, jobs = standing_rows(kitchen, rows), jobs_to_copy_to(job)
    asked = (request.POST or request.GET).get("to", "")
    to = next((key for key, _ in jobs if str(key) == asked), job.pk)
    walls = walls_in(kitchen)
    return SeveralForm(
        posted(request),
        standing=standing,
        walls=walls,
        jobs=jobs,
        to=to,
        walls_to=walls if to == job.pk else walls_in(kitchen_of(Job.objects.get(pk=to))),
        items=items_of(job),
        chosen=_chosen(standing, request.GET.get("only", ""), wall),
        at=reverse("fronts:job-several", args=[job.pk]),
    )


def rows_by_key(job: Job) -> Rows:
    """Cabinets and things of a job by their keys on the page."""
    cabinets = {f"cabinet-{row.pk}": row for row in Cabinet.objects.filter(job=job)}
    return cabinets | {f"thing-{row.pk}": row for row in Thing.objects.filter(job=job)}


def standing_rows(kitchen: Kitchen, rows: Rows) -> list[Standing]:
    """What stands on the walls, in its order along them."""
    keys = {row.label: key for key, row in rows.items()}
    return [
        Standing(keys[placed.what.label], *_described(placed.what))
        for placed in on_walls(runs_of(kitchen))
    ]


def _described(what: Any) -> tuple[str, str, str]:
    if isinstance(what, CabinetFacts):
        return f"{what.label} {CABINET_KINDS[what.kind].says.lower()}", what.wall, what.kind
    said = f"{what.label} {THING_KINDS[what.kind].says.lower()} {what.name}".strip()
    return said, what.wall, what.kind


def _chosen(standing: list[Standing], only: str, wall: str) -> list[str]:
    """What an address chooses: a kind, or everything, on a wall or on all of them."""
    return [
        row.key for row in standing if only in ("all", row.kind) and (not wall or row.wall == wall)
    ]


def _show(
    request: SignedInRequest, job: Job, form: SeveralForm, wall: str, *, status: int = 200
) -> HttpResponse:
    chosen = set(form["rows"].value() or ())
    walls = {
        name: [(row, row.key in chosen) for row in form.standing if row.wall == name]
        for name in form.walls
        if not wall or name == wall
    }
    kinds = [("all", "Everything"), *((kind, f"{traits.says} cabinets")
                                     for kind, traits in CABINET_KINDS.items())]  # fmt: skip
    context = {
        "job": job, "step": "measure", "form": form, "walls": walls, "wall": wall, "kinds": kinds,
    }  # fmt: skip
    return render_page(request, PAGE, context, partial=WALLS_TO, status=status)


def _done(
    request: SignedInRequest, job: Job, form: SeveralForm, rows: Rows, said: str
) -> HttpResponse:
    """Back to the wall, where what was done is said; what is sent once more was done already."""
    to, wall = job.pk, ""
    if said and form.do == COPY:
        to, wall = int(form.cleaned_data["to"]), form.wall_to
    elif said:
        wall = rows[form.cleaned_data["rows"][0]].wall
    messages.success(request, said or "It is done already.")
    page = reverse("fronts:job-measure", args=[to])
    return redirect(f"{page}{wall_query(wall)}" if wall else page)


def _fronts(request: SignedInRequest, job: Job, form: SeveralForm, rows: Rows) -> str:
    which = form.cleaned_data["which"]
    cabinets = [row.pk for row in _of(form, rows) if isinstance(row, Cabinet)]
    fronts: list[Front] = [
        front for front in fronts_in(job, cabinets)
        if which in ("", front.opening.closing.front)
    ]  # fmt: skip
    count = fronts_set(job=job, fronts=fronts, values=form.values, **who(request))
    return f"{count} front{'' if count == 1 else 's'} changed."


def _copy(request: SignedInRequest, job: Job, form: SeveralForm, rows: Rows) -> str:
    given = form.cleaned_data
    to = Job.objects.get(shop=job.shop_id, pk=int(given["to"]))
    to.shop = job.shop
    wall = form.wall_to
    made = standing_copy(
        job=job,
        to=job if to.pk == job.pk else to,
        wall=wall,
        rows=_of(form, rows),
        turned=given["turned"],
        **who(request),
    )
    said_of_wall = new_walls_said(form.walls_to, [wall])
    return f"Copied to wall {wall}: {', '.join(made)}. {said_of_wall}".rstrip()


def _mirror(request: SignedInRequest, job: Job, form: SeveralForm, rows: Rows) -> str:
    cabinets = [row for row in _of(form, rows) if isinstance(row, Cabinet)]
    cabinets_mirror(job=job, cabinets=cabinets, **who(request))
    return f"Mirrored: {', '.join(row.label for row in cabinets) or 'nothing'}."


def _delete(request: SignedInRequest, job: Job, form: SeveralForm, rows: Rows) -> str:
    chosen = _of(form, rows)
    standing_delete(job=job, rows=chosen, **who(request))
    return f"Deleted: {', '.join(row.label for row in chosen)}."


def _of(form: SeveralForm, rows: Rows) -> list[Cabinet | Thing]:
    return [rows[key] for key in form.cleaned_data["rows"]]


Act = Callable[[SignedInRequest, Job, SeveralForm, Rows], str]
_ACTS: Mapping[str, Act] = {FRONTS: _fronts, COPY: _copy, MIRROR: _mirror, DELETE: _delete}
