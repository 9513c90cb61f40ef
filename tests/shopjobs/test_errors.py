"""What a person reads when something can't be done."""

import io
import logging
from collections.abc import Callable, Iterator
from contextlib import closing

import pytest
from django.test import Client, RequestFactory

from shopjobs.models import Person
from shopjobs.views.errors import failed
from tests.dom import dom

SignIn = Callable[[Person], Client]
HTMX = {"HX-Request": "true"}


@pytest.mark.parametrize("headers", [{}, HTMX])
def test_there_is_nothing(headers: dict[str, str], owner: Person, signed_in: SignIn) -> None:
    """A wrong address is answered in the site's look; for htmx in a sentence."""
    answer = signed_in(owner).get("/nowhere/", headers=headers)

    assert answer.status_code == 404
    assert "There is nothing at this address." in dom(answer).words
    assert dom(answer).is_whole is not bool(headers)


def test_an_outdated_form_says_what_to_do(owner: Person) -> None:
    """A form without its token changes nothing, and the page says why."""
    client = Client(enforce_csrf_checks=True)
    client.force_login(owner)

    answer = client.post("/jobs/", {"number": "K-1"}, headers=HTMX)

    assert answer.status_code == 403
    assert "You signed in or out in another tab" in dom(answer).words
    assert not dom(answer).is_whole


def test_the_sites_own_failure_asks_nothing_of_the_database() -> None:
    """The page of a failure is made without database, session or person."""
    answer = failed(RequestFactory().get("/jobs/"))

    assert answer.status_code == 500
    assert "That went wrong" in answer.content.decode()


@pytest.fixture
def log() -> Iterator[io.StringIO]:
    """What the site's own handler writes, as it would into the console."""
    handlers = [each for each in logging.getLogger().handlers if each.name == "console"]
    assert isinstance(handlers[0], logging.StreamHandler)
    written = io.StringIO()
    usual = handlers[0].setStream(written)
    yield written
    handlers[0].setStream(usual)


def test_a_refused_request_takes_one_line_of_the_log(
    installer: Person, signed_in: SignIn, log: io.StringIO
) -> None:
    """What a role may not do, and a name that is not the site's, leave no traceback."""
    client = signed_in(installer)

    assert client.get("/people/").status_code == 403
    assert client.get("/jobs/", headers={"Host": "elsewhere.example"}).status_code == 400

    assert "/people/" in log.getvalue()
    assert "elsewhere.example" in log.getvalue()
    assert "Traceback" not in log.getvalue()


def test_a_failure_of_the_sites_own_is_told_whole(log: io.StringIO) -> None:
    """A traceback stands where something was answered with 500, or with nothing."""
    try:
        raise ZeroDivisionError
    except ZeroDivisionError:
        logging.getLogger("django.request").exception("failed", extra={"status_code": 500})
        logging.getLogger("fronts").exception("failed beside")

    assert log.getvalue().count("Traceback") == 2


def test_every_answer_carries_the_content_policy(db: None) -> None:
    """Scripts and styles come from the site's own files, and nothing is inline."""
    answer = Client().get("/sign-in/")

    assert "default-src 'self'" in answer["Content-Security-Policy"]
    assert "unsafe" not in answer["Content-Security-Policy"]
    assert " style=" not in answer.text
    assert " onclick" not in answer.text
    assert answer["X-Frame-Options"] == "DENY"


def test_static_files_are_served_without_debug(db: None) -> None:
    """Our own files and htmx are there, from this site."""
    for name in ("css/tokens.css", "django_htmx/htmx-2.min.js", "js/drafts.js"):
        with closing(Client().get(f"/static/{name}")) as answer:
            assert answer.status_code == 200, name
