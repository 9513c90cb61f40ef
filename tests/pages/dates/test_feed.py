"""The diary as a calendar: read back by another library, private, withdrawn, one shop's alone."""

import json
import logging
from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest
import vobject
from django.test import Client
from django.utils import timezone

from fronts.models import CalendarFeed
from fronts.pages.dates.rows.calendar_file import MOST_EVENTS, CalendarEvent, calendar_file
from fronts.rules.stages import Span
from fronts.services.dates import fit_day_set, stage_finish
from shopjobs.log_lines import JsonLine, WithoutSecrets
from shopjobs.models import Job, Person, Shop
from shopjobs.services.people import person_deactivate, person_reactivate
from tests.dom import dom
from tests.factories import JobFactory
from tests.pages.dates.conftest import TODAY, SignIn

AWKWARD = "Lindqvist; Sons, “Ålesund” \\ & co"
"""What RFC 5545 has escaped, and letters of more than one octet."""


@pytest.fixture
def address(office: Person, signed_in: SignIn) -> str:
    """The path of the office's calendar."""
    return made(signed_in(office))


def made(client: Client) -> str:
    """The path at which a person's calendar is, once it was made."""
    shown = dom(client.post("/diary/calendar/new/")).one(".address").words
    return shown.removeprefix("http://testserver")


def events(path: str) -> dict[str, Any]:
    """What another library reads there, by what each event is called."""
    calendar = vobject.readOne(Client().get(path).content.decode())
    return {each.summary.value: each for each in getattr(calendar, "vevent_list", [])}


def test_every_stage_is_an_event_of_whole_days(
    fitted_first: Job, fitted_next: Job, address: str, office: Person
) -> None:
    """On the planned days, the end exclusive; what is done says so and keeps its name."""
    answer = Client().get(address)

    assert answer.headers["Content-Type"] == "text/calendar; charset=utf-8"
    assert answer.headers["Cache-Control"] == "private, no-cache"
    assert answer.headers["Referrer-Policy"] == "no-referrer"
    read = events(address)
    assert len(read) == 10
    fitting = read["Fitting K-1, Lindqvist"]
    assert (fitting.dtstart.value, fitting.dtend.value) == (date(2027, 4, 5), date(2027, 4, 7))
    assert fitting.location.value == "12 Hill Road"
    finishing = read["Finishing K-1, Lindqvist"]
    assert (finishing.dtstart.value, finishing.dtend.value) == (
        date(2027, 3, 24), date(2027, 3, 31)
    )  # fmt: skip

    name = read["Measuring K-1, Lindqvist"].uid.value
    stage_finish(job=fitted_first, stage="measure", on=TODAY, by=office, at=timezone.now())
    done = events(address)["Measuring K-1, Lindqvist – done"]
    assert (done.uid.value, done.dtstart.value) == (name, TODAY)
    assert len({each.uid.value for each in read.values()}) == 10


def test_a_moved_date_moves_its_event_and_says_when(
    fitted_first: Job, address: str, office: Person
) -> None:
    """The name stays; LAST-MODIFIED and DTSTAMP are of the change (RFC 5545, 3.8.7)."""
    before = events(address)["Fitting K-1, Lindqvist"]
    at = datetime(2027, 3, 1, 13, 30, tzinfo=UTC)
    fit_day_set(job=fitted_first, fit_on=date(2027, 4, 12), by=office, at=at)

    after = events(address)["Fitting K-1, Lindqvist"]

    assert after.uid.value == before.uid.value
    assert after.dtstart.value == date(2027, 4, 12)
    assert after.last_modified.value == after.dtstamp.value == at
    assert before.dtstamp.value < at


def test_lines_are_folded_and_what_is_typed_is_escaped(address: str, office: Person) -> None:
    """RFC 5545, 3.1 and 3.3.11: CRLF, 75 octets at most, commas, semicolons, backslashes."""
    assert office.shop is not None
    JobFactory.create(
        shop=office.shop, number="K-9", client=AWKWARD, site="1, Å-vägen; " * 19,
        fit_on=date(2027, 4, 5),
    )  # fmt: skip
    raw = Client().get(address).content

    assert raw.endswith(b"END:VCALENDAR\r\n")
    assert b"\n" not in raw.replace(b"\r\n", b"")
    assert max(len(line) for line in raw.split(b"\r\n")) <= 75
    for line in raw.split(b"\r\n"):
        line.decode()  # No letter is cut in two.
    read = events(address)[f"Fitting K-9, {AWKWARD}"]
    assert read.location.value == "1, Å-vägen; " * 19


def test_the_same_is_not_sent_again(fitted_first: Job, address: str, office: Person) -> None:
    """Asked with what was answered before, until anything changes."""
    tag = Client().get(address).headers["ETag"]

    again = Client().get(address, headers={"If-None-Match": tag})
    assert (again.status_code, again.content) == (304, b"")
    assert again.headers["Cache-Control"] == "private, no-cache"
    packed = f'"another", W/{tag}'  # As a proxy that compresses says it again.
    assert Client().get(address, headers={"If-None-Match": packed}).status_code == 304
    stage_finish(job=fitted_first, stage="measure", on=TODAY, by=office, at=timezone.now())
    assert Client().get(address, headers={"If-None-Match": tag}).status_code == 200


def test_an_address_is_withdrawn_made_anew_and_ends_with_its_person(
    fitted_first: Job, installer: Person, owner: Person, signed_in: SignIn
) -> None:
    """Shown once; the one before reads nothing any more, and neither does who has left."""
    client = signed_in(installer)
    first = made(client)
    assert first.split("/")[-1] not in client.get("/diary/calendar/").text
    second = made(client)
    assert [Client().get(each).status_code for each in (first, second)] == [404, 200]
    client.post("/diary/calendar/withdraw/")
    assert Client().get(second).status_code == 404
    third = made(client)
    person_deactivate(person=installer, by=owner, at=timezone.now())
    assert Client().get(third).status_code == 404
    person_reactivate(person=installer, by=owner, at=timezone.now())
    assert Client().get(third).status_code == 404


@pytest.mark.parametrize("token", ["", "x", "x" * 5000, "%00", "..%2F", "é", "' OR 1=1"])
def test_an_address_that_there_is_not(token: str, address: str) -> None:
    """Does not exist, whatever it holds, and does not lead to the sign-in page."""
    assert Client().get(f"/calendar/{token}.ics").status_code == 404
    assert Client().post(address).status_code == 405


def test_what_is_kept_opens_nothing(address: str) -> None:
    """The digest alone is in the database, and that is no address."""
    feed = CalendarFeed.objects.get()
    token = address.removeprefix("/calendar/").removesuffix(".ics")

    assert token not in json.dumps([feed.digest, str(feed)])
    assert len(token) == 43
    assert Client().get(f"/calendar/{feed.digest}.ics").status_code == 404


def test_one_shops_calendar_never_holds_anothers(
    fitted_first: Job, address: str, stranger: Person, signed_in: SignIn
) -> None:
    """To the octet, whatever the other shop does."""
    before = Client().get(address).content
    assert stranger.shop is not None
    JobFactory.create(shop=stranger.shop, number="Z-1", client="Secret", fit_on=date(2027, 4, 5))

    assert Client().get(address).content == before
    theirs = Client().get(made(signed_in(stranger))).content
    assert b"Z-1" in theirs
    assert b"Lindqvist" not in theirs


def test_an_address_is_never_written_down(address: str, caplog: pytest.LogCaptureFixture) -> None:
    """Neither of a calendar that is read, nor of one that was withdrawn, by us or by Django."""
    token = address.removeprefix("/calendar/").removesuffix(".ics")
    CalendarFeed.objects.all().delete()
    with caplog.at_level(logging.INFO):
        assert Client().get(address).status_code == 404
        assert Client().get(f"{address}/more?{token}").status_code == 404

    assert len(caplog.records) >= 2
    for record in caplog.records:
        WithoutSecrets().filter(record)
        line = JsonLine().format(record)
        assert token not in line
    assert "/calendar/" in caplog.text


def test_a_calendar_is_not_without_end(shop: Shop) -> None:
    """Many jobs fill it with what is nearest, in a second or so."""
    several = [
        CalendarEvent("cut", key, Span(TODAY, TODAY), f"K-{key}", "", "")
        for key in range(MOST_EVENTS)
    ]

    file = calendar_file(shop, several, timezone.now())

    assert file.count(b"BEGIN:VEVENT") == MOST_EVENTS
    assert len(file) < 400_000


def test_what_is_far_off_is_left_out(address: str, office: Person) -> None:
    """More than a year ahead, or months ago."""
    assert office.shop is not None
    for days in (-300, 900):
        JobFactory.create(shop=office.shop, fit_on=TODAY + timedelta(days=days))

    assert events(address) == {}
