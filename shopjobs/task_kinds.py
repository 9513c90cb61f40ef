"""What kinds of long work there are: one line each in the setting TASK_KINDS.

A kind's own table holds what it works from and what came of it, in a row that points at the task.
"""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from django.conf import settings
from django.utils.module_loading import import_string

from shopjobs.models import BackgroundTask


@dataclass(frozen=True, slots=True, kw_only=True)
class TaskKind:
    """How the pieces of a kind of task are made and kept.

    `make` may take long and must change nothing: it may be stopped at any moment, and is then
    tried again. `keep` is short and runs in the transaction that counts the piece, so that
    what it saves is saved once. `ended` is called when the task is done, failed or cancelled.
    `fault` is what people read where something unforeseen went wrong.
    """

    make: Callable[[BackgroundTask], Any]
    keep: Callable[[BackgroundTask, Any], None]
    ended: Callable[[BackgroundTask], None]
    fault: str


def kind_of(task: BackgroundTask) -> TaskKind:
    """The kind of a task."""
    kind: TaskKind = import_string(settings.TASK_KINDS[task.kind])
    return kind


def load_kinds() -> None:
    """Import what the kinds need, once for all the processes that a worker makes of itself."""
    for path in settings.TASK_KINDS.values():
        import_string(path)
