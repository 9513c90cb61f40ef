"""The sheets for the saw: the cutting plan and the parts' labels."""

from datetime import datetime

from django.contrib import messages
from django.http.response import HttpResponseBase
from django.utils import timezone
from django.views.decorators.http import require_safe

from fronts.pages.shared.plan_rows import plan_shown
from fronts.pages.sheets.views.kitchen import print_sheet
from fronts.rules.fingerprint import fingerprint, parts_fingerprint
from fronts.selectors.kitchens import schedule_of
from fronts.selectors.plans import finished_plan
from fronts.sheets import cutting_plan, labels
from fronts.sheets.cutting_words import PAPER_BOARD
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
    parts = parts_fingerprint(schedule.parts)
    shown = plan_shown(kept, parts, schedule.job.unit, PAPER_BOARD)
    html = cutting_plan.content(
        schedule,
        Imprint(timezone.localdate(), fingerprint(schedule)),
        shown.groups,
        made=f"Made by {shown.made_by}, {_said(shown.made_at)}, from parts {shown.fingerprint}.",
        outdated=shown.outdated,
    )
    return print_sheet(request, job, "cutting plan", html)


def _said(at: datetime) -> str:
    return f"{timezone.localtime(at):%Y-%m-%d %H:%M}"
