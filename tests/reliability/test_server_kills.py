"""The web server killed again and again while two people save over HTTP.

Whoever got no answer sends the same once more, as browsers and people do: what was answered
stays, and what was sent twice is there once.
"""

import os
import random
import shlex
import signal
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import closing, contextmanager
from http.client import HTTPConnection
from pathlib import Path
from threading import Event

import pytest
from django.conf import settings
from django.core.management import call_command
from django.db import connection, connections

from fronts.models import Cabinet, DoorOnHand
from shopjobs.management.commands.demo import HOST, free_port
from shopjobs.models import Job, Revision
from tests.production.running import printed_lines
from tests.queue_work import database_url, wait_until
from tests.reliability.http_writer import BROKEN, Writer
from tests.tried import Tally

pytestmark = [pytest.mark.django_db(transaction=True), pytest.mark.reliability]
KILLS = 25
SEED = 17


@contextmanager
def server(port: int) -> Iterator[None]:
    """The web server as README's last line for production starts it; killed in the end."""
    environ = {
        **os.environ,
        "DATABASE_URL": database_url(),
        "GUNICORN_CMD_ARGS": "--log-level=error",
    }
    environ["DJANGO_SETTINGS_MODULE"] = "shopjobs.settings"
    line = f"{printed_lines(chr(10) + 'gunicorn ')[-1]} --bind {HOST}:{port}"
    started = subprocess.Popen(
        [sys.executable, "-m", *shlex.split(line)], cwd=settings.BASE_DIR, env=environ,
        start_new_session=True,
    )  # fmt: skip
    try:
        yield
    finally:
        os.killpg(started.pid, signal.SIGKILL)
        started.wait()


def answers(port: int) -> bool:
    """Whether the site is up."""
    try:
        with closing(HTTPConnection(HOST, port, timeout=5)) as asked:
            asked.request("GET", "/sign-in/")
            return asked.getresponse().status == 200
    except BROKEN:
        return False


def test_what_was_answered_stays_and_nothing_is_doubled(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, tally: Tally
) -> None:
    """Every save that was answered is in the database once, which is whole; the site answers."""
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path))
    call_command("demo", "--no-serve")
    job, port, over = Job.objects.get(), free_port(None), Event()
    told = Revision.objects.filter(job=job).count()
    cabinets = Cabinet.objects.filter(job=job, kind="base")[:2]
    writers = [
        Writer(name, port, cabinet, over)
        for name, cabinet in zip(("owner", "office"), cabinets, strict=True)
    ]
    connections.close_all()  # The server alone has the database, and must mend it by itself.
    moments = random.Random(SEED)
    for kill in range(KILLS):
        with server(port):
            wait_until(lambda: answers(port))
            for writer in writers if kill == 0 else []:
                writer.start()
            before = [(writer.saves, len(writer.faults)) for writer in writers]
            wait_until(lambda: before != [(it.saves, len(it.faults)) for it in writers])  # noqa: B023
            time.sleep(moments.uniform(0, 1.5))
    with server(port):
        wait_until(lambda: answers(port))
        over.set()
        for writer in writers:
            writer.join(60)
            assert not writer.is_alive()
        assert answers(port)

    for writer in writers:
        for label in writer.made:
            there = DoorOnHand.objects.filter(job=job, label=label).count()
            tally.of(*[] if there == 1 else [f"{label} is there {there} times"])
        for _ in range(writer.changes):
            tally.of()
        for fault in writer.faults:
            tally.of(fault)
    saves = sum(writer.saves for writer in writers)
    again = sum(writer.again for writer in writers)
    print(f"{KILLS} kills, {saves} saves, {again} sent again")
    assert Revision.objects.filter(job=job).count() == told + saves
    if connection.vendor == "sqlite":
        with connection.cursor() as cursor:
            assert cursor.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
    tally.check()
