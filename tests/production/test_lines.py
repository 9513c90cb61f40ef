"""The README's lines for production, run as they are printed, in a copy of the project."""

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

PARTS = ("fronts", "shopjobs", "static", "templates")
SECONDS_TO_START = 120
BEHIND_PROXY = {
    "Host": "fronts.example", "X-Forwarded-Proto": "https", "X-Forwarded-For": "192.0.2.7"
}  # fmt: skip


@pytest.fixture
def site(tmp_path: Path) -> Path:
    """A copy of the project that nobody has used yet."""
    copy = tmp_path / "site"
    for part in PARTS:
        shutil.copytree(ROOT / part, copy / part, ignore=shutil.ignore_patterns("__pycache__"))
    shutil.copy(ROOT / "manage.py", copy)
    return copy


def printed_lines() -> list[str]:
    """The lines for production: settings, commands, and the server last."""
    section = (ROOT / "README.md").read_text(encoding="utf-8").split("## In production")[1]
    block: str = re.findall(r"```\n(.*?)```", section, re.DOTALL)[0]
    return block.splitlines()


def surroundings(site: Path, **given: str) -> dict[str, str]:
    """An activated environment on a machine where nothing is set for the site."""
    ours = ("SHOPJOBS_", "DATABASE_URL", "DJANGO_", "GUNICORN_", "PYTEST_", "COV")
    kept = {key: value for key, value in os.environ.items() if not key.startswith(ours)}
    path = os.pathsep.join([str(Path(sys.executable).parent), kept.get("PATH", "")])
    home = {"HOME": str(site.parent), "XDG_DATA_HOME": str(site.parent)}
    return {**kept, "PATH": path, "VIRTUAL_ENV": sys.prefix, **home, **given}


def run(lines: list[str], site: Path) -> str:
    """Run lines one after another in one shell and return what they said."""
    done = subprocess.run(
        ["bash", "-ec", "\n".join(lines)],
        cwd=site,
        env=surroundings(site),
        capture_output=True,
        text=True,
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


@pytest.mark.parametrize("exported", [True, False], ids=["as printed", "nothing exported"])
def test_the_lines_for_production_bring_up_a_site(exported: bool, site: Path) -> None:
    """Checked, migrated, collected and served: pages, and styles that are kept for good.

    What was collected before anybody said that the site is behind HTTPS serves it too.
    """
    export, *lines, server = printed_lines()
    said = run([export, *lines] if exported else lines, site)

    assert export.startswith("export SHOPJOBS_HTTPS=1")
    assert "System check identified no issues" in said or not exported
    assert "Applying fronts.0001_initial... OK" in said
    assert re.search(r"\d+ static files copied .*post-processed", said)
    with served([export, server], site) as port:
        status, headers, page = answer_of(port, "/sign-in/")
        styles = re.findall(r'href="(/static/[^"]+\.css)"', page)
        assert (status, "Strict-Transport-Security" in headers, styles != []) == (200, True, True)
        for address in styles:
            status, headers, _ = answer_of(port, address)
            assert (status, re.search(r"\.[0-9a-f]{12}\.css$", address) is not None) == (200, True)
            assert "immutable" in headers["Cache-Control"]


@pytest.mark.parametrize(
    ("given", "header"),
    [
        ([], "max-age=31536000"),
        (["SUBDOMAINS"], "max-age=31536000; includeSubDomains"),
        (["SUBDOMAINS", "PRELOAD"], "max-age=31536000; includeSubDomains; preload"),
    ],
    ids=["by itself", "subdomains", "preload"],
)
def test_whoever_runs_the_site_says_how_far_https_binds(
    given: list[str], header: str, site: Path
) -> None:
    """Other names of the same domain are bound only where the settings say so (RFC 6797)."""
    export, *_ = printed_lines()
    asks = (
        "import django; django.setup(); from django.test import Client;"
        "print(Client().get('/jobs/', secure=True, headers={'host': 'fronts.example'})"
        "['Strict-Transport-Security'])"
    )
    more = [f"export SHOPJOBS_HSTS_{name}=1" for name in given]

    said = run(
        [
            export,
            *more,
            "python manage.py check --deploy --fail-level WARNING",
            "export DJANGO_SETTINGS_MODULE=shopjobs.settings",
            f'python -c "{asks}" 2>/dev/null',
        ],
        site,
    )

    checked, sent = said.splitlines()[-2:]
    assert checked.startswith("System check identified no issues")
    assert sent == header
