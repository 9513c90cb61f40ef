"""A worker: takes pieces of long work from the queue and has each made by a process of its own.

So a piece can be stopped whenever it is called off, overruns its time or takes the memory, and
the worker itself goes on saying that it is there.
"""

import logging
import multiprocessing
import os
import signal
import socket
import time
from collections.abc import Callable
from multiprocessing.process import BaseProcess
from threading import Thread
from types import FrameType
from typing import Any

from django.db import OperationalError, connection, connections
from django.utils import timezone
from django.utils.crypto import get_random_string
from django_tasks_db.management.commands.db_worker import Worker as QueueWorker
from django_tasks_db.models import DBTaskResult

from shopjobs.models import BackgroundTask, FilePut, TaskState
from shopjobs.services.lost_tasks import (
    piece_give_back,
    piece_lost,
    tasks_reclaim,
    tasks_tidy,
    worker_beat,
    worker_sign_off,
)
from shopjobs.services.task_pieces import piece_fail
from shopjobs.services.unnamed_files import files_tidy
from shopjobs.task_kinds import load_kinds

LOOK = 0.5
"""Seconds between one look at the queue, or at the piece that is being made, and the next."""
BEAT = 2.0
TIDY = 600.0
FILES = 3600.0
NICE = 10
"""The pages come before long work."""

log = logging.getLogger(__name__)
fork = multiprocessing.get_context("fork")


class PieceWorker(QueueWorker):
    """The library's worker, which takes one piece at a time and stays in charge while it is made.

    `parent` is the process that started it, with which it ends.
    """

    def __init__(self, *, parent: int) -> None:
        self.host, self.pid = socket.gethostname(), os.getpid()
        super().__init__(
            queue_names=["*"], interval=0, batch=True, backend_name="default",
            startup_delay=False, max_tasks=1, excluded_queue_names=[],
            worker_id=f"{self.host[:32]}-{self.pid}-{get_random_string(8)}",
        )  # fmt: skip
        self.parent = parent
        self._every: dict[str, float] = {}

    def work(self) -> None:
        """Take piece after piece until told to stop."""
        while self.is_wanted:
            self._look_around()
            if self._is_time("files", FILES) and FilePut.objects.exists():
                _tidy_files_aside()
            if DBTaskResult.objects.ready().exists():
                self.run()
            else:
                time.sleep(LOOK)
        worker_sign_off(host=self.host, pid=self.pid)

    @property
    def is_wanted(self) -> bool:
        """Whether nobody told the worker to stop, and who started it is still there."""
        return self.running and os.getppid() == self.parent

    def stop(self, number: int, frame: FrameType | None) -> None:
        """Stop soon; what is being made goes back to the queue."""
        self.running = False

    def run_task(self, db_task_result: "DBTaskResult[Any, Any]") -> None:
        """Have the piece made by a process of its own, and look after that."""
        task_id, run = db_task_result.args_kwargs["args"]
        limit = BackgroundTask.objects.values_list("piece_seconds", flat=True).get(pk=task_id)
        connections.close_all()
        process = fork.Process(target=self._make, args=(db_task_result,))
        process.start()
        try:
            self._look_after(process, task_id, run, time.monotonic() + limit)
        finally:
            process.kill()
            process.join()
            self._run_tasks += 1

    def _make(self, db_task_result: "DBTaskResult[Any, Any]") -> None:
        """What the process does: the piece, after the pages' work, and not without its worker."""
        signal.signal(signal.SIGTERM, signal.SIG_DFL)
        signal.signal(signal.SIGINT, signal.SIG_IGN)
        os.nice(NICE)
        Thread(target=_end_with, args=(self.pid,), daemon=True).start()
        super().run_task(db_task_result)

    def _look_after(self, process: BaseProcess, task_id: int, run: int, due: float) -> None:
        """Wait for the piece; end it when it must not go on."""
        while True:
            process.join(LOOK)
            if process.exitcode == 0:
                return
            if process.exitcode is not None:
                piece_lost(task_id, run, at=timezone.now())
                return
            if not self.is_wanted:
                process.kill()
                piece_give_back(task_id, run)
                return
            if time.monotonic() > due:
                process.kill()
                fault = "Nothing came of it within its time, and so it was stopped."
                piece_fail(task_id, run, fault=fault, at=timezone.now())
                return
            if _is_overtaken(task_id, run, self._look_around):
                return

    def _look_around(self) -> None:
        """Say that one is there, and take back what others lost, each in its turn."""
        if self._is_time("beat", BEAT):
            worker_beat(name=self.worker_id, host=self.host, pid=self.pid)
            tasks_reclaim(at=timezone.now())
        if self._is_time("tidy", TIDY):
            tasks_tidy(at=timezone.now())

    def _is_time(self, what: str, seconds: float) -> bool:
        if time.monotonic() < self._every.get(what, 0.0):
            return False
        self._every[what] = time.monotonic() + seconds
        return True


def _is_overtaken(task_id: int, run: int, look_around: Callable[[], None]) -> bool:
    """Whether the piece was called off or is another's by now; a database that is away says no."""
    try:
        look_around()
        counts = BackgroundTask.objects.filter(pk=task_id, run=run, state=TaskState.AT_WORK)
        return not counts.exists()
    except OperationalError:
        log.exception("the database is away or held up; the piece goes on")
        connection.close()
        return False


def _tidy_files_aside() -> None:
    """By a process of its own: a store that is slow or away holds nothing up."""
    connections.close_all()
    fork.Process(target=_tidy_files, daemon=True).start()


def _tidy_files() -> None:
    for number in (signal.SIGTERM, signal.SIGINT):
        signal.signal(number, signal.SIG_DFL)
    os.nice(NICE)
    files_tidy(at=timezone.now())


def _end_with(pid: int) -> None:
    """End this process once its parent is gone: what it makes counts for nothing then."""
    while os.getppid() == pid:
        time.sleep(LOOK)
    os._exit(1)


def work(parent: int) -> None:
    """What a worker process does, from its start to its end."""
    connections.close_all()
    worker = PieceWorker(parent=parent)
    for number in (signal.SIGTERM, signal.SIGINT):
        signal.signal(number, worker.stop)
    load_kinds()
    worker.work()
