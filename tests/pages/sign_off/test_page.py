"""What the client is shown on site, and what is said until then."""

from collections.abc import Callable
from datetime import timedelta

import pytest
from django.test import Client

from fronts.models import Front
from fronts.rules.fits import FitFacts, hung_as
from fronts.rules.planned_gap import planned_gaps
from fronts.rules.snags import SnagFacts
from fronts.selectors.kitchens import front_keys_of, placed_kitchen_of
from fronts.selectors.schedules import schedule_for
from fronts.services.fits import fit_record
from fronts.services.snags import snag_raise, snag_settle
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import NOW, door_and_drawer, overlaid

SignIn = Callable[[Person], Client]


@pytest.fixture
def fitted(job: Job, installer: Person) -> Job:
    """A door and a drawer that hang as they were planned."""
    overlaid(job)
    door_and_drawer(job)
    kitchen = placed_kitchen_of(job)
    keys = front_keys_of(job)
    for front in schedule_for(job, kitchen).fronts:
        planned = planned_gaps(front, kitchen)
        fit_record(
            front=Front.objects.get(pk=keys[front.label]),
            facts=FitFacts(front.label, planned, planned=planned),
            hung=hung_as(front), fingerprint="", by=installer, at=NOW,
        )  # fmt: skip
    return job


def test_ready(fitted: Job, installer: Person, signed_in: SignIn) -> None:
    """Each front with its gaps, who fitted it; the sheet to print."""
    client = signed_in(installer)
    page = dom(client.get(f"/jobs/{fitted.pk}/sign-off/"))
    assert page.one("h1").words == "Sign-off"
    rows = page.all("tbody tr")
    assert [row.one("th").words.split()[0] for row in rows] == ["B1.a", "B1.b"]
    assert "ines" in rows[0].words
    assert "1 Mar 2027" in rows[0].words
    (link,) = [each for each in page.all("main a") if "PDF" in each.words]
    sheet = client.get(link.attribute("href"))
    assert (sheet.status_code, sheet.headers["Content-Type"]) == (200, "application/pdf")


def test_not_yet(fitted: Job, installer: Person, signed_in: SignIn) -> None:
    """An open snag, then a front that is another one since; each by its name."""
    client, address = signed_in(installer), f"/jobs/{fitted.pk}/sign-off/"
    facts = SnagFacts("job", "paint on the floor")
    snag = snag_raise(job=fitted, facts=facts, by=installer, at=NOW)
    page = dom(client.get(address))
    assert page.one("h1").words == "Sign-off: not yet"
    assert page.one(".missing").words == "The whole job paint on the floor"
    snag_settle(snag=snag, note="wiped", by=installer, at=NOW + timedelta(hours=1))
    assert dom(client.get(address)).one("h1").words == "Sign-off"

    Front.objects.filter(opening__label="a").update(thickness=25)
    assert dom(client.get(address)).one(".missing").words == "B1.a changed since it was fitted"


def test_without_fronts_and_for_strangers(
    job: Job, owner: Person, stranger: Person, signed_in: SignIn
) -> None:
    """Nothing to sign; another shop's job does not exist."""
    address = f"/jobs/{job.pk}/sign-off/"
    assert "no fronts yet" in dom(signed_in(owner).get(address)).words
    assert signed_in(stranger).get(address).status_code == 404
    assert signed_in(stranger).get(f"/jobs/{job.pk}/sheets/sign-off/").status_code == 404
