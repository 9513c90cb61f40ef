"""The jig with which a front is set, on its cabinet's page."""

from collections.abc import Callable

from django.test import Client

from fronts.rules.practice import inches
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import BoxFactory, CabinetFactory, OpeningFactory, overlaid

SignIn = Callable[[Person], Client]


def test_the_jig_is_the_one_that_is_made(job: Job, installer: Person, signed_in: SignIn) -> None:
    """Two that differ by 1/64 in are one; the front that sits off by it says so."""
    overlaid(job)
    cabinets = []
    for number, rise in enumerate((inches(1, 2), inches(33, 64)), 1):
        cabinet = CabinetFactory.create(job=job, label=f"B{number}", wall=f"W{number}")
        hole = OpeningFactory.create(cabinet=cabinet, closed_by="pull-out", hinged="")
        BoxFactory.create(opening=hole, rise=rise)
        cabinets.append(cabinet)

    page = dom(signed_in(installer).get(f"/jobs/{job.pk}/fit/{cabinets[1].pk}/"))

    assert "Jig 1 thick, 14 long; sits 1/64 higher" in page.one(".figures").words
    assert "1 1/64" not in page.one('[aria-label="Jig of B2.a"]').words
