"""Whether long work gets done, for /readyz: somebody works on it, and none waits for ever."""

from datetime import timedelta

from django.db.models.functions import Now

from shopjobs.health import NotReadyError
from shopjobs.models import BackgroundTask, TaskState
from shopjobs.selectors import workers_alive

LONGEST_WAIT = timedelta(minutes=30)
"""What was asked so long ago and still has no place says that more workers are needed."""


def queue() -> None:
    """Ask whether a worker is alive and how long the oldest task has waited."""
    waiting = BackgroundTask.objects.filter(state=TaskState.WAITING)
    if not workers_alive().exists():
        raise NotReadyError(f"no worker is running; {waiting.count()} tasks wait")
    late = waiting.filter(asked_at__lt=Now() - LONGEST_WAIT).count()
    if late:
        minutes = LONGEST_WAIT // timedelta(minutes=1)
        raise NotReadyError(f"{late} tasks have waited for more than {minutes} minutes")
