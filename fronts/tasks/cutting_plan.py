"""A cutting plan as a task: each of its materials is a piece."""

from typing import Any

from fronts.cutting.plan import plan
from fronts.cutting.plan_json import plan_to_store, stored_request
from fronts.models import CutPlan
from fronts.services.cutting import plan_end, plan_keep
from shopjobs.models import BackgroundTask
from shopjobs.task_kinds import TaskKind


def _plan_of(task: BackgroundTask) -> CutPlan:
    return CutPlan.objects.get(task=task)


def _make(task: BackgroundTask) -> dict[str, Any]:
    row = _plan_of(task).asked[task.done]
    return plan_to_store(plan(stored_request(row), float(row["seconds"])))


def _keep(task: BackgroundTask, made: dict[str, Any]) -> None:
    plan_keep(plan=_plan_of(task), made=made)


def _ended(task: BackgroundTask) -> None:
    plan_end(plan=_plan_of(task), task=task)


KIND = TaskKind(
    make=_make,
    keep=_keep,
    ended=_ended,
    fault="The plan could not be worked out; the worker's log says why.",
)
