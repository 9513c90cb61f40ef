"""Storage that takes nothing more: the page says what is wrong and keeps what was typed."""

import errno
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from typing import Any

import pytest
from django.db import OperationalError, connection
from django.test import Client

from fronts.models import Cabinet
from shopjobs.database_faults import why_unsaved
from shopjobs.models import Job, Person, Revision, Shop
from tests.dom import dom
from tests.factories import NOW, PASSWORD
from tests.pages.kitchens import HTMX, furnish
from tests.pages.shared.sending import as_sent

SignIn = Callable[[Person], Client]


@pytest.fixture
def desk(transactional_db: None, owner: Person, job: Job, signed_in: SignIn) -> Client:
    """A browser in which the owner is signed in, beside a small kitchen."""
    furnish(job)
    return signed_in(owner)


def form_of_b1(desk: Client, job: Job) -> tuple[str, dict[str, Any]]:
    """The form of a cabinet's sizes, another width typed over."""
    address = f"/jobs/{job.pk}/cabinets/{Cabinet.objects.get(label='B1').pk}/"
    return address, as_sent(dom(desk.get(address)).one(".editor"), width="19 1/4")


@contextmanager
def full() -> Iterator[None]:
    """A database without room: SQLite's own limit of pages, and PostgreSQL's code for it."""
    if connection.vendor == "sqlite":
        with connection.cursor() as cursor:
            cursor.execute("PRAGMA page_count")
            cursor.execute(f"PRAGMA max_page_count = {cursor.fetchone()[0]}")
            fill_up()
            yield
            cursor.execute("PRAGMA max_page_count = 1073741823")
        return

    def refuse(execute: Any, sql: str, params: Any, many: Any, context: Any) -> Any:
        told = "DO $$ BEGIN RAISE EXCEPTION 'no space left' USING ERRCODE = '53100'; END $$"
        if sql.startswith(("UPDATE", "INSERT")):
            sql, params = told, None
        return execute(sql, params, many, context)

    with connection.execute_wrapper(refuse):
        yield


def fill_up() -> None:
    """Write into the history until not even a letter goes in."""
    shop = Shop.objects.get()
    for letters in (500, 50, 1):
        with suppress(OperationalError):
            for _ in range(10_000):
                Revision.objects.create(shop=shop, at=NOW, text="x" * letters)
    with pytest.raises(OperationalError, match="database or disk is full"):
        Revision.objects.create(shop=shop, at=NOW, text="x")


@contextmanager
def read_only() -> Iterator[None]:
    """A database that may be read and nothing else, by its own setting."""
    on, off = {
        "sqlite": ("PRAGMA query_only = ON", "PRAGMA query_only = OFF"),
        "postgresql": ("SET default_transaction_read_only = on",
                       "SET default_transaction_read_only = off"),
    }[connection.vendor]  # fmt: skip
    with connection.cursor() as cursor:
        cursor.execute(on)
    try:
        yield
    finally:
        with connection.cursor() as cursor:
            cursor.execute(off)


CASES = [
    (full, 507, "The server's disk is full"),
    (read_only, 503, "The server can only read what it keeps"),
]
Refuses = Callable[[], Any]


@pytest.mark.parametrize(("storage", "status", "words"), CASES, ids=["full", "read only"])
def test_a_save_says_what_is_wrong(
    desk: Client, job: Job, storage: Refuses, status: int, words: str
) -> None:
    """For htmx in a sentence, so that the form stays as it was typed; nothing is half saved."""
    address, sent = form_of_b1(desk, job)

    with storage():
        answer = desk.post(address, sent, headers=HTMX)

    assert answer.status_code == status
    assert words in dom(answer).words
    assert not dom(answer).is_whole
    assert desk.post(address, sent, headers=HTMX).status_code == 200


@pytest.mark.parametrize(("storage", "status", "words"), CASES, ids=["full", "read only"])
def test_without_scripts_it_can_be_sent_again(
    desk: Client, job: Job, storage: Refuses, status: int, words: str
) -> None:
    """The page holds what was typed, behind a button that sends it once more."""
    address, sent = form_of_b1(desk, job)
    with storage():
        answer = desk.post(address, sent)

    assert answer.status_code == status
    assert words in dom(answer).words
    again = as_sent(dom(answer).one("main form"))
    assert again["width"] == "19 1/4"
    assert desk.post(address, again).status_code == 302


def test_a_sign_in_says_it_too(desk: Client, owner: Person) -> None:
    """A session that can't be kept is no failure of the site's; a password comes not back."""
    typed = {"username": owner.username, "password": PASSWORD}
    with read_only():
        answer = Client(raise_request_exception=False).post("/sign-in/", typed)

    assert answer.status_code == 503
    assert "The server can only read what it keeps" in dom(answer).words
    assert PASSWORD not in answer.text


def test_whoever_runs_the_site_is_told(
    desk: Client, job: Job, caplog: pytest.LogCaptureFixture
) -> None:
    """Storage that takes nothing is an error in the log; the person can't mend it."""
    address, sent = form_of_b1(desk, job)
    with read_only():
        desk.post(address, sent)

    (told,) = [record for record in caplog.records if record.name == "shopjobs.middleware"]
    assert "Nothing can be saved" in told.getMessage()


@pytest.mark.parametrize(
    ("failure", "why"),
    [
        (OSError(errno.ENOSPC, "No space left on device"), "full"),
        (OSError(errno.EDQUOT, "Disk quota exceeded"), "full"),
        (OSError(errno.EROFS, "Read-only file system"), "read_only"),
        (OSError(errno.EHOSTUNREACH, "No route to host"), "away"),
        (OSError(errno.ENOENT, "No such file or directory"), None),
        (ValueError("full"), None),
        (None, None),
    ],
)
def test_files_that_cannot_be_written_count_too(failure: Exception | None, why: str | None) -> None:
    """An upload and a print are written to files first; other failures stay failures."""
    assert why_unsaved(failure) == why
