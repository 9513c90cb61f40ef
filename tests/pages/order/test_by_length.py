"""What is bought by length, in feet or metres, on the order page."""

from collections.abc import Callable

from django.test import Client

from fronts.models import OrderCheck
from fronts.rules.schedule import schedule
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import NOW, door_and_drawer, overlaid

SignIn = Callable[[Person], Client]


def test_it_has_its_unit(job: Job, office: Person, signed_in: SignIn) -> None:
    """Feet are not pieces: in what is needed, what is spare, and what has changed."""
    overlaid(job)
    door_and_drawer(job)
    (tape,) = [need for need in schedule(kitchen_of(job)).hardware if need.unit]
    OrderCheck.objects.create(job=job, item=tape.item, need=tape.need + 2, checked_at=NOW)

    page = dom(signed_in(office).get(f"/jobs/{job.pk}/order/"))

    assert f"was {tape.need + 2} ft, now {tape.need} ft" in page.words
    assert f"{tape.need} ft and {tape.spares} ft spare" in page.words
