"""Several people at once: what waits for whom, and what a person reads who waited in vain."""

from collections.abc import Callable, Iterator
from threading import Event, Thread
from typing import Any

import pytest
from django.db import connection, connections, transaction
from django.test import Client

from fronts.models import Cabinet
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.pages.kitchens import HTMX, furnish, seen_in

SignIn = Callable[[Person], Client]
PATIENCE = {
    "sqlite": ("PRAGMA busy_timeout = 100", "PRAGMA busy_timeout = 10000"),
    "postgresql": ("SET lock_timeout = '100ms'", "RESET lock_timeout"),
}
TYPED = {
    "label": "B1", "width": "19", "height": "30 1/2", "depth": "24", "kind": "base",
    "build": "face-frame", "wall": "A", "x": "", "y": "",
}  # fmt: skip


@pytest.fixture
def somebody_saves(transactional_db: None, job: Job) -> Iterator[None]:
    """Somebody else holds the job for as long as the test runs; requests wait a moment only."""
    held, over = Event(), Event()

    def hold() -> None:
        try:
            with transaction.atomic():
                Job.objects.select_for_update(of=("self",)).get(pk=job.pk)
                held.set()
                over.wait(30)
        finally:
            connections.close_all()

    short, usual = PATIENCE[connection.vendor]
    thread = Thread(target=hold)
    with connection.cursor() as cursor:
        cursor.execute(short)
        thread.start()
        try:
            assert held.wait(30)
            yield
        finally:
            over.set()
            thread.join()
            cursor.execute(usual)


@pytest.fixture
def desk(transactional_db: None, owner: Person, job: Job, signed_in: SignIn) -> Client:
    """A browser in which the owner is signed in, beside a small kitchen."""
    furnish(job)
    return signed_in(owner)


def test_who_waited_in_vain_reads_why(
    desk: Client, job: Job, request: pytest.FixtureRequest
) -> None:
    """htmx gets the words for the fault's place, and so the form stays as it was typed."""
    address = _form_of_b1(job)
    typed = TYPED | seen_in(dom(desk.get(address)))
    request.getfixturevalue("somebody_saves")

    answer = desk.post(address, typed, headers=HTMX)

    assert answer.status_code == 503
    assert answer["Retry-After"] == "2"
    assert "Somebody else is saving." in dom(answer).words
    assert not dom(answer).is_whole


def test_without_javascript_what_was_typed_can_be_sent_again(
    desk: Client, job: Job, request: pytest.FixtureRequest
) -> None:
    """The whole page keeps what was typed behind its button, and never a form's token."""
    address = _form_of_b1(job)
    typed = TYPED | seen_in(dom(desk.get(address))) | {"csrfmiddlewaretoken": "old"}
    request.getfixturevalue("somebody_saves")

    answer = desk.post(address, typed)

    assert answer.status_code == 503
    kept = dom(answer).one("input[name=height]")
    assert (kept.attribute("type"), kept.value) == ("hidden", "30 1/2")
    assert "old" not in dom(answer).values
    assert dom(answer).is_whole


def test_others_may_save_while_a_refused_form_is_drawn(desk: Client, job: Job) -> None:
    """The kitchen is worked out and drawn once the job is let go."""
    address = _form_of_b1(job)
    version = seen_in(dom(desk.get(address)))
    held: list[bool] = []

    def watch(execute: Any, sql: str, params: Any, many: Any, context: Any) -> Any:
        if "fronts_shopnumber" in sql:
            held.append(connection.in_atomic_block)
        return execute(sql, params, many, context)

    with connection.execute_wrapper(watch):
        answer = desk.post(address, TYPED | version | {"width": "wide"}, headers=HTMX)

    assert answer.status_code == 422
    assert dom(answer).has("svg")
    assert held
    assert not any(held)


def _form_of_b1(job: Job) -> str:
    return f"/jobs/{job.pk}/cabinets/{Cabinet.objects.get(label='B1').pk}/"
