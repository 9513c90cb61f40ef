"""Asking for long work, and calling it off."""

from datetime import datetime

from django.db import transaction

from shopjobs.models import BackgroundTask, Job, Person, Shop, TaskState
from shopjobs.selectors import open_tasks_of
from shopjobs.services.locks import shop_lock
from shopjobs.services.refused import Refused
from shopjobs.services.task_pieces import AT_WORK_A_SHOP, result_forget, task_end

WAITING_A_SHOP = 10
"""So many more of a shop's tasks may wait."""


@transaction.atomic
def task_ask(
    *,
    shop: Shop,
    kind: str,
    pieces: int,
    piece_seconds: int,
    at: datetime,
    by: Person | None,
    job: Job | None = None,
) -> BackgroundTask:
    """Write a task down. Its kind's own row comes next, and then `tasks_admit`."""
    shop_lock(shop.pk)
    if open_tasks_of(shop).count() >= AT_WORK_A_SHOP + WAITING_A_SHOP:
        raise Refused(
            f"Your shop has {AT_WORK_A_SHOP} plans and sets of sheets being worked on and "
            f"{WAITING_A_SHOP} waiting, which is as many as it may have at once. Ask again "
            "when one of them is done, or cancel one."
        )
    return BackgroundTask.objects.create(
        shop=shop, job=job, kind=kind, pieces=pieces, piece_seconds=piece_seconds, asked_by=by,
        asked_at=at,
    )  # fmt: skip


@transaction.atomic
def task_cancel(*, task: BackgroundTask, by: Person, at: datetime) -> bool:
    """Call a task off; whoever works on it is stopped. False where it had ended before."""
    shop_lock(task.shop_id)
    task.refresh_from_db()
    if not task.is_open:
        return False
    result_forget(task)
    task_end(task, TaskState.CANCELLED, fault=f"Cancelled by {by.shown_name}.", at=at)
    return True
