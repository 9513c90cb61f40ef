"""What is bought by length, in feet or metres, on the order page."""

from collections.abc import Callable
from dataclasses import replace

import pytest
from django.test import Client

from fronts.models import OrderCheck
from fronts.rules.schedule import schedule
from fronts.services.imports import job_import
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person
from shopjobs.services.refused import Refused
from tests.dom import dom
from tests.factories import NOW, door_and_drawer, overlaid
from tests.ordering import approved

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


def test_a_job_stays_in_the_unit_of_its_approved_lengths(
    job: Job, owner: Person, office: Person, signed_in: SignIn
) -> None:
    """Else as many metres as feet would seem to be ordered, on its page as from a file."""
    overlaid(job)
    door_and_drawer(job)
    approved(job, office)
    client = signed_in(owner)
    address = f"/jobs/{job.pk}/settings/"
    seen = dom(client.get(address)).field("seen").value
    typed = {"number": "K-1", "unit": "mm", "step": "0.5", "seen": seen}

    refused = client.post(address, typed)

    assert refused.status_code == 422
    assert "stays in inches: lengths on its order were approved" in dom(refused).words
    assert dom(refused).field("unit").value == "mm"
    kitchen = kitchen_of(job)
    metric = replace(kitchen, job=replace(kitchen.job, unit="mm"))
    with pytest.raises(Refused, match="stays in inches"):
        job_import(kitchen=metric, shop=job.shop, replace=True, by=owner, at=NOW)
    job.refresh_from_db()
    assert job.unit == "in"
    inches = {"unit": "in", "step": "1.5875", "fit_on": "2027-03-01"}
    assert client.post(address, typed | inches).status_code == 302
