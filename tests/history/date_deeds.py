"""Things that people do to a job's dates, and to the days of a shop."""

import random
from datetime import timedelta

from fronts import models
from fronts.rules.date_facts import STAGES, ClosedDays, JobDates, ShopDates
from fronts.services.dates import (
    closed_days_add,
    closed_days_change,
    closed_days_delete,
    fit_day_set,
    job_dates_set,
    shop_dates_set,
    stage_begin,
    stage_finish,
    stage_unmark,
)
from shopjobs.models import Job, Person
from tests.factories import NOW


def dates_of_job(job: Job, by: Person, chance: random.Random) -> None:
    """A stage is begun, done, or neither any more; fitting moves; a stage takes other days."""
    stage, on = chance.choice(STAGES), NOW.date() - timedelta(days=chance.randrange(9))
    marked = models.StageMark.objects.filter(job=job).order_by("pk").first()
    deed = chance.choice(["begin", "finish", "move", "days", "unmark"])
    if deed == "unmark" and marked is not None:
        stage = next(each for each in STAGES if each == marked.stage)
        stage_unmark(job=job, stage=stage, by=by, at=NOW)
    elif deed == "begin":
        stage_begin(job=job, stage=stage, on=on, by=by, at=NOW)
    elif deed == "move":
        day = NOW.date() + timedelta(days=1 + chance.randrange(300))
        fit_day_set(job=Job.objects.get(pk=job.pk), fit_on=day, by=by, at=NOW)
    elif deed == "days":
        facts = JobDates(cut_days=1 + chance.randrange(200), lead_days=None)
        job_dates_set(job=job, facts=facts, by=by, at=NOW)
    else:
        stage_finish(job=job, stage=stage, on=on, by=by, at=NOW)


def days_of_shop(job: Job, by: Person, chance: random.Random) -> None:
    """Other usual days; the shop is closed, closed otherwise, or open after all."""
    closed = models.ClosedDays.objects.filter(shop=job.shop).order_by("pk").first()
    first = NOW.date() + timedelta(days=chance.randrange(300))
    facts = ClosedDays(first, first + timedelta(days=chance.randrange(20)), f"fair {first}")
    deed = chance.choice(["usual", "add", "change", "delete"])
    if deed == "usual":
        usual = ShopDates(cut_days=1 + chance.randrange(200), saturday=True)
        shop_dates_set(shop=job.shop, facts=usual, by=by, at=NOW)
    elif closed is None or deed == "add":
        closed_days_add(shop=job.shop, facts=facts, by=by, at=NOW)
    elif deed == "change":
        closed_days_change(row=closed, facts=facts, by=by, at=NOW)
    else:
        closed_days_delete(row=closed, by=by, at=NOW)
