"""What watches over the site asks whether it is alive, and whether it can do its work."""

import errno
import shutil
import tempfile
from pathlib import Path
from typing import Any

import pytest
from django.db import connection
from django.test import Client
from pytest_django import DjangoAssertNumQueries, Settings

from shopjobs import bootstrap, health
from shopjobs.services.lost_tasks import worker_beat
from tests.jsonlog import JsonLog

HOSTS = ["testserver", "elsewhere.example", "10.0.0.7:8000", "not a host"]


@pytest.mark.parametrize("host", HOSTS)
@pytest.mark.parametrize("method", ["get", "head"])
def test_alive_asks_nothing_of_anybody(
    method: str,
    host: str,
    settings: Settings,
    db: None,
    django_assert_num_queries: DjangoAssertNumQueries,
) -> None:
    """It answers at any name and without HTTPS, and asks neither database nor session."""
    settings.SECURE_SSL_REDIRECT = True
    with django_assert_num_queries(0):
        answer = getattr(Client(), method)("/healthz", headers={"Host": host})

    assert (answer.status_code, answer["Content-Type"]) == (200, "application/json")
    assert answer["Cache-Control"] == "no-store"
    assert not answer.cookies
    if method == "get":
        assert answer.json() == {"status": "ok"}


@pytest.mark.parametrize("host", HOSTS)
def test_ready_names_what_it_asked(
    host: str, settings: Settings, db: None, django_assert_num_queries: DjangoAssertNumQueries
) -> None:
    """Database, disk, printing and queue each have their word; no session is looked up."""
    worker_beat(name="bench-1", host="bench", pid=1)
    settings.SECURE_SSL_REDIRECT = True
    cookies = {"Cookie": f"{settings.SESSION_COOKIE_NAME}=0123456789abcdef"}
    with django_assert_num_queries(3):
        answer = Client().get("/readyz", headers={"Host": host, **cookies})

    assert answer.status_code == 200, answer.text
    assert answer.json() == {"status": "ok", **{name: "ok" for name, _ in settings.READY_CHECKS}}
    assert {"database", "disk", "printing", "queue"} <= set(answer.json())


@pytest.mark.parametrize("address", ["/healthz", "/readyz"])
def test_it_is_only_asked(address: str) -> None:
    """Nothing is sent to either address."""
    assert Client().post(address).status_code == 405


def _no_room(monkeypatch: pytest.MonkeyPatch) -> None:
    usage = shutil.disk_usage(tempfile.gettempdir())
    little = usage._replace(free=5 * 1024 * 1024)
    monkeypatch.setattr(shutil, "disk_usage", lambda folder: little)


def _read_only(monkeypatch: pytest.MonkeyPatch) -> None:
    def refuse(**given: Any) -> None:
        raise OSError(errno.EROFS, "Read-only file system")

    monkeypatch.setattr(tempfile, "TemporaryFile", refuse)


def _no_pango(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(
        health, "missing_libraries", lambda: bootstrap.missing_libraries(["libnowhere.so.9"])
    )


@pytest.mark.parametrize(
    ("hinder", "name", "why"),
    [
        (_no_room, "disk", "has 5 MB free"),
        (_read_only, "disk", "takes no file: Read-only file system"),
        (_no_pango, "printing", "the system lacks libnowhere.so.9"),
    ],
)
def test_what_hinders_it_is_named_and_stands_in_the_log(
    hinder: Any,
    name: str,
    why: str,
    db: None,
    monkeypatch: pytest.MonkeyPatch,
    json_log: JsonLog,
) -> None:
    """503 says which check failed; why stands in the log alone, and it is still alive."""
    hinder(monkeypatch)
    worker_beat(name="bench-1", host="bench", pid=1)

    answer = Client().get("/readyz")

    assert answer.status_code == 503
    said = answer.json()
    assert [check for check, word in said.items() if word == "failed"] == ["status", name]
    assert why not in answer.text
    assert [why in line["message"] for line in json_log.of("shopjobs.health")] == [True]
    assert Client().get("/healthz").status_code == 200


@pytest.mark.django_db(transaction=True)
def test_a_database_that_is_gone_is_told(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, json_log: JsonLog
) -> None:
    """Where no connection can be had, it is not ready; the log says what the database said."""
    connection.close()
    name = str(tmp_path / "nowhere" / "db") if connection.vendor == "sqlite" else "nowhere"
    gone = {"NAME": name, "HOST": str(tmp_path), "PORT": "1"}
    with monkeypatch.context() as elsewhere:
        for key, value in gone.items():
            elsewhere.setitem(connection.settings_dict, key, value)
        answer = Client().get("/readyz")

    assert answer.status_code == 503
    assert answer.json()["database"] == "failed"
    lines = json_log.of("shopjobs.health")
    assert "OperationalError" in lines[0]["traceback"]
