"""Jobs as who fits them finds them: today's first, each opening where one fits."""

from collections.abc import Callable
from datetime import timedelta

from django.test import Client
from django.utils import timezone

from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import JobFactory
from tests.shopjobs.kitchens import done_kitchen

SignIn = Callable[[Person], Client]


def test_todays_jobs_are_first_and_open_on_fit(
    installer: Person, owner: Person, signed_in: SignIn
) -> None:
    """Then what is late, what is to come, the nearest first, what has no day, what is done."""
    today = timezone.localdate()
    days = {"done": -1, "past": -2, "far": 9, "today": 0, "near": 1, "none": None}
    for number, day in days.items():
        on = None if day is None else today + timedelta(days=day)
        JobFactory.create(shop=installer.shop, number=number, fit_on=on)
    done_kitchen(Job.objects.get(number="done"), installer)

    page = dom(signed_in(installer).get("/jobs/"))

    links = page.all("a.row-link")
    assert [link.words for link in links] == ["today", "past", "near", "far", "none", "done"]
    first = Job.objects.get(number="today")
    assert links[0].attribute("href") == f"/jobs/{first.pk}/fit/"
    assert page.one("td .due").words == "today"
    assert page.one("td.day .late").words == "late by 2 days"
    assert "Today’s first, then what is late" in page.words
    for_owner = dom(signed_in(owner).get("/jobs/")).all("a.row-link")
    assert {link.attribute("href") for link in for_owner} == {
        f"/jobs/{job.pk}/" for job in Job.objects.all()
    }
    assert for_owner[0].words == "done"
