"""Fitting: the cabinets by wall, and one cabinet's page for the installer's phone."""

from dataclasses import dataclass

from django.contrib import messages
from django.core.exceptions import PermissionDenied, ValidationError
from django.http import Http404, HttpResponse
from django.shortcuts import redirect
from django.urls import reverse
from django.utils import timezone
from django.views.decorators.http import require_http_methods, require_safe

from fronts.figures.cautions import at_cabinet
from fronts.figures.findings import findings_of, places_at
from fronts.figures.sizes import size
from fronts.figures.work_steps import work_for
from fronts.models import FitRecord
from fronts.models import Front as FrontRow
from fronts.pages.fit.forms import FitForm
from fronts.pages.fit.rows.fronts import FrontToFit, elevation_of, front_to_fit, record_key
from fronts.pages.fit.rows.walls import walls_of
from fronts.pages.shared.blocking_findings import findings_with_links
from fronts.rules.fingerprint import fingerprint
from fronts.rules.fits import hung_as
from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.results import Front, Schedule
from fronts.rules.schedule import schedule as schedule_for
from fronts.selectors.kitchens import (
    cabinet_of,
    cabinets_of,
    fit_records_of,
    front_keys_of,
    openings_of,
)
from fronts.services.fits import fit_record
from fronts.snapshot import kitchen_of
from shopjobs.access import SignedInRequest, may, signed_in
from shopjobs.models import Job
from shopjobs.pages import render_page, wants_part
from shopjobs.views.jobs import job_or_404


@dataclass(frozen=True, slots=True)
class _AtCabinet:
    """What is known of the cabinet that one stands at."""

    job: Job
    number: int
    numbers: dict[str, int]
    kitchen: Kitchen
    schedule: Schedule
    cabinet: Cabinet
    fronts: list[Front]
    records: dict[str, FitRecord]
    openings: dict[str, int]
    now: str


@signed_in
@require_safe
def job_fit(request: SignedInRequest, job_id: int) -> HttpResponse:
    """Show the job's cabinets by wall, and which of them are fitted."""
    job = job_or_404(request, job_id)
    kitchen = kitchen_of(job)
    walls = walls_of(kitchen, schedule_for(kitchen), _numbers(job), fit_records_of(job))
    rows = [row for wall in walls for row in wall.cabinets if row.fronts]
    context = {
        "job": job,
        "step": "fit",
        "walls": walls,
        "fitted": sum(row.is_fitted for row in rows),
        "wanted": len(rows),
    }
    return render_page(request, "fronts/fit/page.html", context)


@signed_in
@require_http_methods(["GET", "HEAD", "POST"])
def job_fit_cabinet(request: SignedInRequest, job_id: int, cabinet_id: int) -> HttpResponse:
    """Show all that is needed at one cabinet; record how a front of it fitted."""
    at = _at_cabinet(job_or_404(request, job_id), cabinet_id)
    if request.method != "POST":
        return _page(request, at)
    if not may(request.user, "fit"):
        raise PermissionDenied
    front = next((each for each in at.fronts if each.label == request.POST.get("front")), None)
    if front is None:
        return _gone(request, at)
    key = record_key(front.label)
    form = FitForm(request.POST, unit=at.schedule.job.unit, auto_id=f"{key}-%s")
    if not _recorded(request, at, front, form):
        return _answer(request, at, front, form)
    if wants_part(request):
        return _answer(request, _at_cabinet(at.job, cabinet_id), front)
    messages.success(request, f"The fit of {front.label} is recorded.")
    return redirect(reverse("fronts:job-fit-cabinet", args=[job_id, cabinet_id]) + f"#{key}")


def _numbers(job: Job) -> dict[str, int]:
    return dict(cabinets_of(job).prefetch_related(None).values_list("label", "pk"))


def _at_cabinet(job: Job, number: int) -> _AtCabinet:
    numbers = _numbers(job)
    label = next((label for label, pk in numbers.items() if pk == number), None)
    kitchen = kitchen_of(job)
    cabinet = next((each for each in kitchen.cabinets if each.label == label), None)
    if cabinet is None:
        raise Http404
    schedule = schedule_for(kitchen)
    fronts = [each for each in schedule.fronts if each.cabinet == cabinet.label]
    return _AtCabinet(
        job, number, numbers, kitchen, schedule, cabinet, fronts, fit_records_of(job),
        _openings(job, number), fingerprint(schedule),
    )  # fmt: skip


def _openings(job: Job, cabinet_id: int) -> dict[str, int]:
    """The cabinet's openings by their labels."""
    openings = openings_of(cabinet_of(job, cabinet_id))
    return dict(openings.values_list("label", "pk"))


def _recorded(request: SignedInRequest, at: _AtCabinet, front: Front, form: FitForm) -> bool:
    if not form.is_valid():
        return False
    try:
        fit_record(
            front=FrontRow.objects.get(pk=front_keys_of(at.job)[front.label]),
            facts=form.entered(front.label),
            hung=hung_as(front),
            fingerprint=at.now,
            by=request.user,
            at=timezone.now(),
        )
    except ValidationError as refused:
        form.add_error(None, refused)
        return False
    return True


def _answer(
    request: SignedInRequest, at: _AtCabinet, front: Front, form: FitForm | None = None
) -> HttpResponse:
    """The one front's part for htmx; the whole page, with what was typed, without it."""
    if not wants_part(request):
        return _page(request, at, form)
    context = {
        "job": at.job,
        "cabinet_id": at.number,
        "front": _shown(at, front, form),
        "answered": True,
    }
    status = 200 if form is None else 422
    return render_page(
        request, "fronts/fit/cabinet.html", context, partial="fit-record", status=status
    )


def _gone(request: SignedInRequest, at: _AtCabinet) -> HttpResponse:
    """The front was changed away while somebody stood before it: nothing is recorded."""
    form = FitForm(request.POST, unit=at.schedule.job.unit)
    form.add_error(
        None,
        f"{request.POST.get('front') or 'This front'} is no longer part of cabinet "
        f"{at.cabinet.label}: the kitchen has changed. Nothing was recorded.",
    )
    return _page(request, at, form)


def _page(request: SignedInRequest, at: _AtCabinet, form: FitForm | None = None) -> HttpResponse:
    wanted = places_at(at.cabinet, at.fronts)
    fittings = {e.label: fit for e in at.fronts if (fit := at.schedule.fitting(e.label))}
    about = findings_of(at.schedule, wanted)
    labels = [each.label for each in at.kitchen.cabinets]
    here = labels.index(at.cabinet.label)
    context = {
        "job": at.job,
        "step": "fit",
        "cabinet": at.cabinet,
        "cabinet_id": at.number,
        "sizes": size(at.kitchen.job.unit, at.cabinet.width, at.cabinet.height, at.cabinet.depth),
        "before": _neighbour(at, labels[here - 1] if here else None),
        "after": _neighbour(at, labels[here + 1] if here + 1 < len(labels) else None),
        "findings": findings_with_links(
            request, at.job, at.schedule, [*about.stops, *about.others], back=f"fit-{at.number}"
        ),
        "stopped": bool(about.stops),
        "elevation": elevation_of(at.schedule, at.kitchen, at.cabinet.label),
        "fronts": [_shown(at, each, form) for each in at.fronts],
        "works": work_for(at.fronts, fittings, at.kitchen),
        "cautions": at_cabinet(at.cabinet, at.fronts, list(fittings.values())),
        "form": form,
    }
    return render_page(
        request, "fronts/fit/cabinet.html", context, status=200 if form is None else 422
    )


def _neighbour(at: _AtCabinet, label: str | None) -> tuple[str, int] | None:
    return None if label is None else (label, at.numbers[label])


def _shown(at: _AtCabinet, front: Front, form: FitForm | None) -> FrontToFit:
    """The front; a form that was refused belongs to the front that it names."""
    own = form if form is not None and form.data.get("front") == front.label else None
    record = at.records.get(front.label)
    measure = at.openings.get(front.opening)
    way = "" if measure is None else reverse("fronts:opening-measured", args=[at.job.pk, measure])
    return front_to_fit(
        at.schedule, at.kitchen, front, record, at.now, own,
        f"{way}?back=fit-{at.number}" if way else "",
    )  # fmt: skip
