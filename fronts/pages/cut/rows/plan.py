"""A cutting plan as its page shows it: how far it is, or what it says."""

from dataclasses import dataclass
from datetime import datetime

from fronts.drawings.cut_layout import screen_layouts
from fronts.figures.cutting_plan import MaterialShown, materials_shown, whole_cost
from fronts.models import CutPlan, PlanState
from fronts.selectors.plans import named_plans


@dataclass(frozen=True, slots=True)
class PlanShown:
    """A finished plan; `outdated` where the parts are no longer those that it was made from."""

    groups: tuple[MaterialShown, ...]
    made_by: str
    made_at: datetime
    fingerprint: str
    outdated: bool
    cost: str


@dataclass(frozen=True, slots=True)
class Progress:
    """How far a plan at work has come."""

    done: int
    wanted: int
    now: str


def is_at_work(plan: CutPlan, at: datetime) -> bool:
    """Whether the plan is being worked out; one that is overdue was lost with its server."""
    return plan.state == PlanState.WORKING and plan.due_at >= at


def fault_of(plan: CutPlan | None, at: datetime) -> str:
    """Why the last plan came to nothing, where it did."""
    if plan is None or plan.state == PlanState.DONE or is_at_work(plan, at):
        return ""
    return plan.fault or "The server was stopped while the plan was being worked out."


def progress_of(plan: CutPlan) -> Progress:
    """What is done and what is being done."""
    done, wanted = len(plan.found), len(plan.asked)
    return Progress(done, wanted, plan.asked[done]["name"] if done < wanted else "")


def plan_shown(plan: CutPlan, fingerprint: str, unit: str) -> PlanShown:
    """The plan in words and drawings; `fingerprint` is that of the parts as they are now."""
    plans = named_plans(plan)
    return PlanShown(
        groups=materials_shown(plans, unit, screen_layouts(unit)),
        made_by=plan.made_by.shown_name,
        made_at=plan.finished_at or plan.started_at,
        fingerprint=plan.fingerprint,
        outdated=plan.fingerprint != fingerprint,
        cost=whole_cost(plans),
    )
