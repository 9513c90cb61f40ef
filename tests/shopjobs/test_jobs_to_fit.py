"""Jobs as who fits them finds them: today's first, each opening where one fits."""

from collections.abc import Callable
from datetime import timedelta

from django.test import Client
from django.utils import timezone

from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import JobFactory

SignIn = Callable[[Person], Client]


def test_todays_jobs_are_first_and_open_on_fit(
    installer: Person, owner: Person, signed_in: SignIn
) -> None:
    """Then those to come, the nearest first; then what has no day, or one that is past."""
    today = timezone.localdate()
    days = {"past": -2, "far": 9, "today": 0, "near": 1, "none": None}
    for number, day in days.items():
        on = None if day is None else today + timedelta(days=day)
        JobFactory.create(shop=installer.shop, number=number, fit_on=on)

    links = dom(signed_in(installer).get("/jobs/")).all("a.row-link")

    assert [link.words for link in links] == ["today", "near", "far", "none", "past"]
    first = Job.objects.get(number="today")
    assert links[0].attribute("href") == f"/jobs/{first.pk}/fit/"
    assert dom(signed_in(installer).get("/jobs/")).one("td strong").words == "today"
    for_owner = dom(signed_in(owner).get("/jobs/")).all("a.row-link")
    assert {link.attribute("href") for link in for_owner} == {
        f"/jobs/{job.pk}/" for job in Job.objects.all()
    }
    assert for_owner[0].words == "none"
