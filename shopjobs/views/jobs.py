"""What is known of a job beside its kitchen; deleted, archived, and brought back."""

from functools import partial

from django.contrib import messages
from django.http import Http404, HttpResponse
from django.shortcuts import get_object_or_404, render
from django.template.loader import render_to_string
from django.utils import timezone
from django.views.decorators.http import require_GET, require_http_methods, require_POST

from shopjobs.access import SignedInRequest, in_turn, needs, signed_in
from shopjobs.edit_conflict import last_writer
from shopjobs.forms.house import unsaved
from shopjobs.forms.jobs import JobForm
from shopjobs.models import Job
from shopjobs.pages import go_to, render_page
from shopjobs.selectors import deleted_jobs_of, job_of
from shopjobs.services.jobs import (
    job_archive,
    job_change,
    job_delete,
    job_restore,
    job_unarchive,
)
from shopjobs.services.recording import revisions_kept
from shopjobs.services.refused import Refused
from shopjobs.steps import GROUP, STEPS, USUAL


def job_or_404(request: SignedInRequest, job_id: int) -> Job:
    """Return one of the shop's jobs; another shop's job does not exist."""
    try:
        return job_of(request.user, job_id)
    except Job.DoesNotExist as missing:
        raise Http404 from missing


@needs("jobs")
@require_http_methods(["GET", "POST"])
@in_turn
def job_settings(request: SignedInRequest, job_id: int) -> HttpResponse:
    """Show and change a job's number, client, site, unit, step, date and who sees to it."""
    job = job_or_404(request, job_id)
    form = JobForm(request.POST if request.method == "POST" else None, job=job)
    form.written_by = partial(last_writer, job, [job])
    if form.is_bound and _changed(request, form, job):
        messages.success(request, f"Job {form.cleaned_data['number']} is saved.")
        return go_to(request, "fronts:job-measure", job.pk)
    return render_page(
        request,
        "shopjobs/job_settings.html",
        {"form": form, "job": job},
        partial="job-form",
        status=unsaved(form),
    )


def _changed(request: SignedInRequest, form: JobForm, job: Job) -> bool:
    if not form.is_valid():
        return False
    try:
        # Another copy of the row, so that the page's heading keeps what is saved.
        fresh = job_of(request.user, job.pk)
        job_change(job=fresh, by=request.user, at=timezone.now(), **form.cleaned_data)
    except Refused as refused:
        form.refuse(refused)
        return False
    return True


@signed_in
@require_GET
def step_list(request: SignedInRequest) -> HttpResponse:
    """The steps of a unit as the options of a form's list, its usual one chosen."""
    unit = request.GET.get("unit", "")
    if unit not in GROUP:
        raise Http404
    steps = [(step, words, step == USUAL[unit]) for step, words in STEPS[GROUP[unit]].items()]
    return render(request, "shopjobs/step_list.html", {"steps": steps})


@needs("jobs")
@require_POST
def job_delete_now(request: SignedInRequest, job_id: int) -> HttpResponse:
    """Delete a job with all that was entered for it; it can be brought back for a while."""
    job = job_or_404(request, job_id)
    with revisions_kept() as kept:
        job_delete(job=job, by=request.user, at=timezone.now())
    said = {"job": job, "went": kept[0].went}
    messages.success(request, render_to_string("shopjobs/job_deleted.html", said, request))
    return go_to(request, "shopjobs:job-list")


@needs("jobs")
@require_POST
def job_bring_back(request: SignedInRequest, job_id: int) -> HttpResponse:
    """Bring back a deleted job."""
    job = get_object_or_404(deleted_jobs_of(request.user), pk=job_id)
    try:
        job_restore(job=job, by=request.user, at=timezone.now())
    except Refused as refused:
        messages.error(request, refused.message)
        return go_to(request, "shopjobs:job-list")
    messages.success(request, f"Job {job.number} is back.")
    return go_to(request, "fronts:job-measure", job.pk)


@needs("jobs")
@require_POST
def job_to_archive(request: SignedInRequest, job_id: int) -> HttpResponse:
    """Take a job off the list; it is read as ever, and can be put back."""
    job = job_or_404(request, job_id)
    if job.archived_at is None:
        job_archive(job=job, by=request.user, at=timezone.now())
    messages.success(request, render_to_string("shopjobs/job_archived.html", {"job": job}, request))
    return go_to(request, "shopjobs:job-list")


@needs("jobs")
@require_POST
def job_from_archive(request: SignedInRequest, job_id: int) -> HttpResponse:
    """Put a job back on the list."""
    job = job_or_404(request, job_id)
    if job.archived_at is not None:
        job_unarchive(job=job, by=request.user, at=timezone.now())
    messages.success(request, f"Job {job.number} is on the list again.")
    return go_to(request, "shopjobs:job-list")


@signed_in
@require_GET
def home(request: SignedInRequest) -> HttpResponse:
    """The site begins with the jobs."""
    return go_to(request, "shopjobs:job-list")
