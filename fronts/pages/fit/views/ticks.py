"""The steps of the work on a front, ticked off one by one."""

from collections.abc import Sequence
from urllib.parse import urlencode

from django.contrib import messages
from django.http import HttpResponse
from django.shortcuts import redirect
from django.urls import reverse

from fronts.figures.findings import findings_of, places_at
from fronts.models import Front as FrontRow
from fronts.pages.fit.rows.at_cabinet import AtCabinet, at_cabinet
from fronts.pages.fit.rows.fronts import record_key
from fronts.pages.fit.rows.work import Step, work_on
from fronts.pages.fit.views.cabinet import CABINET, gone
from fronts.pages.shared.job_view import entered_at, found_or_404, job_view
from fronts.rules.results import Front
from fronts.selectors.fits import ticks_of
from fronts.services.work_ticks import step_tick, step_untick
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import render_page, wants_part


@job_view("measure", "POST", to_post="fit")
def job_fit_tick(request: SignedInRequest, job: Job, cabinet_id: int) -> HttpResponse:
    """Tick a step off, or take its tick back; what is no step by now is said, not passed by."""
    at = found_or_404(at_cabinet, job, cabinet_id)
    front = at.front(label := request.POST.get("front", ""))
    refused = str(gone(at, label).message) if front is None else _tick(request, at, front)
    if wants_part(request):
        return _shown(request, at, label, front, refused)
    if refused:
        messages.error(request, refused)
    here = reverse("fronts:job-fit-cabinet", args=[job.pk, cabinet_id])
    if front is None:
        return redirect(here)
    opened = urlencode({"work": front.label})
    return redirect(f"{here}?{opened}#{record_key(front.label)}-work")


def _steps(at: AtCabinet, front: Front) -> Sequence[Step]:
    work = work_on(front, at.schedule.fitting(front.label), at.kitchen, {})
    return work.steps if work else ()


def _tick(request: SignedInRequest, at: AtCabinet, front: Front) -> str:
    """What kept it from being ticked, "" where nothing did."""
    row = FrontRow.objects.get(pk=at.keys[front.label])
    words = {step.words for step in _steps(at, front)}
    tick, untick = request.POST.get("tick"), request.POST.get("untick")
    if tick in words:
        step_tick(front=row, step=str(tick), by=request.user, at=entered_at(request))
    elif untick in words:
        step_untick(front=row, step=str(untick))
    else:
        return (
            f"The order of work of {front.label} has changed: “{tick or untick or ''}” is no step "
            "of it now. It was not ticked."
        )
    return ""


def _shown(
    request: SignedInRequest, at: AtCabinet, label: str, front: Front | None, refused: str
) -> HttpResponse:
    """The front's steps, open, as they are now, and what was `refused`."""
    work = None
    if front is not None:
        ticks = ticks_of([at.keys[label]]).get(at.keys[label], {})
        work = work_on(front, at.schedule.fitting(label), at.kitchen, ticks)
    shown = {"key": record_key(label), "work": work, "line": {"label": label}}
    context = {"job": at.job, "cabinet_id": at.number, "front": shown, "is_open": True}
    context["stops"] = findings_of(at.schedule, places_at(at.cabinet, at.fronts)).stops
    context["refused"] = refused
    return render_page(request, CABINET, context, partial="work", status=422 if refused else 200)
