"""The cutting plans of a job, and what they are made from."""

from fractions import Fraction

from django.db.models import QuerySet

from fronts.cutting.model import Plan
from fronts.cutting.plan_json import stored_plan, stored_request
from fronts.models import CutPlan, PlanState
from shopjobs.models import Job

CENTS = 100


def money(amount: Fraction) -> str:
    """An amount to the cent, in whatever money the shop counts."""
    whole, cents = divmod(round(amount * CENTS), CENTS)
    return f"{whole}.{cents:02d}"


def latest_plan(job: Job) -> CutPlan | None:
    """The plan that was begun last, whatever became of it."""
    return _plans(job).first()


def finished_plan(job: Job) -> CutPlan | None:
    """The plan that was finished last."""
    return _plans(job).filter(state=PlanState.DONE).first()


def _plans(job: Job) -> QuerySet[CutPlan]:
    return (
        CutPlan.objects.filter(job=job)
        .select_related("made_by", "sawn_by", "task")
        .order_by("-started_at", "-pk")
    )


def named_plans(plan: CutPlan) -> list[tuple[str, Plan]]:
    """The plans that were worked out, each by the name of its material."""
    return [
        (asked["name"], stored_plan(found, stored_request(asked)))
        for asked, found in zip(plan.asked, plan.found, strict=False)
    ]
