"""A cutting plan as its page shows it: how far it is, or what it says."""

from dataclasses import dataclass
from datetime import datetime

from fronts.drawings.cut_layout import screen_layouts
from fronts.figures.cutting_plan import MaterialShown, materials_shown, whole_cost
from fronts.models import CutPlan
from fronts.pages.cut.rows.plan_offcuts import PlanOffcuts, plan_offcuts
from fronts.pages.shared.task_progress import TaskProgress, task_progress
from fronts.rules.practice import Practice
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
    offcuts: PlanOffcuts


@dataclass(frozen=True, slots=True)
class Progress:
    """How far a plan at work has come."""

    task: TaskProgress
    now: str


def progress_of(plan: CutPlan | None) -> Progress | None:
    """What is done and what is being done, where a plan is being worked out."""
    if plan is None or plan.task is None or not plan.task.is_open:
        return None
    return Progress(task_progress(plan.task), plan.asked[plan.task.done]["name"])


def plan_shown(plan: CutPlan, fingerprint: str, practice: Practice, unit: str) -> PlanShown:
    """The plan in words and drawings; `fingerprint` is that of the parts as they are now."""
    plans = named_plans(plan)
    offcuts = plan_offcuts(plan, plans, practice, unit)
    return PlanShown(
        groups=materials_shown(plans, unit, screen_layouts(unit), offcuts.numbers),
        made_by=plan.made_by.shown_name,
        made_at=plan.finished_at or plan.started_at,
        fingerprint=plan.fingerprint,
        outdated=plan.fingerprint != fingerprint,
        cost=whole_cost(plans),
        offcuts=offcuts,
    )
