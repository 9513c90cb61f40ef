"""The steps of the work on a front, ticked off one by one."""

from collections.abc import Sequence
from urllib.parse import urlencode

from django.http import HttpResponse
from django.shortcuts import redirect
from django.urls import reverse

from fronts.figures.findings import findings_of, places_at
from fronts.models import Front as FrontRow
from fronts.pages.fit.rows.at_cabinet import AtCabinet, at_cabinet
from fronts.pages.fit.rows.fronts import record_key
from fronts.pages.fit.rows.work import Step, work_on
from fronts.pages.fit.views.cabinet import CABINET
from fronts.pages.shared.job_view import entered_at, found_or_404, job_view
from fronts.rules.results import Front
from fronts.selectors.fits import ticks_of
from fronts.services.work_ticks import step_tick, step_untick
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import render_page, wants_part


@job_view("measure", "POST", to_post="fit")
def job_fit_tick(request: SignedInRequest, job: Job, cabinet_id: int) -> HttpResponse:
    """Tick a step off, or take its tick back; what is no step of the front is passed by."""
    at = found_or_404(at_cabinet, job, cabinet_id)
    front = at.front(request.POST.get("front"))
    if front is not None:
        _tick(request, at.keys[front.label], _steps(at, front))
    if front is not None and wants_part(request):
        return _shown(request, at, front)
    here = reverse("fronts:job-fit-cabinet", args=[job.pk, cabinet_id])
    if front is None:
        return redirect(here)
    opened = urlencode({"work": front.label})
    return redirect(f"{here}?{opened}#{record_key(front.label)}-work")


def _steps(at: AtCabinet, front: Front) -> Sequence[Step]:
    work = work_on(front, at.schedule.fitting(front.label), at.kitchen, {})
    return work.steps if work else ()


def _tick(request: SignedInRequest, key: int, steps: Sequence[Step]) -> None:
    row, words = FrontRow.objects.get(pk=key), {step.words for step in steps}
    if (step := request.POST.get("tick")) in words:
        step_tick(front=row, step=str(step), by=request.user, at=entered_at(request))
    elif (step := request.POST.get("untick")) in words:
        step_untick(front=row, step=str(step))


def _shown(request: SignedInRequest, at: AtCabinet, front: Front) -> HttpResponse:
    """The front's steps, open, as they are now."""
    ticks = ticks_of([at.keys[front.label]]).get(at.keys[front.label], {})
    work = work_on(front, at.schedule.fitting(front.label), at.kitchen, ticks)
    shown = {"key": record_key(front.label), "work": work, "line": {"label": front.label}}
    context = {"job": at.job, "cabinet_id": at.number, "front": shown, "is_open": True}
    context["stops"] = findings_of(at.schedule, places_at(at.cabinet, at.fronts)).stops
    return render_page(request, CABINET, context, partial="work")
