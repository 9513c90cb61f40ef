"""What the log says of requests, sign-ins and failures."""

import json
import os
import re
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest
from django.http import HttpResponse
from django.test import Client
from django.urls import path
from pytest_django import Settings

from shopjobs.bootstrap import ROOT
from shopjobs.models import Person
from tests.factories import PASSWORD
from tests.jsonlog import JsonLog

SignIn = Callable[[Person], Client]
REQUESTS = "shopjobs.requests"


def test_each_request_has_a_line(
    owner: Person, stranger: Person, signed_in: SignIn, json_log: JsonLog
) -> None:
    """Who of which shop asked for what, from where, and what came of it in how long."""
    for person in (owner, stranger):
        client = signed_in(person)
        client.get("/jobs/?page=secret", REMOTE_ADDR="192.0.2.7")

    ours, theirs = json_log.of(REQUESTS)
    assert {key: value for key, value in ours.items() if key not in ("time", "milliseconds")} == {
        "level": "INFO",
        "logger": REQUESTS,
        "message": "GET /jobs/ 200",
        "request": ours["request"],
        "person": "ada",
        "shop": owner.shop_id,
        "address": "192.0.2.7",
        "method": "GET",
        "path": "/jobs/",
        "status": 200,
    }
    assert 0 < ours["milliseconds"] < 60_000
    assert (theirs["person"], theirs["shop"]) == ("boris", stranger.shop_id)
    assert "secret" not in json_log.text


def test_an_answer_carries_its_name(db: None, json_log: JsonLog) -> None:
    """The answer names its request, a new name each time, and the line has the same."""
    names = [Client().get("/sign-in/")["X-Request-ID"] for _ in range(2)]

    assert names == [line["request"] for line in json_log.of(REQUESTS)]
    assert all(re.fullmatch(r"[0-9a-f]{32}", name) for name in names)
    assert len(set(names)) == 2


@pytest.mark.parametrize(
    ("given", "kept"),
    [
        ("3f2a9c01d4", True),
        ("a-request_of.the-proxy", True),
        ("short", False),
        ("two words here", False),
        ('quoted"name1', False),
        ("x" * 65, False),
    ],
)
def test_the_proxys_name_for_a_request_is_kept_where_it_is_one(
    given: str, kept: bool, db: None
) -> None:
    """A name in the header counts if it is short and plain; anything else is replaced."""
    answer = Client().get("/sign-in/", headers={"X-Request-ID": given})

    assert (answer["X-Request-ID"] == given) is kept


def test_a_request_that_reaches_no_page_has_its_line_too(
    owner: Person, signed_in: SignIn, json_log: JsonLog
) -> None:
    """So have a wrong host and a wrong address; what is asked for can't begin a new line."""
    client = signed_in(owner)
    client.get("/jobs/", headers={"Host": "elsewhere.example"})
    client.get("/no%0Awhere/")

    assert [line["status"] for line in json_log.of(REQUESTS)] == [400, 404]
    assert "/no%0Awhere/" in json_log.of(REQUESTS)[1]["path"]


def test_a_failed_sign_in_is_told_without_the_password(owner: Person, json_log: JsonLog) -> None:
    """The log names the account and the address, and that a name is locked; no password."""
    for _ in range(6):
        typed = {"username": "ada", "password": "a wrong guess"}
        Client().post("/sign-in/", typed, REMOTE_ADDR="192.0.2.7")

    lines = json_log.of("shopjobs.services.sign_in")
    assert [line["locked"] for line in lines] == [False] * 5 + [True]
    assert {(line["level"], line["sign_in_name"], line["address"]) for line in lines} == {
        ("WARNING", "ada", "192.0.2.7")
    }
    assert "guess" not in json_log.text


def test_a_password_in_the_wrong_field_stays_out_of_the_log(
    owner: Person, json_log: JsonLog
) -> None:
    """A name that nobody has may be a password, and is not written down."""
    Client().post("/sign-in/", {"username": PASSWORD, "password": "ada"})

    assert [line["sign_in_name"] for line in json_log.of("shopjobs.services.sign_in")] == [None]
    assert PASSWORD not in json_log.text


def fail(request: object) -> HttpResponse:
    """A page that fails."""
    raise ZeroDivisionError("of all things")


urlpatterns = [path("fails/", fail)]
handler500 = "shopjobs.views.errors.failed"


@pytest.mark.urls(__name__)
def test_a_failure_is_one_line_with_its_request(
    owner: Person, signed_in: SignIn, settings: Settings, json_log: JsonLog
) -> None:
    """The traceback stands in the line, beside the name that the answer carries."""
    settings.MIDDLEWARE = [
        name for name in settings.MIDDLEWARE if not name.endswith("SignInRequired")
    ]
    client = signed_in(owner)
    client.raise_request_exception = False

    answer = client.get("/fails/")

    assert answer.status_code == 500
    (line,) = json_log.of("django.request")
    assert (line["level"], line["request"]) == ("ERROR", answer["X-Request-ID"])
    assert "ZeroDivisionError: of all things" in line["traceback"]
    assert [each["status"] for each in json_log.of(REQUESTS)] == [500]


SAYS = """
import logging
import django
django.setup()
log = logging.getLogger("shopjobs.requests")
log.info("seen")
log.warning("noticed")
"""


@pytest.mark.parametrize("kind", ["json", "text"])
def test_the_log_goes_to_the_console_in_the_form_asked_for(kind: str, tmp_path: Path) -> None:
    """JSON has a line for each request; plain text, for people, only for what went wrong."""
    surroundings = {
        "PATH": os.environ["PATH"],
        "XDG_DATA_HOME": str(tmp_path),
        "DATABASE_URL": f"sqlite:///{tmp_path}/db",
        "DJANGO_SETTINGS_MODULE": "shopjobs.settings",
        "SHOPJOBS_LOG": kind,
    }

    done = subprocess.run(
        [sys.executable, "-c", SAYS], cwd=ROOT, env=surroundings, capture_output=True, text=True
    )

    said = done.stderr.splitlines()
    assert done.returncode == 0, done.stderr
    if kind == "json":
        assert [json.loads(line)["message"] for line in said] == ["seen", "noticed"]
    else:
        assert [line.rpartition(": ")[2] for line in said] == ["noticed"]
