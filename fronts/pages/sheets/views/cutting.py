"""The sheets for the saw: the cutting plan and the parts' labels."""

from datetime import datetime

from django.contrib import messages
from django.http.response import HttpResponseBase
from django.utils import timezone
from django.views.decorators.http import require_safe

from fronts.pages.sheets.views.kitchen import print_sheet
from fronts.rules.fingerprint import fingerprint, parts_fingerprint
from fronts.selectors.kitchens import schedule_of
from fronts.selectors.plans import finished_plan, named_plans
from fronts.sheets import cutting_plan, labels
from fronts.sheets.sheet_page import Imprint
from shopjobs.access import SignedInRequest, signed_in
from shopjobs.pages import go_to
from shopjobs.views.jobs import job_or_404


@signed_in
@require_safe
def sheet_labels(request: SignedInRequest, job_id: int) -> HttpResponseBase:
    """A sticker for each part."""
    job = job_or_404(request, job_id)
    schedule = schedule_of(job)
    imprint = Imprint(timezone.localdate(), fingerprint(schedule))
    return print_sheet(request, job, "labels", labels.content(schedule, imprint))


@signed_in
@require_safe
def sheet_cutting(request: SignedInRequest, job_id: int) -> HttpResponseBase:
    """The last plan that was made."""
    job = job_or_404(request, job_id)
    kept = finished_plan(job)
    if kept is None:
        messages.info(request, "There is no cutting plan yet. Make it here.")
        return go_to(request, "fronts:job-cut", job.pk)
    schedule = schedule_of(job)
    made_at = kept.finished_at or kept.started_at
    html = cutting_plan.content(
        schedule,
        Imprint(timezone.localdate(), fingerprint(schedule)),
        named_plans(kept),
        made=f"Made by {kept.made_by.shown_name}, {_said(made_at)}, from parts {kept.fingerprint}.",
        outdated=kept.fingerprint != parts_fingerprint(schedule.parts),
    )
    return print_sheet(request, job, "cutting plan", html)


def _said(at: datetime) -> str:
    return f"{timezone.localtime(at):%Y-%m-%d %H:%M}"
