"""The pieces of long work: handed to the queue, made, counted, until a task has ended.

A task that waits for a place stands in our own table only, so that one shop can't fill the queue.
Every change of a task's state holds the lock of its shop, and asks whether it was overtaken.
"""

from datetime import datetime

from django.db import OperationalError, transaction
from django.utils import timezone
from django_tasks import task as queued
from django_tasks_db.models import DBTaskResult

from shopjobs.models import BackgroundTask, TaskState
from shopjobs.services.locks import shop_lock
from shopjobs.services.refused import Refused
from shopjobs.task_kinds import kind_of

AT_WORK_A_SHOP = 2
"""So many tasks of one shop have a piece in the queue; those of others come in between. Whoever
of the shop has none there yet has one all the same, and waits for nobody's else."""


def task_current(task_id: int, run: int) -> BackgroundTask | None:
    """The task while this piece of it counts, its shop locked; None where it was overtaken."""
    shop_id = BackgroundTask.objects.filter(pk=task_id).values_list("shop_id", flat=True).first()
    if shop_id is None:
        return None
    shop_lock(shop_id)
    return BackgroundTask.objects.filter(pk=task_id, run=run, state=TaskState.AT_WORK).first()


@transaction.atomic
def tasks_admit(*, shop_id: int) -> None:
    """Hand the shop's oldest waiting tasks to the queue, while it has places; those of people
    who have nothing there come first, and always."""
    shop_lock(shop_id)
    tasks = BackgroundTask.objects.filter(shop_id=shop_id)
    at_work = [task.asked_by_id for task in tasks.filter(state=TaskState.AT_WORK)]
    waiting = [*tasks.filter(state=TaskState.WAITING).order_by("asked_at", "pk")]
    for task in sorted(waiting, key=lambda task: task.asked_by_id in at_work):
        if len(at_work) < AT_WORK_A_SHOP or task.asked_by_id not in at_work:
            at_work.append(task.asked_by_id)
            piece_enqueue(task)


def piece_enqueue(task: BackgroundTask) -> None:
    """Put the task's next piece at the queue's end, in the transaction that counts the last."""
    task.state, task.run = TaskState.AT_WORK, task.run + 1
    task.save(update_fields=["state", "run", "done", "tries"])
    result = piece.enqueue(task.pk, task.run)
    BackgroundTask.objects.filter(pk=task.pk, run=task.run).update(result_id=str(result.id))


@queued
def piece(task_id: int, run: int) -> None:
    """Make one piece and keep what came of it; what can't be made fails its task, in words.

    Where the database was away or held up, the piece is lost, and so tried once more.
    """
    task = BackgroundTask.objects.filter(pk=task_id, run=run, state=TaskState.AT_WORK).first()
    if task is None:
        return
    try:
        _piece_keep(task_id, run, kind_of(task).make(task))
    except OperationalError:
        raise
    except Exception as failure:
        fault = failure.message if isinstance(failure, Refused) else kind_of(task).fault
        piece_fail(task_id, run, fault=fault, at=timezone.now())
        raise


@transaction.atomic
def _piece_keep(task_id: int, run: int, made: object) -> None:
    task = task_current(task_id, run)
    if task is None:
        return
    kind_of(task).keep(task, made)
    task.done, task.tries = task.done + 1, 0
    if task.done < task.pieces:
        piece_enqueue(task)
    else:
        task_end(task, TaskState.DONE, at=timezone.now())


@transaction.atomic
def piece_fail(task_id: int, run: int, *, fault: str, at: datetime) -> None:
    """End the task, unless it was overtaken."""
    task = task_current(task_id, run)
    if task is not None:
        task_end(task, TaskState.FAILED, fault=fault, at=at)


def result_forget(task: BackgroundTask) -> None:
    """Take the task's piece out of the queue."""
    if task.result_id:
        DBTaskResult.objects.filter(pk=task.result_id).delete()


def task_end(task: BackgroundTask, state: TaskState, *, at: datetime, fault: str = "") -> None:
    """End a task whose shop is locked; the next of the shop takes its place."""
    task.state, task.fault, task.ended_at, task.result_id = state, fault, at, ""
    task.save(update_fields=["state", "fault", "ended_at", "result_id", "done"])
    kind_of(task).ended(task)
    tasks_admit(shop_id=task.shop_id)
