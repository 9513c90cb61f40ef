"""The order page's stops lead to where each is mended."""

from collections.abc import Callable

from django.test import Client

from fronts.rules.practice import inches
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import NOW, BoxFactory, OpeningFactory
from tests.saying import standard_set

SignIn = Callable[[Person], Client]


def test_a_stop_leads_to_its_box(job: Job, office: Person, signed_in: SignIn) -> None:
    """A box in the wrong place is mended in the box's own form, front by front."""
    standard_set(owner=job, at=NOW, mount="inset")
    stack = OpeningFactory.create(closed_by="drawers", count=2, cabinet__job=job)
    for index in range(2):
        BoxFactory.create(opening=stack, index=index, height=inches(1))

    page = dom(signed_in(office).get(f"/jobs/{job.pk}/order/"))

    assert page.has(f".stops a[href^='/jobs/{job.pk}/openings/{stack.pk}/']")
