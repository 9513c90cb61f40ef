"""The drawing that follows while a form is being typed in; nothing is kept."""

from dataclasses import replace
from typing import Any

from django.http import Http404, HttpResponse
from django.shortcuts import render
from django_htmx.http import reswap, retarget

from fronts.figures.findings import findings_of, places_at
from fronts.notebook import openings_resized
from fronts.pages.measure.forms.cabinets import CabinetForm
from fronts.pages.measure.forms.door_choice import door_labels
from fronts.pages.measure.forms.new_cabinet import NewCabinetForm
from fronts.pages.measure.forms.new_row import NewRowForm
from fronts.pages.measure.forms.openings import OpeningForm
from fronts.pages.measure.rows.drawing import drawing_of, with_cabinet
from fronts.pages.measure.rows.walls import wall_shown
from fronts.pages.measure.things.cells import row_form, typed_cells
from fronts.pages.shared.finding_links import finding_row
from fronts.pages.shared.item_choice import items_of
from fronts.pages.shared.job_view import found_or_404, job_view
from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.past_cabinet import ends_past
from fronts.rules.runs import stood
from fronts.rules.validity import tidied
from fronts.selectors.kitchens import cabinet_of, opening_of
from fronts.selectors.schedules import schedule_for
from fronts.services.saved_faces import faces_of
from fronts.snapshot import kitchen_of
from shopjobs.access import SignedInRequest
from shopjobs.models import Job

PREVIEW = "fronts/measure/edit.html#preview"
NOT_YET = "fronts/measure/edit.html#not-yet"
AS_TYPED = "fronts/measure/page.html#as-typed"
AS_TYPED_NOT_YET = "fronts/measure/page.html#as-typed-not-yet"


@job_view("edit_kitchen", "GET")
def cabinet_new_preview(request: SignedInRequest, job: Job) -> HttpResponse:
    """The new cabinet with its face, as far as it is typed."""
    kitchen = kitchen_of(job)
    form = NewCabinetForm(request.GET, unit=job.unit, cabinets=stood(kitchen).cabinets, kind="base")
    if not form.is_valid() or _taken(kitchen, form.entered.label):
        return _not_yet(request, "cabinet-new")
    cabinet = form.entered
    return _drawn(request, job, "cabinet-new", with_cabinet(kitchen, cabinet, None), cabinet)


@job_view("edit_kitchen", "GET")
def cabinet_preview(request: SignedInRequest, job: Job, cabinet_id: int) -> HttpResponse:
    """The cabinet with its openings, at the sizes that are typed."""
    row = found_or_404(cabinet_of, job, cabinet_id)
    target, kitchen = f"cabinet-{row.pk}", kitchen_of(job)
    before = kitchen.cabinet(row.label)
    form = CabinetForm(request.GET, unit=job.unit)
    if not form.is_valid() or _taken(kitchen, form.entered.label, but=before):
        return _not_yet(request, target)
    size = form.entered.width, form.entered.height
    openings = openings_resized(before, *size, kitchen.job.unit, kitchen.job.step)
    cabinet = replace(form.entered, openings=tuple(openings), standard=before.standard)
    if any(ends_past(opening, cabinet) for opening in cabinet.openings):
        return _not_yet(request, target)
    return _drawn(request, job, target, with_cabinet(kitchen, cabinet, before.label), cabinet)


@job_view("edit_kitchen", "GET")
def opening_new_preview(request: SignedInRequest, job: Job, cabinet_id: int) -> HttpResponse:
    """The cabinet with the new opening, as far as it is typed."""
    cabinet = found_or_404(cabinet_of, job, cabinet_id)
    return _opening(request, job, cabinet.label, f"opening-new-{cabinet.pk}", None)


@job_view("edit_kitchen", "GET")
def opening_preview(request: SignedInRequest, job: Job, opening_id: int) -> HttpResponse:
    """The cabinet with the opening as it is typed."""
    opening = found_or_404(opening_of, job, opening_id)
    target = f"opening-{opening.pk}"
    return _opening(request, job, opening.cabinet.label, target, opening.label)


@job_view("edit_kitchen", "GET")
def face_preview(request: SignedInRequest, job: Job) -> HttpResponse:
    """The cabinet of a row with the face that is typed into its cell."""
    for key, cells in typed_cells(request.GET).items():
        if not key.startswith("cabinet-"):
            break
        row = found_or_404(row_form, job, key, cells, None)
        label = str(row.row)
        if not row.form.is_valid() or "label" in cells:
            return _as_typed_not_yet(request)
        openings = row.face()
        kitchen = kitchen_of(job)
        before = kitchen.cabinet(label)
        if openings is None:
            openings = before.openings
        cabinet = replace(before, openings=tuple(openings))
        return _as_typed(request, job, with_cabinet(kitchen, cabinet, label), label)
    raise Http404


@job_view("edit_kitchen", "GET")
def row_new_preview(request: SignedInRequest, job: Job) -> HttpResponse:
    """The cabinet that the empty row comes to, as far as it is typed."""
    kitchen = kitchen_of(job)
    wall = wall_shown(job, kitchen, request.GET)
    faces = faces_of(job.shop)
    form = NewRowForm(request.GET, kitchen=kitchen, wall=wall, asked={}, faces=faces)
    if not form.is_valid() or not form.entered.cabinets:
        return _as_typed_not_yet(request)
    cabinet = form.entered.cabinets[0]
    return _as_typed(request, job, with_cabinet(kitchen, cabinet, None), cabinet.label)


def _as_typed(request: SignedInRequest, job: Job, kitchen: Kitchen, label: str) -> HttpResponse:
    kitchen = stood(kitchen)
    drawing = drawing_of(schedule_for(job, kitchen), kitchen, label)
    return render(request, AS_TYPED, {"drawing": drawing, "label": label})


def _as_typed_not_yet(request: SignedInRequest) -> HttpResponse:
    """Leave the drawing as it is, and say that it waits."""
    return reswap(render(request, AS_TYPED_NOT_YET), "none")


def _opening(
    request: SignedInRequest, job: Job, cabinet: str, target: str, label: str | None
) -> HttpResponse:
    kitchen = kitchen_of(job)
    around = kitchen.cabinet(cabinet)
    before = next((each for each in around.openings if each.label == label), None)
    asked: dict[str, Any] = {"doors": door_labels(job), "items": items_of(job)}
    form = OpeningForm(request.GET, unit=job.unit, before=before, **asked)
    if not form.is_valid():
        return _not_yet(request, target)
    opening = tidied(form.entered)
    taken = {each.label for each in around.openings} - {label}
    if opening.label in taken or ends_past(opening, around):
        return _not_yet(request, target)
    openings = [opening if each is before else each for each in around.openings]
    if before is None:
        openings.append(opening)
    changed = replace(around, openings=tuple(openings))
    return _drawn(request, job, target, with_cabinet(kitchen, changed, around.label), changed)


def _taken(kitchen: Kitchen, label: str, *, but: Cabinet | None = None) -> bool:
    return any(cabinet.label == label for cabinet in kitchen.cabinets if cabinet is not but)


def _drawn(
    request: SignedInRequest, job: Job, target: str, kitchen: Kitchen, cabinet: Cabinet
) -> HttpResponse:
    kitchen = stood(kitchen)
    cabinet, found = kitchen.cabinet(cabinet.label), schedule_for(job, kitchen)
    about = findings_of(found, places_at(cabinet, found.fronts_of(cabinet.label)))
    context = {
        "drawing": drawing_of(found, kitchen, cabinet.label),
        "findings": [finding_row(each) for each in about.every],
        "target": target,
    }
    return render(request, PREVIEW, context)


def _not_yet(request: SignedInRequest, target: str) -> HttpResponse:
    """Leave the drawing as it is, and say that it is not what the form says."""
    return reswap(retarget(render(request, NOT_YET), f"#{target}-not-yet"), "innerHTML")
