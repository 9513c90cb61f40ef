"""The queue in tests that are about it: kept in the database, and worked off here or by a worker.

Elsewhere long work is done at once.
"""

import os
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from urllib.parse import quote

from django.conf import settings
from django.db import connection
from django.test import override_settings
from django.utils.crypto import get_random_string
from django_tasks_db.management.commands.db_worker import Worker as QueueWorker
from django_tasks_db.models import DBTaskResult

in_queue = override_settings(TASKS={"default": {"BACKEND": "django_tasks_db.DatabaseBackend"}})
"""Tasks wait in the database until somebody works on them."""


def work_off(pieces: int | None = None) -> None:
    """Make what the queue holds, or so many pieces of it, in this process."""
    worker = QueueWorker(
        queue_names=["*"], interval=0, batch=True, backend_name="default", startup_delay=False,
        max_tasks=None, worker_id=get_random_string(12), excluded_queue_names=[],
    )  # fmt: skip
    while pieces != 0 and (result := DBTaskResult.objects.ready().first()):
        result.claim(worker.worker_id)
        worker.run_task(result)
        pieces = None if pieces is None else pieces - 1


def database_url() -> str:
    """The address of the tests' own database, for processes that they start."""
    held = connection.settings_dict
    if connection.vendor == "sqlite":
        return f"sqlite:///{held['NAME']}"
    host = quote(str(held["HOST"]), safe="")
    signed = f"{held['USER']}:{held['PASSWORD']}".rstrip(":")
    return f"postgres://{signed}@{host}{':' if held['PORT'] else ''}{held['PORT']}/{held['NAME']}"


@contextmanager
def workers(processes: int = 1) -> Iterator["subprocess.Popen[bytes]"]:
    """`manage.py work` on the tests' database; what is left of it is ended."""
    command = [sys.executable, "manage.py", "work", "--processes", str(processes)]
    environ = {**os.environ, "DATABASE_URL": database_url()}
    environ["DJANGO_SETTINGS_MODULE"] = "shopjobs.settings"
    started = subprocess.Popen(
        [*command, "--parent", str(os.getpid())], cwd=settings.BASE_DIR, env=environ
    )
    try:
        yield started
    finally:
        started.terminate()
        started.wait(30)


def wait_until(true: Callable[[], bool], seconds: float = 60) -> None:
    """Wait for something that other processes do; what doesn't come fails."""
    end = time.monotonic() + seconds
    while not true():
        assert time.monotonic() < end, "it did not come about"
        time.sleep(0.1)
