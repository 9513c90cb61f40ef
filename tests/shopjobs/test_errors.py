"""What a person reads when something can't be done."""

from collections.abc import Callable
from contextlib import closing

import pytest
from django.test import Client, RequestFactory

from shopjobs.models import Person
from shopjobs.views.errors import failed

SignIn = Callable[[Person], Client]
HTMX = {"HX-Request": "true"}


@pytest.mark.parametrize("headers", [{}, HTMX])
def test_there_is_nothing(headers: dict[str, str], owner: Person, signed_in: SignIn) -> None:
    """A wrong address is answered in the site's look; for htmx in a sentence."""
    answer = signed_in(owner).get("/nowhere/", headers=headers)

    assert answer.status_code == 404
    assert "There is nothing at this address." in answer.text
    assert ("<html" in answer.text) is not bool(headers)


def test_an_outdated_form_says_what_to_do(owner: Person) -> None:
    """A form without its token changes nothing, and the page says why."""
    client = Client(enforce_csrf_checks=True)
    client.force_login(owner)

    answer = client.post("/jobs/", {"number": "K-1"}, headers=HTMX)

    assert answer.status_code == 403
    assert "You signed in or out in another tab" in answer.text
    assert "<html" not in answer.text


def test_the_sites_own_failure_asks_nothing_of_the_database() -> None:
    """The page of a failure is made without database, session or person."""
    answer = failed(RequestFactory().get("/jobs/"))

    assert answer.status_code == 500
    assert "That went wrong" in answer.content.decode()


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
    for name in ("css/tokens.css", "django_htmx/htmx-2.min.js", "js/site.js"):
        with closing(Client().get(f"/static/{name}")) as answer:
            assert answer.status_code == 200, name
