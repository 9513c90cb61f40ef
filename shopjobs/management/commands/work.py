"""`manage.py work`: the worker that makes cutting plans, sets of sheets and other long work."""

import os
import signal
import socket
import time
from argparse import ArgumentParser
from contextlib import suppress
from multiprocessing.process import BaseProcess
from types import FrameType
from typing import Any

from django.core.management.base import BaseCommand
from django.db import OperationalError, connections

from shopjobs.services.lost_tasks import worker_sign_off
from shopjobs.worker import LOOK, fork, work

PAUSE = 2.0
"""Seconds before a worker that ended is replaced: one that can't start mustn't take the machine."""
PATIENCE = 10.0
"""Seconds in which a worker gives its piece back before it is ended all the same."""


class Command(BaseCommand):
    """Keeps so many workers going: one that dies is replaced."""

    help = "Works on what the queue holds, until it is stopped; run more of it for more at once."

    def add_arguments(self, parser: ArgumentParser) -> None:
        """Take how many, and with whom they end."""
        parser.add_argument("--processes", type=int, default=1, help="so many at once (1)")
        parser.add_argument("--parent", type=int, help="end when this parent process does")

    def handle(self, *args: Any, processes: int, parent: int | None, **options: Any) -> None:
        """Start the workers, and again whichever ends, until told to stop."""
        self.stopping = False
        for number in (signal.SIGTERM, signal.SIGINT):
            signal.signal(number, self._stop)
        workers: list[BaseProcess] = []
        while not self.stopping and (parent is None or os.getppid() == parent):
            for gone in [worker for worker in workers if not worker.is_alive()]:
                workers.remove(gone)
                _sign_off(gone)
                time.sleep(PAUSE)
            workers += [_started() for _ in range(processes - len(workers))]
            time.sleep(LOOK)
        _end(workers)

    def _stop(self, number: int, frame: FrameType | None) -> None:
        self.stopping = True


def _started() -> BaseProcess:
    worker = fork.Process(target=work, args=(os.getpid(),))
    worker.start()
    return worker


def _sign_off(gone: BaseProcess) -> None:
    """Say at once that the worker is gone; where the database is away it is noticed later."""
    with suppress(OperationalError):
        worker_sign_off(host=socket.gethostname(), pid=gone.pid or 0)
    connections.close_all()


def _end(workers: list[BaseProcess]) -> None:
    """Let each worker give its piece back; end those that take too long."""
    for worker in workers:
        worker.terminate()
    until = time.monotonic() + PATIENCE
    for worker in workers:
        worker.join(max(0.0, until - time.monotonic()))
        worker.kill()
