"""Making a cutting plan: begun by a person, worked out beside the page, kept with its input."""

import logging
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from threading import Thread

from django.db import IntegrityError, connection, transaction
from django.utils import timezone

from fronts.cutting.model import Request
from fronts.cutting.plan_json import request_to_store, stored_request
from fronts.models import CutPlan, PlanState
from fronts.services.cutting_apart import planned_apart
from shopjobs.models import Job, Person
from shopjobs.services.diary import diary_write
from shopjobs.services.refused import Refused

MARGIN = timedelta(seconds=30)
"""What a run may take beyond its own seconds: starting a process, writing the plan out."""
AT_ONCE = 2
"""So many plans may be at work on this server: each takes a whole core."""
KEPT = 3
"""A job keeps so many finished plans; older ones go."""

log = logging.getLogger(__name__)


@dataclass(frozen=True, slots=True)
class Asked:
    """What one material is planned from; `key`, `name` say which one it is."""

    key: str
    name: str
    request: Request


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
    """Begin a plan; it is worked out once the transaction is through."""
    plans_give_up(job=job, at=at)
    _refuse_a_crowd(job, at)
    rows = [
        {"key": one.key, "name": one.name, "seconds": seconds, **request_to_store(one.request)}
        for one in asked
    ]
    try:
        with transaction.atomic():
            begun = CutPlan.objects.create(
                job=job, fingerprint=fingerprint, asked=rows, made_by=by, started_at=at,
                due_at=at + timedelta(seconds=seconds) + MARGIN,
            )  # fmt: skip
    except IntegrityError as running:
        raise Refused("A plan for this job is being worked out already.") from running
    diary_write(shop=job.shop, job=job, text="Began a cutting plan", at=at, person=by)
    transaction.on_commit(lambda: _start(begun.pk))
    return begun


def _refuse_a_crowd(job: Job, at: datetime) -> None:
    others = CutPlan.objects.filter(state=PlanState.WORKING, due_at__gte=at).exclude(job=job)
    if others.count() >= AT_ONCE:
        raise Refused(
            "Plans for other jobs are being worked out just now. Try again once one is done."
        )


def plans_give_up(*, job: Job, at: datetime) -> None:
    """Give up what should have been over: the server was stopped while it worked."""
    late = CutPlan.objects.filter(job=job, state=PlanState.WORKING, due_at__lt=at)
    late.update(
        state=PlanState.FAILED,
        finished_at=at,
        fault="The server was stopped while the plan was being worked out.",
    )


def plan_work(*, plan_id: int) -> None:
    """Work a begun plan out, material by material; each is kept as soon as it is there."""
    plan = CutPlan.objects.get(pk=plan_id)
    for row in plan.asked:
        worked = timezone.now()
        plan.due_at = worked + timedelta(seconds=row["seconds"]) + MARGIN
        plan.save(update_fields=["due_at"])
        patience = row["seconds"] + MARGIN.total_seconds() / 2
        stored = planned_apart(stored_request(row), row["seconds"], patience=patience)
        if stored is None:
            _finish(plan, PlanState.FAILED, f"No plan for {row['name']} came within its time.")
            return
        plan.found = [*plan.found, stored]
        plan.save(update_fields=["found"])
    _finish(plan, PlanState.DONE, "")


def _start(plan_id: int) -> None:
    Thread(
        target=_work_beside, args=(plan_id,), name=f"cutting-plan-{plan_id}", daemon=True
    ).start()


def _work_beside(plan_id: int) -> None:
    """What the thread does: whatever goes wrong, the plan does not stay at work."""
    try:
        plan_work(plan_id=plan_id)
    except Exception:
        log.exception("cutting plan %s failed", plan_id)
        CutPlan.objects.filter(pk=plan_id, state=PlanState.WORKING).update(
            state=PlanState.FAILED,
            finished_at=timezone.now(),
            fault="The plan could not be worked out; the server's log says why.",
        )
    finally:
        connection.close()


def _finish(plan: CutPlan, state: PlanState, fault: str) -> None:
    plan.state, plan.fault, plan.finished_at = state, fault, timezone.now()
    plan.save(update_fields=["state", "fault", "finished_at"])
    ended = CutPlan.objects.filter(job_id=plan.job_id).exclude(state=PlanState.WORKING)
    done = ended.filter(state=PlanState.DONE).order_by("-started_at", "-pk")
    kept = [plan.pk, *done.values_list("pk", flat=True)[:KEPT]]
    ended.exclude(pk__in=kept).delete()
