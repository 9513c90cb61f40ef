"""Long work that somebody asked for, and the workers that do it."""

from django.conf import settings
from django.db import models

from shopjobs.models.job import Job
from shopjobs.models.shop import Shop


class TaskState(models.TextChoices):
    """How far a task has come; from the third on it has ended."""

    WAITING = "waiting", "waiting for a place"
    AT_WORK = "at work", "being worked on"
    DONE = "done", "done"
    FAILED = "failed", "failed"
    CANCELLED = "cancelled", "cancelled"


OPEN = (TaskState.WAITING, TaskState.AT_WORK)
"""The states of a task that has not ended."""


class BackgroundTask(models.Model):
    """A task of one shop, worked on piece by piece; what it is about stands in its kind's table.

    The queue of Django's task interface holds at most one piece of it at a time, as `result_id`.
    `run` counts the pieces that were handed to the queue: whoever works on an older one was
    overtaken, and changes nothing. `tries` counts how often the piece was lost with its worker.
    """

    shop = models.ForeignKey(Shop, on_delete=models.CASCADE, related_name="tasks")
    job = models.ForeignKey(Job, on_delete=models.CASCADE, null=True, related_name="+")
    kind = models.CharField(max_length=40)
    pieces = models.PositiveIntegerField()
    done = models.PositiveIntegerField(default=0)
    piece_seconds = models.PositiveIntegerField()
    state = models.CharField(max_length=9, choices=TaskState, default=TaskState.WAITING)
    fault = models.CharField(max_length=400, blank=True)
    asked_by = models.ForeignKey(
        settings.AUTH_USER_MODEL, on_delete=models.SET_NULL, null=True, related_name="+"
    )
    asked_at = models.DateTimeField()
    ended_at = models.DateTimeField(null=True)
    run = models.PositiveIntegerField(default=0)
    tries = models.PositiveSmallIntegerField(default=0)
    result_id = models.CharField(max_length=36, blank=True)

    class Meta:
        indexes = [
            models.Index(fields=["shop", "state"], name="task_by_shop"),
            models.Index(
                fields=["asked_at"],
                condition=models.Q(state__in=OPEN),
                name="task_open",
            ),
        ]

    def __str__(self) -> str:
        return f"{self.kind} {self.pk}"

    @property
    def is_open(self) -> bool:
        """Whether something will still come of it."""
        return self.state in OPEN


class Worker(models.Model):
    """A worker process; one that was not `seen_at` for some seconds is gone, and its piece lost.

    The database's own clock says when it was seen: those of several machines may differ.
    """

    name = models.CharField(max_length=64, primary_key=True)
    host = models.CharField(max_length=255)
    pid = models.PositiveIntegerField()
    seen_at = models.DateTimeField(db_index=True)

    def __str__(self) -> str:
        return self.name
