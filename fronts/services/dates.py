"""Dates: a shop's calendar and usual days, a job's own, stages marked, fitting moved."""

from datetime import date, datetime, timedelta
from typing import Any

from django.core.exceptions import ValidationError
from django.utils.timezone import localdate

from fronts.facts.rows import columns_of
from fronts.models import ClosedDays, JobDates, ShopDates, StageMark
from fronts.rules.date_facts import DOING, Stage, workdays
from fronts.rules.date_facts import ClosedDays as ClosedFacts
from fronts.rules.date_facts import JobDates as JobFacts
from fronts.rules.date_facts import ShopDates as ShopFacts
from fronts.rules.day_words import day_words
from fronts.rules.limits import LONGEST_CLOSED, LONGEST_MARK, MOST_CLOSED
from fronts.rules.working_days import is_sensible
from fronts.services.saving import checked, enter, job_changed, job_told, saved
from shopjobs.models import Job, Person, Shop
from shopjobs.services.recording import Told, deleted, recorded, tell
from shopjobs.words import capitalized

A_DAY = "Enter a day, like 2027-03-12."


@recorded
def shop_dates_set(*, shop: Shop, facts: ShopFacts, by: Person, at: datetime) -> ShopDates:
    """Set the weekdays worked, the days that stages usually take, and how many jobs at once."""
    if not workdays(facts):
        raise ValidationError({"monday": "Choose one day of the week at least."})
    row = ShopDates.objects.filter(shop=shop).first() or ShopDates(shop=shop)
    enter(row, columns_of(facts))
    checked(row)
    saved(row)
    _tell_shop(shop, "Changed the shop's days and stages", by, at)
    return row


@recorded
def closed_days_add(*, shop: Shop, facts: ClosedFacts, by: Person, at: datetime) -> ClosedDays:
    """The shop is closed from one day to another."""
    if ClosedDays.objects.filter(shop=shop).count() >= MOST_CLOSED:
        raise ValidationError(f"A shop has {MOST_CLOSED} closed times at most; delete old ones.")
    row = _closed_entered(ClosedDays(shop=shop), facts)
    _tell_shop(shop, f"Closed {_closed_words(row, at)}", by, at)
    return row


@recorded
def closed_days_change(
    *, row: ClosedDays, facts: ClosedFacts, by: Person, at: datetime
) -> ClosedDays:
    """The shop is closed on other days, or for something else."""
    _closed_entered(row, facts)
    _tell_shop(row.shop, f"Changed when it is closed: {_closed_words(row, at)}", by, at)
    return row


@recorded
def closed_days_delete(*, row: ClosedDays, by: Person, at: datetime) -> None:
    """The shop is open then after all."""
    deleted([row])
    _tell_shop(row.shop, f"Not closed any more {_closed_words(row, at)}", by, at)


@recorded
def job_dates_set(*, job: Job, facts: JobFacts, by: Person, at: datetime) -> JobDates:
    """Say how long this job's stages take; what it does not say is as usual."""
    row = JobDates.objects.filter(job=job).first() or JobDates(job=job)
    enter(row, columns_of(facts))
    checked(row)
    saved(row)
    job_told(job=job, text="Changed how long the job's stages take", by=by, at=at)
    return row


@recorded
def fit_day_set(*, job: Job, fit_on: date | None, by: Person, at: datetime) -> Job:
    """Set the day on which fitting begins, or take it away."""
    if fit_on is not None and not is_sensible(fit_on):
        raise ValidationError({"fit_on": A_DAY})
    enter(job, {"fit_on": fit_on})
    saved(job)
    said = "without a date" if fit_on is None else f"on {day_words(fit_on, localdate(at))}"
    job_changed(job=job, text=f"Fitting {said}", by=by, at=at)
    return job


@recorded
def stage_begin(*, job: Job, stage: Stage, on: date, by: Person, at: datetime) -> StageMark:
    """Mark a stage as begun on a day."""
    return _marked(job, stage, {"begun_on": on, "done_on": None}, "begun", by, at)


@recorded
def stage_finish(*, job: Job, stage: Stage, on: date, by: Person, at: datetime) -> StageMark:
    """Mark a stage as done on a day; it was begun then at the latest."""
    return _marked(job, stage, {"done_on": on}, "done", by, at)


@recorded
def stage_unmark(*, job: Job, stage: Stage, by: Person, at: datetime) -> None:
    """Take the last mark of a stage back: done is begun again, begun is nothing."""
    row = StageMark.objects.filter(job=job, stage=stage).first()
    if row is None:
        return
    if row.done_on is not None and row.begun_on is not None:
        _marked(job, stage, {"done_on": None}, "not done yet", by, at)
        return
    deleted([row])
    job_told(job=job, text=f"{capitalized(DOING[stage])}: no mark any more", by=by, at=at)


def _marked(
    job: Job, stage: Stage, values: dict[str, Any], what: str, by: Person, at: datetime
) -> StageMark:
    row = StageMark.objects.filter(job=job, stage=stage).first() or StageMark(job=job, stage=stage)
    enter(row, values)
    _refuse_days(row, values, at)
    if row.done_on and row.begun_on and row.done_on < row.begun_on:
        row.begun_on = row.done_on
    enter(row, {"marked_by": by, "marked_at": at})
    checked(row)
    saved(row)
    on = next((each for each in values.values() if each), None)
    said = f"{what} on {day_words(on, localdate(at))}" if on else what
    job_told(job=job, text=f"{capitalized(DOING[stage])}: {said}", by=by, at=at)
    return row


def _refuse_days(row: StageMark, values: dict[str, Any], at: datetime) -> None:
    """A stage is begun and done on a day that has been, not longer ago than one would know."""
    # The day may be tomorrow's where the site's clock stands west of the shop.
    latest, earliest = (
        localdate(at) + timedelta(days=1),
        localdate(at) - timedelta(days=LONGEST_MARK),
    )
    for day in values.values():
        if day is not None and not earliest <= day <= latest:
            raise ValidationError({"on": "Enter a day that has been, today at the latest."})


def _closed_entered(row: ClosedDays, facts: ClosedFacts) -> ClosedDays:
    enter(row, {"first": facts.first, "last": facts.last, "name": facts.name})
    checked(row, _closed_faults(facts))
    saved(row)
    return row


def _closed_faults(facts: ClosedFacts) -> dict[str, str]:
    faults = {
        name: A_DAY for name in ("first", "last") if not is_sensible(getattr(facts, name))
    }  # fmt: skip
    if faults:
        return faults
    if facts.last < facts.first:
        return {"last": "Enter the first day, or one after it."}
    if (facts.last - facts.first).days >= LONGEST_CLOSED:
        return {"last": "Keep it to a year."}
    return {}


def _closed_words(row: ClosedDays, at: datetime) -> str:
    """`summer holidays, 2 August to 14 August`."""
    first, last = (day_words(each, localdate(at)) for each in (row.first, row.last))
    return f"for {row.name}, {first}" + (f" to {last}" if row.last != row.first else "")


def _tell_shop(shop: Shop, text: str, by: Person, at: datetime) -> None:
    tell(Told(shop=shop, text=text, by=by, at=at))
