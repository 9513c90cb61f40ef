"""What a week of the diary costs with many open jobs: its page, and the calendar to subscribe to.

    python3 manage.py bench diary

Half of the jobs are measured and ordered; they are fitted over two years, four at a stage at once.
"""

from collections.abc import Iterator
from datetime import timedelta
from functools import partial

from django.test import Client, override_settings
from django.utils import timezone

from fronts.models import StageMark
from fronts.rules.date_facts import STAGES, ShopDates
from fronts.services.calendar_feeds import feed_make
from fronts.services.dates import shop_dates_set
from shopjobs.models import Job, Person
from tests.benchmarks.figures import Figure, best_ms, database
from tests.factories import PersonFactory, ShopFactory

FEW, MANY = 50, 500
DAYS = 730
ROUNDS = 5
WEEK_MS, FEED_MS = 1000, 3000


def figures() -> Iterator[Figure]:
    """Milliseconds of a week, and of a calendar, with few and with many open jobs."""
    with override_settings(ALLOWED_HOSTS=["localhost"]), database():
        for count in (FEW, MANY):
            owner = _owner(count)
            client = Client(SERVER_NAME="localhost")
            client.force_login(owner)
            week = partial(client.get, "/diary/")
            yield Figure(f"a week, {count} open jobs", best_ms(week, ROUNDS), "ms", WEEK_MS)
            feed = f"/calendar/{feed_make(person=owner, at=timezone.now())}.ics"
            took = best_ms(partial(client.get, feed), ROUNDS)
            yield Figure(f"a calendar, {count} open jobs", took, "ms", FEED_MS)


def _owner(count: int) -> Person:
    """Who owns a shop with so many open jobs."""
    shop = ShopFactory.create()
    owner = PersonFactory.create(shop=shop, owner=True)
    facts = ShopDates(
        measure_at_once=4, order_at_once=4, cut_at_once=4, finish_at_once=4, fit_at_once=4
    )
    shop_dates_set(shop=shop, facts=facts, by=owner, at=timezone.now())
    today = timezone.localdate()
    jobs = Job.objects.bulk_create(
        Job(shop=shop, number=f"M-{each}", fit_on=today + timedelta(days=each * DAYS // count))
        for each in range(count)
    )
    StageMark.objects.bulk_create(
        StageMark(job=job, stage=stage, done_on=today, marked_by=owner, marked_at=timezone.now())
        for job in jobs[::2]
        for stage in STAGES[:2]
    )
    return owner
