"""The drawing that follows while a form is being typed in; nothing is kept."""

from dataclasses import replace

from django.http import HttpResponse
from django.shortcuts import render
from django_htmx.http import reswap, retarget

from fronts.models import Cabinet, Opening
from fronts.pages.measure.forms.cabinets import CabinetForm, NewCabinetForm
from fronts.pages.measure.forms.openings import OpeningForm, door_names
from fronts.pages.measure.rows.drawing import drawing_of, findings_about, with_cabinet
from fronts.pages.shared.finding_links import finding_row
from fronts.pages.shared.job_view import found_or_404, job_view
from fronts.rules.kitchen import Cabinet as CabinetFacts
from fronts.rules.kitchen import Kitchen
from fronts.rules.kitchen import Opening as OpeningFacts
from fronts.rules.plain_face import face_openings
from fronts.rules.schedule import schedule
from fronts.selectors.kitchens import cabinet_of, opening_of
from fronts.services.label_clashes import past_cabinet
from fronts.snapshot import kitchen_of
from fronts.snapshot.cabinets import cabinet_facts, opening_facts
from shopjobs.access import SignedInRequest
from shopjobs.models import Job

PREVIEW = "fronts/measure/edit.html#preview"
NOT_YET = "fronts/measure/edit.html#not-yet"


@job_view("edit_kitchen", "GET")
def cabinet_new_preview(request: SignedInRequest, job: Job) -> HttpResponse:
    """The new cabinet with its face, as far as it is typed."""
    kitchen = kitchen_of(job)
    form = NewCabinetForm(request.GET, unit=job.unit, cabinets=kitchen.cabinets, kind="base")
    if not form.is_valid() or form.values["label"] in {each.label for each in kitchen.cabinets}:
        return _not_yet(request, "cabinet-new")
    face, values = form.face_values(), form.values
    openings = face_openings(face, values["width"], values["height"]) if face else ()
    facts = cabinet_facts(Cabinet(**values), openings)
    return _drawn(request, "cabinet-new", with_cabinet(kitchen, facts, None), facts)


@job_view("edit_kitchen", "GET")
def cabinet_preview(request: SignedInRequest, job: Job, cabinet_id: int) -> HttpResponse:
    """The cabinet with its openings, at the sizes that are typed."""
    cabinet = found_or_404(cabinet_of, job, cabinet_id)
    target, kitchen = f"cabinet-{cabinet.pk}", kitchen_of(job)
    form = CabinetForm(request.GET, unit=job.unit)
    before = _facts(kitchen, cabinet.label)
    if not form.is_valid() or not _free(kitchen, form.values["label"], before):
        return _not_yet(request, target)
    row = Cabinet(**form.values)
    facts = replace(cabinet_facts(row, before.openings), standard=before.standard)
    if any(past_cabinet(_row(each), row, job.unit) for each in before.openings):
        return _not_yet(request, target)
    return _drawn(request, target, with_cabinet(kitchen, facts, before.label), facts)


@job_view("edit_kitchen", "GET")
def opening_new_preview(request: SignedInRequest, job: Job, cabinet_id: int) -> HttpResponse:
    """The cabinet with the new opening, as far as it is typed."""
    cabinet = found_or_404(cabinet_of, job, cabinet_id)
    return _opening(request, job, cabinet, f"opening-new-{cabinet.pk}", None)


@job_view("edit_kitchen", "GET")
def opening_preview(request: SignedInRequest, job: Job, opening_id: int) -> HttpResponse:
    """The cabinet with the opening as it is typed."""
    opening = found_or_404(opening_of, job, opening_id)
    return _opening(request, job, opening.cabinet, f"opening-{opening.pk}", opening.label)


def _opening(
    request: SignedInRequest, job: Job, cabinet: Cabinet, target: str, label: str | None
) -> HttpResponse:
    form = OpeningForm(request.GET, unit=job.unit, doors=door_names(job))
    if not form.is_valid():
        return _not_yet(request, target)
    row = Opening(**form.values)
    kitchen = kitchen_of(job)
    before = _facts(kitchen, cabinet.label)
    taken = {each.label for each in before.openings} - {label}
    if row.label in taken or past_cabinet(row, cabinet, job.unit):
        return _not_yet(request, target)
    facts = opening_facts(row, row.front_door.label if row.front_door else None, ())
    openings = [_kept(facts, each) if each.label == label else each for each in before.openings]
    if label is None:
        openings.append(facts)
    changed = replace(before, openings=tuple(openings))
    return _drawn(request, target, with_cabinet(kitchen, changed, before.label), changed)


def _kept(facts: OpeningFacts, before: OpeningFacts) -> OpeningFacts:
    """What the form of an opening does not ask for stays as it is."""
    boxes = before.boxes if len(before.boxes) == facts.count else ()
    return replace(facts, standard=before.standard, boxes=boxes)


def _facts(kitchen: Kitchen, label: str) -> CabinetFacts:
    return next(each for each in kitchen.cabinets if each.label == label)


def _free(kitchen: Kitchen, label: str, before: CabinetFacts) -> bool:
    return label == before.label or all(each.label != label for each in kitchen.cabinets)


def _row(facts: OpeningFacts) -> Opening:
    return Opening(x=facts.x, y=facts.y, width=facts.width, height=facts.height)


def _drawn(
    request: SignedInRequest, target: str, kitchen: Kitchen, cabinet: CabinetFacts
) -> HttpResponse:
    found = schedule(kitchen)
    context = {
        "drawing": drawing_of(found, kitchen, cabinet.label),
        "findings": [finding_row(each) for each in findings_about(found, cabinet.label)],
        "target": target,
    }
    return render(request, PREVIEW, context)


def _not_yet(request: SignedInRequest, target: str) -> HttpResponse:
    """Leave the drawing as it is, and say that it is not what the form says."""
    return reswap(retarget(render(request, NOT_YET), f"#{target}-not-yet"), "innerHTML")
