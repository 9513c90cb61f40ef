"""A job's dates: its stages, marked; its days; its fitting moved, and what that does."""

from functools import partial
from typing import Any

from django.contrib import messages
from django.core.exceptions import PermissionDenied
from django.http import Http404, HttpResponse
from django.utils import timezone

from fronts.models import JobDates
from fronts.pages.dates.forms import FitDayForm, JobDaysForm, MarkForm
from fronts.pages.dates.rows.job import MovedShown, moved_shown, stage_rows
from fronts.pages.shared.announcing import announce_change
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import job_view, posted, who
from fronts.rules.date_facts import STAGES, Stage, at_once
from fronts.rules.lateness import lateness
from fronts.rules.moved_dates import moved
from fronts.rules.stages import DatedJob
from fronts.selectors.dates import (
    ShopPlan,
    dated_job,
    job_dates_of,
    marks_of_job,
    plan_of,
    shop_dates_of,
)
from fronts.selectors.order_states import what_it_waits_for
from fronts.services.dates import (
    fit_day_set,
    job_dates_set,
    stage_begin,
    stage_finish,
    stage_unmark,
)
from shopjobs.access import SignedInRequest, may
from shopjobs.edit_conflict import last_writer
from shopjobs.forms.house import unsaved
from shopjobs.models import Job
from shopjobs.pages import go_to, render_page, wants_part

PAGE = "fronts/dates/job.html"
KEEP = "keep"
"""The name of the button that keeps a fitting date, once what it does was seen."""
TRIED = "tried"
"""The name of the field with the date of which that was seen: another one is shown first."""


@job_view("measure", to_post="jobs")
def job_dates(request: SignedInRequest, job: Job) -> HttpResponse:
    """Show the job's stages; say what another fitting date would do, and keep it."""
    form = _fit_form(job, posted(request))
    keeps = KEEP in request.POST and request.POST.get(TRIED) == request.POST.get("fit_on")
    return form_answer(
        request,
        form,
        show=partial(_page, request, job, "fit-day", fit_form=form),
        save=partial(_keep, request, job, form) if keeps else lambda: None,
        done=lambda _: _kept(request, job) if keeps else _tried(request, job, form),
    )


def _fit_form(job: Job, sent: Any = None) -> FitDayForm:
    form = FitDayForm(sent, initial={"fit_on": job.fit_on}, auto_id="fit-day-%s")
    form.written_by = partial(last_writer, job, [job])
    return form


def _keep(request: SignedInRequest, job: Job, form: FitDayForm) -> None:
    fresh = Job.objects.get(pk=job.pk)
    fit_day_set(job=fresh, fit_on=form.cleaned_data["fit_on"], **who(request))


def _kept(request: SignedInRequest, job: Job) -> HttpResponse:
    messages.success(request, "The fitting date is kept.")
    return go_to(request, "fronts:job-dates", job.pk)


def _tried(request: SignedInRequest, job: Job, form: FitDayForm) -> HttpResponse:
    return _page(request, job, "fit-day", fit_form=form, tried=form.cleaned_data["fit_on"])


@job_view("jobs", "POST")
def job_days(request: SignedInRequest, job: Job) -> HttpResponse:
    """Say how long this job's stages take."""
    form = _days_form(job, posted(request))
    return form_answer(
        request,
        form,
        show=partial(_page, request, job, "job-days", days_form=form),
        save=lambda: job_dates_set(job=job, facts=form.entered, **who(request)),
        done=lambda _: go_to(request, "fronts:job-dates", job.pk),
    )


def _days_form(job: Job, sent: Any = None) -> JobDaysForm:
    form = JobDaysForm(sent, usual=shop_dates_of(job.shop), said=job_dates_of(job))
    rows = JobDates.objects.filter(job=job)
    form.written_by = lambda column: last_writer(job, list(rows), column)
    return form


@job_view("measure", "POST", to_post="fit")
def stage_mark_now(request: SignedInRequest, job: Job, stage: str) -> HttpResponse:
    """Mark a stage as begun or done, or take its mark back."""
    found = next((each for each in STAGES if each == stage), None)
    if found is None:
        raise Http404
    if found not in _may_mark(request):
        raise PermissionDenied
    form = MarkForm(request.POST, auto_id=f"mark-{stage}-%s")
    form.stage = found
    return form_answer(
        request,
        form,
        show=partial(_page, request, job, "stages", mark_form=form),
        save=partial(_mark, request, job, found, form),
        done=lambda _: _marked(request, job),
    )


def _mark(request: SignedInRequest, job: Job, stage: Stage, form: MarkForm) -> None:
    on = form.cleaned_data["on"] or timezone.localdate()
    match request.POST.get("mark"):
        case "begun":
            stage_begin(job=job, stage=stage, on=on, **who(request))
        case "done":
            stage_finish(job=job, stage=stage, on=on, **who(request))
        case _:
            stage_unmark(job=job, stage=stage, **who(request))


def _marked(request: SignedInRequest, job: Job) -> HttpResponse:
    if not wants_part(request):
        return go_to(request, "fronts:job-dates", job.pk)
    return announce_change(_page(request, job, "stages"))


def _may_mark(request: SignedInRequest) -> tuple[Stage, ...]:
    """Who runs the jobs marks every stage; who fits, the fitting."""
    if may(request.user, "jobs"):
        return STAGES
    return ("fit",) if may(request.user, "fit") else ()


def _page(
    request: SignedInRequest,
    job: Job,
    partial_name: str,
    *,
    fit_form: FitDayForm | None = None,
    days_form: JobDaysForm | None = None,
    mark_form: MarkForm | None = None,
    tried: Any = KEEP,
    status: int = 200,
) -> HttpResponse:
    job = Job.objects.select_related("shop").get(pk=job.pk)
    known = plan_of(job.shop, timezone.localdate(), sellers=may(request.user, "prices"))
    dated = dated_job(job, known)
    forms = [each for each in (fit_form, days_form, mark_form) if each is not None]
    late = lateness(dated, known.calendar.days, known.today, known.plan.of(job.pk))
    context = {
        "job": job,
        "step": "dates",
        "stages": stage_rows(dated, known, marks_of_job(job), _may_mark(request)),
        "late": late,
        "waits": what_it_waits_for(job),
        "is_closed": job.fit_on is not None and not known.calendar.days.is_open(job.fit_on),
        "closed_for": known.calendar.name_of(job.fit_on) if job.fit_on else "",
        "fit_form": fit_form or _fit_form(job),
        "days_form": days_form or _days_form(job),
        "mark_form": mark_form,
        "form": next(iter(forms), None),
        "is_tried": tried != KEEP,
        "moved": None if tried == KEEP else _moved(dated, known, tried),
    }
    refused = next((unsaved(each) for each in forms if each.is_bound and each.errors), status)
    return render_page(request, PAGE, context, partial=partial_name, status=refused)


def _moved(job: DatedJob, known: ShopPlan, fit_on: Any) -> MovedShown:
    jobs = {**known.jobs, job.key: job}
    done = moved(
        list(jobs.values()), job.key, fit_on, known.calendar.days,
        at_once(known.calendar.facts), known.today,
    )  # fmt: skip
    return moved_shown(done, job.key, known, jobs)
