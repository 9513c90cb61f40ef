"""The site as it is served, in processes of its own, and people who ask it over HTTP."""

import os
import subprocess
import sys
import time
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from http import HTTPStatus
from http.client import HTTPConnection, HTTPResponse
from urllib.parse import urlencode

from django.conf import settings
from django.test import Client

from shopjobs.management.commands.demo import HOST, free_port
from shopjobs.models import Person
from tests.queue_work import database_url

AS_FORM = "application/x-www-form-urlencoded"


@contextmanager
def served() -> Iterator[int]:
    """The web server as the guide says it is run, on the benchmark's database; its port."""
    port = free_port(None)
    environ = {**os.environ, "DATABASE_URL": database_url()}
    environ["DJANGO_SETTINGS_MODULE"] = "shopjobs.settings"
    command = [sys.executable, "-m", "gunicorn", "shopjobs.wsgi", "--bind", f"{HOST}:{port}"]
    workers = ["--worker-class", "gthread", "--workers", "2", "--threads", "4", "--timeout", "120"]
    server = subprocess.Popen(
        [*command, *workers, "--log-level", "error"], cwd=settings.BASE_DIR, env=environ
    )
    try:
        _wait_for(port)
        yield port
    finally:
        server.terminate()
        server.wait(30)


def _wait_for(port: int) -> None:
    for _ in range(300):
        try:
            HTTPConnection(HOST, port, timeout=5).request("GET", "/healthz")
        except OSError:
            time.sleep(0.1)
        else:
            return
    raise RuntimeError("the server did not start")


class Visitor:
    """A person who is signed in, over one connection."""

    def __init__(self, person: Person, port: int) -> None:
        client = Client()
        client.force_login(person)
        self.port = port
        self.cookies = {name: cookie.value for name, cookie in client.cookies.items()}

    def get(self, path: str, **headers: str) -> tuple[float, str]:
        """Fetch a page, again where it says so; milliseconds until it came, and what came."""
        start = time.perf_counter()
        while (answer := self._ask("GET", path, None, headers))[
            0
        ] == HTTPStatus.SERVICE_UNAVAILABLE:
            time.sleep(float(answer[1]))
        return _ms_since(start), answer[1]

    def post(self, path: str, values: Mapping[str, str], **headers: str) -> tuple[float, str]:
        """Send a form; milliseconds, and what came."""
        headers["X-CSRFToken"] = self.cookies[settings.CSRF_COOKIE_NAME]
        start = time.perf_counter()
        _, content = self._ask("POST", path, urlencode(values), headers)
        return _ms_since(start), content

    def _ask(
        self, method: str, path: str, body: str | None, headers: dict[str, str]
    ) -> tuple[int, str]:
        """The status and what came; where the site is busy, in how many seconds to ask again."""
        sent = {name.replace("_", "-"): value for name, value in headers.items()}
        sent["Cookie"] = "; ".join(f"{name}={value}" for name, value in self.cookies.items())
        if body is not None:
            sent["Content-Type"] = AS_FORM
        connection = HTTPConnection(HOST, self.port, timeout=120)
        connection.request(method, path, body, sent)
        answer = connection.getresponse()
        content = answer.read().decode(errors="replace")
        connection.close()
        if answer.status == HTTPStatus.SERVICE_UNAVAILABLE and "Retry-After" in answer.headers:
            return answer.status, answer.headers["Retry-After"]
        if answer.status != (302 if method == "POST" and "HX-Request" not in sent else 200):
            raise RuntimeError(f"{method} {path} answered {answer.status}")
        self._keep_cookies(answer)
        return answer.status, content

    def _keep_cookies(self, answer: HTTPResponse) -> None:
        for line in answer.headers.get_all("Set-Cookie", []):
            name, _, value = line.partition(";")[0].partition("=")
            self.cookies[name] = value


def _ms_since(start: float) -> float:
    return (time.perf_counter() - start) * 1000
