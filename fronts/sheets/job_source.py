"""What a job's sheets are made from, as it stands in the database."""

from dataclasses import replace
from datetime import date

from django.utils import timezone

from fronts.models import CutPlan
from fronts.rules.fingerprint import parts_fingerprint
from fronts.selectors.plans import named_plans
from fronts.sheets.sheet_page import CutPlanSource, SheetSource, source_of
from fronts.snapshot import kitchen_of
from shopjobs.models import Job


def source_of_job(job: Job, printed: date, plan: CutPlan | None = None) -> SheetSource:
    """The job's kitchen with its schedule, and the plan where there is one."""
    return with_plan(source_of(kitchen_of(job), printed), plan)


def with_plan(source: SheetSource, plan: CutPlan | None) -> SheetSource:
    """The same with a cutting plan, if any, that says by whom and from which parts it was made."""
    if plan is None:
        return source
    made_at = timezone.localtime(plan.finished_at or plan.started_at)
    shown = CutPlanSource(
        plans=tuple(named_plans(plan)),
        made=f"Made by {plan.made_by.shown_name}, {made_at:%Y-%m-%d %H:%M}, "
        f"from parts {plan.fingerprint}.",
        outdated=plan.fingerprint != parts_fingerprint(source.schedule.parts),
    )
    return replace(source, plan=shown)
