"""How far a task has come, for whoever asked for it, and why it doesn't get on."""

from dataclasses import dataclass

from shopjobs.models import BackgroundTask, TaskState
from shopjobs.selectors import workers_alive


@dataclass(frozen=True, slots=True)
class TaskProgress:
    """So many of the pieces wanted are done; `look_again` in so many seconds."""

    done: int
    wanted: int
    waits: bool
    was_lost: bool
    has_worker: bool

    @property
    def is_at_work(self) -> bool:
        """Whether it gets on."""
        return self.has_worker and not self.waits

    @property
    def look_again(self) -> int:
        """Without a worker it is looked for less often."""
        return 1 if self.has_worker else 5


def task_progress(task: BackgroundTask) -> TaskProgress:
    """How far the task is."""
    return TaskProgress(
        done=task.done,
        wanted=task.pieces,
        waits=task.state == TaskState.WAITING,
        was_lost=task.tries > 0,
        has_worker=workers_alive().exists(),
    )
