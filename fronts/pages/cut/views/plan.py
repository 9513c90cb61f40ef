"""The cut page: what there is to cut, and the plan for cutting it."""

from functools import partial

from django.http import HttpResponse, QueryDict

from fronts.cutting.plan_json import stored_request
from fronts.figures.parts import material_name
from fronts.figures.what_follows import Worked
from fronts.figures.will_it_go import will_it_go
from fronts.models import CutPlan, PlanState
from fronts.pages.cut.forms.plan import CutPlanForm
from fronts.pages.cut.rows.banding import banding_rows
from fronts.pages.cut.rows.cut_list import cut_list
from fronts.pages.cut.rows.plan import Progress, plan_shown, progress_of
from fronts.pages.shared.blocking_findings import blocking_findings
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import job_view, posted, who
from fronts.rules.cutting_groups import cutting_groups
from fronts.rules.fingerprint import parts_fingerprint
from fronts.rules.results import Schedule
from fronts.selectors.offcuts import offcuts_for
from fronts.selectors.plans import finished_plan, latest_plan
from fronts.selectors.schedules import worked_out
from fronts.services.cutting import plan_begin, plan_cancel
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import go_to, render_page, wants_part

PAGE = "fronts/cut/page.html"
PART = "cut-plan"


@job_view("measure", to_post="edit_kitchen", shop_first=True)
def job_cut(request: SignedInRequest, job: Job) -> HttpResponse:
    """Show what is to be cut, and the plan; begin a new plan."""
    latest = latest_plan(job)
    if wants_part(request) and request.method != "POST":
        progress = progress_of(latest)
        if progress is not None:
            return _part_at_work(request, job, progress)
    worked = worked_out(job)
    _, schedule = worked
    form = _form(job, schedule, latest, posted(request))
    return form_answer(
        request,
        form,
        show=partial(_page, request, job, worked, form, latest),
        save=partial(_begin, request, job, schedule, form),
        done=partial(_begun, request, job),
    )


@job_view("measure", "POST", to_post="edit_kitchen", shop_first=True)
def cut_cancel(request: SignedInRequest, job: Job) -> HttpResponse:
    """Call off the plan that is being worked out."""
    begun = latest_plan(job)
    if begun is not None:
        plan_cancel(plan=begun, **who(request))
    if not wants_part(request):
        return go_to(request, "fronts:job-cut", job.pk)
    worked, latest = worked_out(job), latest_plan(job)
    return _page(request, job, worked, _form(job, worked[1], latest, None), latest)


def _begin(request: SignedInRequest, job: Job, schedule: Schedule, form: CutPlanForm) -> CutPlan:
    return plan_begin(
        job=job,
        fingerprint=parts_fingerprint(schedule.parts),
        asked=form.cleaned_data["asked"],
        seconds=form.cleaned_data["seconds"],
        **who(request),
    )


def _begun(request: SignedInRequest, job: Job, plan: CutPlan) -> HttpResponse:
    progress = progress_of(plan) if wants_part(request) else None
    if progress is not None:
        return _part_at_work(request, job, progress)
    return go_to(request, "fronts:job-cut", job.pk)


def _part_at_work(request: SignedInRequest, job: Job, progress: Progress) -> HttpResponse:
    """How far it is, and no more: nothing else is worked out meanwhile."""
    context = {"job": job, "step": "cut", "progress": progress}
    return render_page(request, PAGE, context, partial=PART)


def _page(
    request: SignedInRequest,
    job: Job,
    worked: Worked,
    form: CutPlanForm,
    latest: CutPlan | None,
    *,
    status: int = 200,
) -> HttpResponse:
    """The page, or its plan for htmx; what was typed and refused comes before any progress."""
    kitchen, schedule = worked
    context = {
        "job": job,
        "step": "cut",
        "progress": None if form.is_bound else progress_of(latest),
        "stops": blocking_findings(request, job, schedule),
        "list": cut_list(schedule, kitchen),
        "outlook": will_it_go(schedule),
        "form": form,
        **_plan(job, worked, latest),
    }
    return render_page(request, PAGE, context, partial=PART, status=status)


def _plan(job: Job, worked: Worked, latest: CutPlan | None) -> dict[str, object]:
    kitchen, schedule = worked
    unit, parts = schedule.job.unit, parts_fingerprint(schedule.parts)
    plan = latest if latest and latest.state == PlanState.DONE else finished_plan(job)
    return {
        "fault": "" if latest is None else latest.fault,
        "plan": None if plan is None else plan_shown(plan, parts, kitchen.practice, unit),
        "banding": list(banding_rows(schedule.parts, unit)),
    }


def _form(
    job: Job, schedule: Schedule, latest: CutPlan | None, data: QueryDict | None
) -> CutPlanForm:
    """The form, filled as the last plan was asked."""
    unit, groups = schedule.job.unit, cutting_groups(schedule.parts)
    asked = [] if latest is None else latest.asked
    return CutPlanForm(
        data,
        groups=groups,
        names={
            group.key: material_name(group.material, unit, group.thickness, group.width)
            for group in groups
        },
        unit=unit,
        kept={row["key"]: stored_request(row) for row in asked},
        offcuts=offcuts_for(job),
    )
