"""Making a cutting plan: asked for by a person, worked out by a worker, kept with its input."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from django.db import IntegrityError, transaction

from fronts.cutting.model import Request
from fronts.cutting.plan_json import request_to_store
from fronts.models import CutPlan, PlanState
from fronts.rules.cutting_groups import CuttingGroup
from fronts.rules.lengths import exact
from fronts.services.plan_offcuts import plan_offcuts_lay_by
from shopjobs.models import BackgroundTask, Job, Person, TaskState
from shopjobs.services.notes import note
from shopjobs.services.refused import Refused
from shopjobs.services.task_pieces import tasks_admit
from shopjobs.services.tasks import task_ask, task_cancel

MARGIN = 15
"""Seconds that a material may take beyond its own: starting a process, writing the plan out."""
KEPT = 3
"""A job keeps so many finished plans; older ones go."""


@dataclass(frozen=True, slots=True)
class Asked:
    """What one material is planned from; `key`, `name` say which one it is.

    `group` are its parts, so that what is left can be kept under its material.
    """

    key: str
    name: str
    request: Request
    group: CuttingGroup | None = None

    @property
    def stored(self) -> dict[str, Any]:
        """As it is kept with the plan."""
        return {"key": self.key, "name": self.name, **self._stock, **request_to_store(self.request)}

    @property
    def _stock(self) -> dict[str, Any]:
        if self.group is None:
            return {}
        width = None if self.group.width is None else exact(self.group.width)
        return {
            "material": self.group.material,
            "thickness": exact(self.group.thickness),
            "width": width,
        }


@transaction.atomic
def plan_begin(
    *,
    job: Job,
    fingerprint: str,
    asked: Sequence[Asked],
    seconds: int,
    by: Person,
    at: datetime,
) -> CutPlan:
    """Ask for a plan; a worker works it out, material by material."""
    rows = [{"seconds": seconds, **one.stored} for one in asked]
    task = task_ask(
        shop=job.shop, job=job, kind="cutting plan", pieces=len(rows),
        piece_seconds=seconds + MARGIN, by=by, at=at,
    )  # fmt: skip
    try:
        with transaction.atomic():
            begun = CutPlan.objects.create(
                job=job, task=task, fingerprint=fingerprint, asked=rows, made_by=by, started_at=at
            )
    except IntegrityError as running:
        raise Refused("A plan for this job is being worked out already.") from running
    note(shop=job.shop, job=job, text="Began a cutting plan", at=at, person=by)
    tasks_admit(shop_id=job.shop_id)
    return begun


@transaction.atomic
def plan_cancel(*, plan: CutPlan, by: Person, at: datetime) -> None:
    """Call a plan off that is being worked out; one that has ended stays as it is."""
    if plan.task is not None and task_cancel(task=plan.task, by=by, at=at):
        note(shop=plan.job.shop, job=plan.job, text="Cancelled a cutting plan", at=at, person=by)


def plan_keep(*, plan: CutPlan, made: dict[str, Any]) -> None:
    """Keep the plan of one more material."""
    plan.found = [*plan.found, made]
    plan.save(update_fields=["found"])


def plan_end(*, plan: CutPlan, task: BackgroundTask) -> None:
    """Write down what became of the plan; of those that were finished, keep the last few."""
    done = task.state == TaskState.DONE
    plan.state = PlanState.DONE if done else PlanState.FAILED
    missing = plan.asked[len(plan.found) :] if task.state == TaskState.FAILED else []
    about = f"{missing[0]['name']}: " if missing else ""
    plan.fault, plan.finished_at = about + task.fault, task.ended_at
    plan.save(update_fields=["state", "fault", "finished_at"])
    if done and plan.finished_at is not None:
        plan_offcuts_lay_by(plan=plan, at=plan.finished_at)
    ended = CutPlan.objects.filter(job_id=plan.job_id).exclude(state=PlanState.WORKING)
    finished = ended.filter(state=PlanState.DONE).order_by("-started_at", "-pk")
    kept = [plan.pk, *finished.values_list("pk", flat=True)[:KEPT]]
    ended.exclude(pk__in=kept).delete()
