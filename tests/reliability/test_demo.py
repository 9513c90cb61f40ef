"""The demo's worker begins with its server, and ends with it however that ends."""

import os
import signal
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from django.conf import settings

from shopjobs.management.commands.demo import free_port
from shopjobs.models import Worker
from tests.queue_work import database_url, wait_until

pytestmark = [pytest.mark.django_db(transaction=True), pytest.mark.slow, pytest.mark.thorough]


@pytest.fixture
def demo(tmp_path: Path) -> Iterator["subprocess.Popen[bytes]"]:
    """The demo, with its worker at work, in a process group of its own as in a terminal."""
    environ = {**os.environ, "DATABASE_URL": database_url(), "XDG_DATA_HOME": str(tmp_path)}
    environ["DJANGO_SETTINGS_MODULE"] = "shopjobs.settings"
    command = [sys.executable, "manage.py", "demo", "--port", str(free_port(None))]
    started = subprocess.Popen(
        command, cwd=settings.BASE_DIR, env=environ, stdout=subprocess.DEVNULL,
        start_new_session=True,
    )  # fmt: skip
    wait_until(lambda: Worker.objects.exists())
    yield started
    if started.poll() is None:
        os.killpg(started.pid, signal.SIGKILL)
        started.wait()


def is_running(pid: int) -> bool:
    """Whether there is such a process; one that ended and was not waited for isn't."""
    try:
        stat = Path(f"/proc/{pid}/stat").read_text("utf-8")
    except OSError:
        return False
    return stat.rpartition(")")[2].split()[0] != "Z"


@pytest.mark.parametrize("how", ["Ctrl-C", "kill", "kill -9"])
def test_the_worker_ends_with_the_demo(how: str, demo: "subprocess.Popen[bytes]") -> None:
    """No process is left, and none that says it works."""
    worker = Worker.objects.get()

    if how == "Ctrl-C":
        os.killpg(demo.pid, signal.SIGINT)
    else:
        demo.send_signal(signal.SIGKILL if how == "kill -9" else signal.SIGTERM)
    demo.wait(30)

    wait_until(lambda: not is_running(worker.pid), seconds=15)
    assert not Worker.objects.exists()
