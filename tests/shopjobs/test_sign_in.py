"""Signing in and out."""

from concurrent.futures import ThreadPoolExecutor
from datetime import timedelta

import pytest
from django.db import connections
from django.test import Client
from pytest_django import Settings

from shopjobs.models import Person, SignInFailure
from tests.dom import dom
from tests.factories import PASSWORD


def test_a_person_signs_in_and_sees_the_jobs(owner: Person) -> None:
    """Name and password lead to the jobs of the shop."""
    client = Client()

    answer = client.post("/sign-in/", {"username": "ada", "password": PASSWORD}, follow=True)

    assert answer.status_code == 200
    assert answer.redirect_chain == [("/jobs/", 302)]
    assert "Alder Row Cabinets" in dom(answer).words


def test_sign_in_leads_back(owner: Person) -> None:
    """After signing in one is where one was going, but never on another site."""
    typed = {"username": "ada", "password": PASSWORD}

    assert Client().post("/sign-in/", typed | {"next": "/shop/"})["Location"] == "/shop/"
    elsewhere = Client().post("/sign-in/", typed | {"next": "//elsewhere.example/"})
    assert elsewhere["Location"] == "/jobs/"


@pytest.mark.parametrize(
    ("typed", "words"),
    [
        ({"username": "ada", "password": "wrong"}, "don't belong together"),
        ({"username": "ada", "password": ""}, "Enter your password."),
        ({"username": "", "password": PASSWORD}, "Enter your sign-in name."),
    ],
)
def test_a_failed_sign_in_keeps_the_name(typed: dict[str, str], words: str, owner: Person) -> None:
    """The page says what is wrong, keeps the name, and never shows the password."""
    answer = Client().post("/sign-in/", typed)

    assert answer.status_code == 422
    assert words in dom(answer).words
    assert dom(answer).field("username").value == typed["username"]
    assert PASSWORD not in answer.text


def test_a_name_is_locked_after_too_many_failures(
    owner: Person, office: Person, settings: Settings
) -> None:
    """After five failures even the right password waits; other names and addresses don't."""
    right = {"username": "ada", "password": PASSWORD}
    for name in ("ada", "Ada", "ada", "ADA", "ada"):
        Client().post("/sign-in/", {"username": name, "password": "wrong"})

    locked = Client().post("/sign-in/", right)
    assert locked.status_code == 422
    assert "Too many attempts with this name. Wait 15 minutes, then try again." in dom(locked).words

    other = {"username": "otto", "password": PASSWORD}
    assert Client().post("/sign-in/", other).status_code == 302
    assert Client(REMOTE_ADDR="192.0.2.7").post("/sign-in/", right).status_code == 302

    for failure in SignInFailure.objects.all():
        failure.at -= timedelta(minutes=settings.SIGN_IN_LOCK_MINUTES, seconds=1)
        failure.save()
    assert Client().post("/sign-in/", right).status_code == 302


def test_an_address_is_locked_after_many_failures(owner: Person, settings: Settings) -> None:
    """Whoever tries many names from one address waits too; other addresses don't."""
    right = {"username": "ada", "password": PASSWORD}
    for number in range(settings.SIGN_IN_FAILURES_OF_AN_ADDRESS):
        Client().post("/sign-in/", {"username": f"name{number}", "password": "wrong"})

    locked = Client().post("/sign-in/", right)

    assert locked.status_code == 422
    assert "Too many attempts from this network. Wait 15 minutes" in dom(locked).words
    assert Client(REMOTE_ADDR="192.0.2.7").post("/sign-in/", right).status_code == 302


@pytest.mark.django_db(transaction=True)
def test_guesses_at_the_same_moment_count_too(owner: Person, settings: Settings) -> None:
    """Of twelve guesses at once no more are checked than of twelve after each other."""

    def guess(number: int) -> bool:
        try:
            typed = {"username": "ada", "password": f"wrong{number}"}
            return "belong together" in dom(Client().post("/sign-in/", typed)).words
        finally:
            connections.close_all()

    with ThreadPoolExecutor(12) as people:
        checked = sum(people.map(guess, range(12)))

    assert checked <= settings.SIGN_IN_FAILURES
    assert SignInFailure.objects.count() == checked


def test_a_success_forgets_the_failures(owner: Person) -> None:
    """Whoever gets in after a few wrong tries starts anew."""
    for _ in range(4):
        Client().post("/sign-in/", {"username": "ada", "password": "wrong"})

    Client().post("/sign-in/", {"username": "ada", "password": PASSWORD})

    assert not SignInFailure.objects.exists()


def test_behind_a_proxy_its_word_for_the_address_counts(owner: Person, settings: Settings) -> None:
    """The last address that the proxy names is the client's; what a client adds is not."""
    settings.BEHIND_PROXY = True
    headers = {"X-Forwarded-For": "203.0.113.9, 198.51.100.4"}

    Client().post("/sign-in/", {"username": "ada", "password": "wrong"}, headers=headers)

    assert SignInFailure.objects.get().address == "198.51.100.4"


def test_signing_out_needs_a_post_and_ends_the_session(owner: Person) -> None:
    """A link can't sign anyone out; the button does."""
    client = Client()
    client.force_login(owner)

    assert client.get("/sign-out/").status_code == 405
    assert client.post("/sign-out/")["Location"] == "/sign-in/"
    assert client.get("/jobs/").status_code == 302


@pytest.mark.parametrize("claimed", ["http://[bad", "http://testserver/shop/", "http://other/"])
def test_a_part_asked_for_by_a_stranger_leads_to_the_sign_in(db: None, claimed: str) -> None:
    """Whatever page a part claims to stand on, the answer is the sign-in page; back goes home."""
    headers = {"HX-Request": "true", "HX-Current-URL": claimed}
    answer = Client().get("/jobs/", headers=headers)

    back = "/shop/" if claimed.endswith("shop/") else "/"
    assert answer.status_code == 401
    assert answer["HX-Redirect"] == f"/sign-in/?ended=yes&next={back}"


def test_a_page_that_must_stay_gets_a_link(db: None) -> None:
    """A drawing that follows by itself throws no page away when the session has ended."""
    headers = {"HX-Request": "true", "HX-Current-URL": "http://testserver/shop/", "X-Stay": "yes"}
    answer = Client().get("/jobs/", headers=headers)

    assert answer.status_code == 401
    assert "HX-Redirect" not in answer
    assert dom(answer).one(".fault a").attribute("href") == "/sign-in/?ended=yes&next=/shop/"
    assert not dom(answer).is_whole


@pytest.mark.parametrize(
    ("headers", "words"),
    [
        ({}, "Your session ended; sign in and go on."),
        ({"X-Kept": "yes"}, "Your session ended; sign in and go on: what you typed is kept."),
    ],
)
def test_who_is_sent_to_sign_in_reads_why_and_comes_back_to_the_place(
    owner: Person, headers: dict[str, str], words: str
) -> None:
    """The words hold only where the form keeps what is typed; the place is where the part stood."""
    asked = {"HX-Request": "true", "HX-Current-URL": "http://testserver/shop/#top"}
    asked |= {"HX-Target": "record-B1.a"} | headers
    client = Client()
    to = client.post("/jobs/", {}, headers=asked)["HX-Redirect"]

    assert words in dom(client.get(to)).words
    answer = client.post(to, {"username": "ada", "password": PASSWORD})
    assert answer["Location"] == "/shop/#record-B1.a"
