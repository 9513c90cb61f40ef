"""The database, set up for several people at once."""

import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from uuid import uuid4

import pytest
from django.conf import settings as site
from django.db import OperationalError, connection, connections
from django.db.backends.base.base import BaseDatabaseWrapper
from django.db.utils import ConnectionHandler
from django.test import Client

from shopjobs.database import database_settings
from shopjobs.environment import read_environment
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import NOW
from tests.saying import client_set

pytestmark = pytest.mark.django_db

THREADS = 4
CHANGES = 15

only_sqlite = pytest.mark.skipif(
    connection.vendor != "sqlite", reason="these are settings of SQLite; another database is in use"
)
only_postgresql = pytest.mark.skipif(
    connection.vendor != "postgresql",
    reason="these are settings of PostgreSQL; DATABASE_URL names another database",
)


@contextmanager
def connected(url: str, tmp_path: Path, **given: str) -> Iterator[BaseDatabaseWrapper]:
    """A connection as a site with these settings makes it."""
    environ = {"XDG_DATA_HOME": str(tmp_path), "DATABASE_URL": url, **given}
    settings = database_settings(read_environment(environ, root=tmp_path), root=tmp_path)
    made = ConnectionHandler({"default": settings})["default"]
    yield made
    made.close()


def read(made: BaseDatabaseWrapper, *questions: str) -> list[object]:
    """What the database answers to each."""
    answers = []
    with made.cursor() as cursor:
        for question in questions:
            cursor.execute(question)
            answers.append(cursor.fetchone()[0])
    return answers


@pytest.mark.parametrize(
    ("given", "level"),
    [({}, 1), ({"SHOPJOBS_SQLITE_SYNCHRONOUS": "FULL"}, 2)],
    ids=["usual", "full"],
)
def test_sqlite_may_wait_for_the_disk_at_every_commit(
    given: dict[str, str], level: int, tmp_path: Path
) -> None:
    """1 is NORMAL, 2 is FULL (SQLite's documentation of PRAGMA synchronous)."""
    with connected(f"sqlite:///{tmp_path}/own/db", tmp_path, **given) as made:
        assert read(made, "PRAGMA synchronous", "PRAGMA journal_mode") == [level, "wal"]


@only_postgresql
@pytest.mark.parametrize(
    ("given", "statement"),
    [({}, "0"), ({"SHOPJOBS_ANSWERS_WEB": "1"}, "1min")],
    ids=["command", "web"],
)
def test_postgresql_waits_some_seconds(
    given: dict[str, str], statement: str, tmp_path: Path
) -> None:
    """For a lock as long as SQLite does; a statement may take long in commands alone."""
    url = site.ENVIRONMENT.database_url
    with connected(url, tmp_path, **given) as made:
        assert read(made, "SHOW lock_timeout", "SHOW statement_timeout") == ["10s", statement]


@only_postgresql
def test_the_address_of_a_postgresql_may_say_otherwise(tmp_path: Path) -> None:
    """What whoever runs the site writes into the address holds, and keeps the rest."""
    url = site.ENVIRONMENT.database_url
    asked = f"{url}{'&' if '?' in url else '?'}options=-c%20lock_timeout%3D3s"
    with connected(asked, tmp_path, SHOPJOBS_ANSWERS_WEB="1") as made:
        assert read(made, "SHOW lock_timeout", "SHOW statement_timeout") == ["3s", "1min"]


@only_postgresql
@pytest.mark.django_db(transaction=True)
@pytest.mark.parametrize(
    "patience",
    ["SET lock_timeout = '100ms'", "SET statement_timeout = '100ms'"],
    ids=["lock", "statement"],
)
def test_who_waited_for_a_lock_reads_that_somebody_else_is_saving(
    patience: str, owner: Person, job: Job, tmp_path: Path, signed_in: Callable[[Person], Client]
) -> None:
    """A row that another connection holds: 503 and what was typed, as with SQLite."""
    client = signed_in(owner)
    typed = {"number": "K-2", "unit": "in", "step": "1.5875", "client": "Lindqvist the younger"}
    address = f"/jobs/{job.pk}/settings/"
    typed["seen"] = dom(client.get(address)).field("seen").value
    with connected(site.ENVIRONMENT.database_url, tmp_path) as other:
        other.settings_dict["NAME"] = connection.settings_dict["NAME"]
        other.set_autocommit(False)
        with other.cursor() as theirs, connection.cursor() as ours:
            theirs.execute("SELECT 1 FROM shopjobs_job WHERE id = %s FOR UPDATE", [job.pk])
            ours.execute(patience)
            try:
                answer = client.post(address, typed)
            finally:
                ours.execute("RESET lock_timeout; RESET statement_timeout")
        other.rollback()

    assert answer.status_code == 503
    assert answer["Retry-After"] == "2"
    assert "What you typed is not saved, but still here" in dom(answer).words
    assert dom(answer).one("input[name=client]").value == "Lindqvist the younger"
    job.refresh_from_db()
    assert job.number == "K-1"


@only_postgresql
def test_a_postgresql_that_is_gone_is_told_as_such(tmp_path: Path) -> None:
    """No connection is a failure, and nobody is told that somebody else is saving."""
    with (
        connected(f"postgres://nobody@{str(tmp_path).replace('/', '%2F')}/x", tmp_path) as made,
        pytest.raises(OperationalError) as failed,
    ):
        made.ensure_connection()

    assert getattr(failed.value.__cause__, "sqlstate", None) is None


@only_sqlite
def test_sqlite_is_set_up_for_several_people() -> None:
    """Readers don't wait for a writer, writers wait their turn, and references hold."""
    with connection.cursor() as cursor:
        read = {}
        for pragma in ("journal_mode", "synchronous", "foreign_keys", "busy_timeout"):
            cursor.execute(f"PRAGMA {pragma}")
            read[pragma] = cursor.fetchone()[0]

    assert read == {
        "journal_mode": "wal",
        "synchronous": 1,
        "foreign_keys": 1,
        "busy_timeout": 10_000,
    }


@pytest.mark.django_db(transaction=True)
def test_changes_at_the_same_time_all_count(job: Job, owner: Person) -> None:
    """Several people change one job at once: none is refused, none is lost."""
    faults: list[Exception] = []

    def change() -> None:
        try:
            for _ in range(CHANGES):
                client_set(Job.objects.get(pk=job.pk), uuid4().hex, NOW, owner)
        except Exception as fault:
            faults.append(fault)
        finally:
            connections.close_all()

    threads = [threading.Thread(target=change) for _ in range(THREADS)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()

    assert faults == []
    job.refresh_from_db()
    assert job.revision == 1 + THREADS * CHANGES
