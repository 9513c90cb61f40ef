"""The cut page: what there is to cut, and the plan for cutting it."""

from datetime import datetime

from django.core.exceptions import PermissionDenied
from django.http import HttpResponse
from django.utils import timezone
from django.views.decorators.http import require_http_methods

from fronts.cutting.model import Request
from fronts.cutting.plan_json import stored_request
from fronts.figures.parts import material_name
from fronts.figures.sizes import bought_length
from fronts.models import CutPlan, PlanState
from fronts.pages.cut.forms import CutPlanForm
from fronts.pages.cut.rows.cut_list import cut_list
from fronts.pages.cut.rows.plan import fault_of, is_at_work, plan_shown, progress_of
from fronts.pages.shared.blocking_findings import blocking_findings
from fronts.rules.cutting_groups import cutting_groups
from fronts.rules.edge_banding import banding_lengths
from fronts.rules.fingerprint import parts_fingerprint
from fronts.rules.results import Schedule
from fronts.selectors.kitchens import schedule_of
from fronts.selectors.plans import finished_plan, latest_plan
from fronts.services.cutting import plan_begin
from shopjobs.access import SignedInRequest, may, signed_in
from shopjobs.models import Job
from shopjobs.pages import go_to, render_page, wants_part
from shopjobs.services.refused import Refused
from shopjobs.views.jobs import job_or_404

PAGE = "fronts/cut/page.html"
PART = "cut-plan"


@signed_in
@require_http_methods(["GET", "HEAD", "POST"])
def job_cut(request: SignedInRequest, job_id: int) -> HttpResponse:
    """Show what is to be cut, and the plan; begin a new plan."""
    job = job_or_404(request, job_id)
    if request.method != "POST":
        return _page(request, job)
    if not may(request.user, "edit_kitchen"):
        raise PermissionDenied
    schedule = schedule_of(job)
    form = _form(job, schedule, latest_plan(job), request)
    if not _begun(request, job, schedule, form):
        return _page(request, job, schedule, form)
    return _page(request, job) if wants_part(request) else go_to(request, "fronts:job-cut", job.pk)


def _begun(request: SignedInRequest, job: Job, schedule: Schedule, form: CutPlanForm) -> bool:
    if not form.is_valid():
        return False
    try:
        plan_begin(
            job=job,
            fingerprint=parts_fingerprint(schedule.parts),
            asked=form.cleaned_data["asked"],
            seconds=form.cleaned_data["seconds"],
            by=request.user,
            at=timezone.now(),
        )
    except Refused as refused:
        form.refuse(refused)
        return False
    return True


def _page(
    request: SignedInRequest,
    job: Job,
    schedule: Schedule | None = None,
    form: CutPlanForm | None = None,
) -> HttpResponse:
    """The page, or its plan for htmx; while a plan is at work, only how far it is."""
    latest, now = latest_plan(job), timezone.now()
    context: dict[str, object] = {"job": job, "step": "cut"}
    status = 200 if form is None else 422
    if latest is not None and is_at_work(latest, now) and form is None:
        context["progress"] = progress_of(latest)
        if wants_part(request):
            return render_page(request, PAGE, context, partial=PART)
    schedule = schedule or schedule_of(job)
    context |= _plan(job, schedule, latest, now)
    context |= {
        "stops": blocking_findings(request, job, schedule),
        "list": cut_list(schedule),
        "form": form or _form(job, schedule, latest),
    }
    return render_page(request, PAGE, context, partial=PART, status=status)


def _plan(job: Job, schedule: Schedule, latest: CutPlan | None, now: datetime) -> dict[str, object]:
    unit = schedule.job.unit
    plan = latest if latest and latest.state == PlanState.DONE else finished_plan(job)
    banding = banding_lengths(schedule.parts)
    return {
        "fault": fault_of(latest, now),
        "plan": None if plan is None else plan_shown(plan, parts_fingerprint(schedule.parts), unit),
        "banding": [
            (material_name(material, unit, thickness), bought_length(length, unit))
            for (material, thickness), length in banding.items()
        ],
    }


def _form(
    job: Job, schedule: Schedule, latest: CutPlan | None, request: SignedInRequest | None = None
) -> CutPlanForm:
    """The form, filled as the last plan was asked; bound where a request brings one."""
    unit, groups = schedule.job.unit, cutting_groups(schedule.parts)
    kept: dict[str, Request] = {}
    if latest is not None:
        kept = {row["key"]: stored_request(row) for row in latest.asked}
    return CutPlanForm(
        None if request is None else request.POST,
        groups=groups,
        names={
            group.key: material_name(group.material, unit, group.thickness, group.width)
            for group in groups
        },
        unit=unit,
        kept=kept,
    )
