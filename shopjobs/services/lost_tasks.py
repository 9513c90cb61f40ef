"""What becomes of a piece whose worker was killed, stopped or overran its time.

The queue's own table marks a piece as running and leaves it so for good where its worker dies;
nothing in the library looks after that. So each worker writes down every few seconds that it is
there, and all of them look for pieces of those that aren't.
"""

import logging
from datetime import datetime, timedelta
from typing import Any

from django.db import transaction
from django.db.models.functions import Now
from django_tasks import TaskResultStatus
from django_tasks_db.models import DBTaskResult

from shopjobs.models import BackgroundTask, TaskState, Worker
from shopjobs.selectors import workers_alive
from shopjobs.services.task_pieces import (
    piece_enqueue,
    result_forget,
    task_current,
    task_end,
    tasks_admit,
)

TRIES = 2
"""A piece that was lost with its worker is tried once more."""
KEPT_FOR = timedelta(days=1)
"""What has ended is kept so long, with the files that came of it."""

log = logging.getLogger(__name__)


def tasks_reclaim(*, at: datetime) -> None:
    """Take back every piece that nobody works on any more, and let waiting tasks in."""
    at_work = list(BackgroundTask.objects.filter(state=TaskState.AT_WORK))
    if at_work:
        queue = DBTaskResult.objects.in_bulk([task.result_id for task in at_work if task.result_id])
        results = {str(result_id): result for result_id, result in queue.items()}
        alive = set(workers_alive().values_list("name", flat=True))
        for task in at_work:
            result = results.get(task.result_id)
            if result is None:
                piece_give_back(task.pk, task.run)
            elif not _is_cared_for(result, alive):
                piece_lost(task.pk, task.run, at=at)
    waiting = BackgroundTask.objects.filter(state=TaskState.WAITING)
    for shop_id in waiting.order_by().values_list("shop_id", flat=True).distinct():
        tasks_admit(shop_id=shop_id)


def _is_cared_for(result: "DBTaskResult[Any, Any]", alive: set[str]) -> bool:
    if result.status == TaskResultStatus.RUNNING:
        return result.worker_ids[-1] in alive
    return bool(result.status == TaskResultStatus.READY)


@transaction.atomic
def piece_lost(task_id: int, run: int, *, at: datetime) -> None:
    """Try the piece once more; the second time, fail its task."""
    task = task_current(task_id, run)
    if task is None:
        return
    result_forget(task)
    task.tries += 1
    log.warning("task %s, piece %s: lost with its worker, %s", task, task.done, task.tries)
    if task.tries < TRIES:
        piece_enqueue(task)
        return
    fault = "The worker was stopped twice while this was being worked on. Nothing else is lost."
    task_end(task, TaskState.FAILED, fault=fault, at=at)


@transaction.atomic
def piece_give_back(task_id: int, run: int) -> None:
    """Put the piece into the queue anew, which is no failure.

    Its worker was told to stop, or the queue was lost: with a restored backup, for one.
    """
    task = task_current(task_id, run)
    if task is not None:
        result_forget(task)
        piece_enqueue(task)


def worker_beat(*, name: str, host: str, pid: int) -> None:
    """Write down that the worker is there."""
    Worker.objects.update_or_create(
        name=name, defaults={"host": host, "pid": pid, "seen_at": Now()}
    )


def worker_sign_off(*, host: str, pid: int) -> None:
    """Write down that the worker is gone, so that nobody waits to find out."""
    Worker.objects.filter(host=host, pid=pid).delete()


@transaction.atomic
def tasks_tidy(*, at: datetime) -> None:
    """Delete what ended long ago, what came of it included, and workers that never signed off."""
    old = at - KEPT_FOR
    BackgroundTask.objects.filter(ended_at__lt=old).delete()
    DBTaskResult.objects.finished().filter(finished_at__lt=old).delete()
    DBTaskResult.objects.running().filter(started_at__lt=old).delete()
    Worker.objects.filter(seen_at__lt=old).delete()
