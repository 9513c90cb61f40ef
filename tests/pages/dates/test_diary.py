"""The diary: week by week over all jobs, in few reads, and of one shop alone."""

from datetime import date, timedelta

import pytest
from django.test import Client
from django.utils import timezone
from pytest_django import DjangoAssertNumQueries

from fronts.models import StageMark
from fronts.rules.date_facts import STAGES
from fronts.rules.date_facts import ClosedDays as ClosedFacts
from fronts.selectors.dates import jobs_now
from fronts.services.dates import closed_days_add, stage_begin, stage_finish
from shopjobs.models import Job, Person, Shop
from tests.dom import dom
from tests.factories import JobFactory
from tests.pages.dates.conftest import TODAY, SignIn


def day(client: Client, on: date, week: str = "") -> str:
    """What the diary says of a day."""
    page = dom(client.get(f"/diary/{week and f'?week={week}'}"))
    return page.one(f"section[aria-labelledby=day-{on}]").words


def test_each_jobs_stages_on_their_days(
    fitted_first: Job, fitted_next: Job, installer: Person, signed_in: SignIn
) -> None:
    """Which day of how many; on which day too many are fitted; everybody of the shop reads it."""
    client = signed_in(installer)

    fitting = day(client, date(2027, 4, 6), "2027-W14")
    assert "Fitting K-1 Lindqvist day 2 of 2" in fitting
    assert "Finishing K-2 Okafor day 5 of 5" in fitting
    assert "Too many" not in fitting
    fitted_next.fit_on = date(2027, 4, 6)
    fitted_next.save()
    assert "Too many 2 jobs at fitting, 1 at once" in day(client, date(2027, 4, 6), "2027-W14")


def test_today_closed_days_and_what_is_done(
    fitted_first: Job, owner: Person, signed_in: SignIn
) -> None:
    """Today is marked; a closed day says what for; what is done stands on the day it was."""
    closed = ClosedFacts(TODAY + timedelta(days=1), TODAY + timedelta(days=2), "stocktaking")
    closed_days_add(shop=fitted_first.shop, facts=closed, by=owner, at=timezone.now())
    stage_finish(job=fitted_first, stage="measure", on=TODAY, by=owner, at=timezone.now())
    client = signed_in(owner)

    assert "Today Measuring K-1 Lindqvist done" in day(client, TODAY)
    assert "Closed: stocktaking" in day(client, TODAY + timedelta(days=2))
    page = dom(client.get("/diary/"))
    assert page.one(".today").words.startswith("Mon 1 Mar Today")
    assert [link.attribute("href") for link in page.all(".weeks a")] == [
        "?week=2027-W08", "?week=2027-W10",
    ]  # fmt: skip
    assert len(page.all(".day:not(.phone-only)")) == 7


def test_late_jobs_stand_on_top(
    fitted_first: Job, fitted_next: Job, office: Person, signed_in: SignIn
) -> None:
    """In words, the one that is fitted first on top; one that was begun in time is not."""
    for job, fit_on in ((fitted_first, date(2027, 3, 10)), (fitted_next, date(2027, 3, 15))):
        job.fit_on = fit_on
        job.save()
        stage_finish(job=job, stage="order", on=TODAY, by=office, at=timezone.now())
    page = dom(signed_in(office).get("/diary/"))

    (line,) = page.all(".late-jobs li")
    assert line.words.startswith("Late K-1, Lindqvist Cutting should have begun on 25 February")
    stage_begin(job=fitted_first, stage="cut", on=date(2027, 2, 25), by=office, at=timezone.now())
    assert "should have begun" not in signed_in(office).get("/diary/").text


@pytest.mark.parametrize(
    "week",
    ["2027-W54", "2027", "W12", "2027-W", "99999999-W1", "0001-W01", "9999-W52", "\0", "²-W²",
     "2027-W00", "9" * 5000 + "-W1"],
)  # fmt: skip
def test_a_week_that_there_is_not(week: str, owner: Person, signed_in: SignIn) -> None:
    """Does not exist."""
    assert signed_in(owner).get("/diary/", {"week": week}).status_code == 404


def test_the_first_and_the_last_week_have_one_neighbour(owner: Person, signed_in: SignIn) -> None:
    """Nothing is planned beyond them."""
    client = signed_in(owner)

    assert len(dom(client.get("/diary/?week=1990-W01")).all(".weeks a")) == 2
    assert client.get("/diary/?week=2199-W52").status_code == 200


def test_jobs_whose_dates_can_not_be_break_nothing(
    fitted_first: Job, owner: Person, signed_in: SignIn
) -> None:
    """A year that somebody mistyped in the job's settings."""
    for year in (1, 9999):
        JobFactory.create(shop=fitted_first.shop, fit_on=date(year, 1, 1))
    client = signed_in(owner)

    assert client.get("/diary/").status_code == 200
    for job in Job.objects.all():
        assert client.get(f"/jobs/{job.pk}/dates/").status_code == 200


def test_another_shops_jobs_are_not_in_it(
    fitted_first: Job, fitted_next: Job, owner: Person, stranger: Person, signed_in: SignIn
) -> None:
    """To the letter, whatever the other shop does: neither its jobs nor its closed days."""
    client = signed_in(owner)
    before = dom(client.get("/diary/?week=2027-W14")).one("main").words
    assert stranger.shop is not None
    closed = ClosedFacts(date(2027, 3, 1), date(2027, 4, 9), "moving house")
    closed_days_add(shop=stranger.shop, facts=closed, by=stranger, at=timezone.now())
    JobFactory.create(shop=stranger.shop, number="Z-1", fit_on=fitted_first.fit_on)

    assert dom(client.get("/diary/?week=2027-W14")).one("main").words == before
    theirs = signed_in(stranger).get("/diary/?week=2027-W14").text
    assert "Z-1" in theirs
    assert "Lindqvist" not in theirs


def test_a_week_of_many_jobs_takes_as_many_reads_as_one_of_few(
    fitted_first: Job,
    owner: Person,
    signed_in: SignIn,
    django_assert_max_num_queries: DjangoAssertNumQueries,
) -> None:
    """Also where all have marks, and no schedule is worked out for any."""
    client = signed_in(owner)
    client.get("/diary/")
    many(fitted_first.shop, owner)
    keys = list(Job.objects.values_list("pk", flat=True))

    with django_assert_max_num_queries(8):
        assert client.get("/diary/").status_code == 200
    with django_assert_max_num_queries(6):
        assert len(jobs_now(fitted_first.shop, TODAY, keys)) == 61


def many(shop: Shop, by: Person) -> None:
    """Sixty jobs with fitting dates and marks."""
    jobs = Job.objects.bulk_create(
        Job(shop=shop, number=f"M-{each}", fit_on=TODAY + timedelta(days=each))
        for each in range(60)
    )
    StageMark.objects.bulk_create(
        StageMark(job=job, stage=stage, done_on=TODAY, marked_by=by, marked_at=timezone.now())
        for job in jobs
        for stage in STAGES[:2]
    )


def test_the_stage_and_lateness_of_jobs_for_a_list_of_them(
    fitted_first: Job, fitted_next: Job, owner: Person, signed_in: SignIn
) -> None:
    """Each job's, whether it has a date or not, is fitted or not."""
    undated = JobFactory.create(shop=fitted_first.shop, number="K-3")
    stage_finish(job=fitted_next, stage="fit", on=TODAY, by=owner, at=timezone.now())
    fitted_first.fit_on = TODAY
    fitted_first.save()

    now = jobs_now(fitted_first.shop, TODAY, Job.objects.values_list("pk", flat=True))

    assert (now[fitted_first.pk].stage, now[fitted_first.pk].lateness.state) == ("measure", "late")
    assert (now[fitted_next.pk].stage, now[fitted_next.pk].lateness.state) == (None, "")
    assert (now[undated.pk].stage, now[undated.pk].lateness.state) == ("measure", "")
    listed = dom(signed_in(owner).get("/jobs/")).one(".register")
    assert listed.words.count("late at measuring") == 1
