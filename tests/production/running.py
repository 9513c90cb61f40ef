"""A copy of the project that nobody has used yet, and lines that are run in it as printed."""

import http.client
import os
import re
import shutil
import socket
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

import pytest

from shopjobs.bootstrap import ROOT

PARTS = ("fixtures", "fronts", "shopjobs", "static", "templates")
SECONDS_TO_START = 120
BEHIND_PROXY = {
    "Host": "fronts.example", "X-Forwarded-Proto": "https", "X-Forwarded-For": "192.0.2.7"
}  # fmt: skip
README = (ROOT / "README.md").read_text(encoding="utf-8")


def copy_site(to: Path) -> Path:
    """Copy the project as it would be cloned."""
    for part in PARTS:
        shutil.copytree(ROOT / part, to / part, ignore=shutil.ignore_patterns("__pycache__"))
    for name in ("manage.py", "pyproject.toml"):
        shutil.copy(ROOT / name, to)
    return to


def printed_lines(beside: str) -> list[str]:
    """The lines of README's block of commands that has these words in it."""
    blocks: list[str] = re.findall(r"```\n(.*?)```", README, re.DOTALL)
    (block,) = (block for block in blocks if beside in block)
    return block.splitlines()


def surroundings(site: Path, **given: str) -> dict[str, str]:
    """An activated environment on a machine where nothing is set for the site."""
    ours = ("SHOPJOBS_", "DATABASE_URL", "DJANGO_", "GUNICORN_", "PYTEST_", "COV")
    kept = {key: value for key, value in os.environ.items() if not key.startswith(ours)}
    path = os.pathsep.join([str(Path(sys.executable).parent), kept.get("PATH", "")])
    home = {"HOME": str(site.parent), "XDG_DATA_HOME": str(site.parent)}
    return {**kept, "PATH": path, "VIRTUAL_ENV": sys.prefix, **home, **given}


def run(lines: list[str], site: Path, *, typed: str = "", **given: str) -> str:
    """Run lines one after another in one shell and return what they said.

    The shell has no terminal, so that what asks for a password reads what is typed here.
    """
    done = subprocess.run(
        ["bash", "-ec", "\n".join(lines)],
        cwd=site,
        env=surroundings(site, **given),
        input=typed,
        capture_output=True,
        text=True,
        start_new_session=True,
    )
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout + done.stderr


@contextmanager
def served(lines: list[str], site: Path) -> Iterator[int]:
    """Run lines whose last one serves, at a free port, until the answer is in."""
    with socket.socket() as door:
        door.bind(("127.0.0.1", 0))
        port: int = door.getsockname()[1]
    *before, server = lines
    environ = surroundings(site, GUNICORN_CMD_ARGS=f"--bind 127.0.0.1:{port}")
    script = "\n".join([*before, f"exec {server}"])
    with subprocess.Popen(["bash", "-ec", script], cwd=site, env=environ) as process:
        try:
            _wait_for(port, process)
            yield port
        finally:
            process.terminate()


def _wait_for(port: int, process: "subprocess.Popen[bytes]") -> None:
    until = time.monotonic() + SECONDS_TO_START
    while time.monotonic() < until and process.poll() is None:
        with socket.socket() as door:
            if door.connect_ex(("127.0.0.1", port)) == 0:
                return
        time.sleep(0.1)
    pytest.fail("the server did not come up")


def answer_of(port: int, address: str) -> tuple[int, dict[str, str], str]:
    """What the site answers to a proxy in front of it: status, headers, text."""
    server = http.client.HTTPConnection("127.0.0.1", port, timeout=SECONDS_TO_START)
    with closing(server) as connection:
        connection.request("GET", address, headers=BEHIND_PROXY)
        answer = connection.getresponse()
        return answer.status, dict(answer.getheaders()), answer.read().decode()
