"""A shop's days as an iCalendar file (RFC 5545); the one door to icalendar."""

import uuid
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from typing import cast

from icalendar import Calendar, Event

from fronts.models import StageMark
from fronts.rules.date_facts import DOING, Stage
from fronts.rules.stages import Span
from fronts.selectors.dates import ShopPlan
from shopjobs.models import Shop
from shopjobs.words import capitalized

SPACE = uuid.UUID("6f0d5a52-7c2e-5d0b-9b2f-3f2d1c2a8e41")
"""Begins the names of our events, of which no other program makes any."""
BACK, AHEAD = timedelta(days=60), timedelta(days=400)
MOST_EVENTS = 1000
HOURS = 1
"""How often a calendar program is asked to look, at most."""


@dataclass(frozen=True, slots=True)
class CalendarEvent:
    """A stage of a job as an event of whole days, the last one among them."""

    stage: Stage
    key: int
    span: Span
    number: str
    client: str
    site: str
    is_done: bool = False

    @property
    def title(self) -> str:
        """`Fitting K-1, Lindqvist`; what is done says so."""
        title = f"{capitalized(DOING[self.stage])} {self.number}"
        named = f"{title}, {self.client}" if self.client else title
        return f"{named} – done" if self.is_done else named


def events_of(known: ShopPlan, done: Iterable[StageMark]) -> list[CalendarEvent]:
    """The planned stages of the time to come and what was done lately, the nearest ones first."""
    first, last = known.today - BACK, known.today + AHEAD
    found = [
        each
        for each in (*_planned(known), *_done(done))
        if each.span.start <= last and each.span.end >= first
    ]
    nearest = sorted(found, key=lambda each: (abs(each.span.start - known.today), each.key))
    return sorted(nearest[:MOST_EVENTS], key=lambda each: (each.span.start, each.key, each.stage))


def _planned(known: ShopPlan) -> Iterator[CalendarEvent]:
    for key, stages in known.plan.stages.items():
        job = known.jobs[key]
        for stage, planned in stages.items():
            yield CalendarEvent(stage, key, planned.span, job.number, job.client, job.site)


def _done(marks: Iterable[StageMark]) -> Iterator[CalendarEvent]:
    for mark in marks:
        job, last = mark.job, mark.done_on
        if last is not None:
            stage = cast(Stage, mark.stage)
            span = Span(mark.begun_on or last, last)
            yield CalendarEvent(
                stage, job.pk, span, job.number, job.client_name, job.site_address, is_done=True
            )


def calendar_file(shop: Shop, events: Iterable[CalendarEvent], changed: datetime) -> bytes:
    """The file. `changed` is when anything of the shop was changed last.

    RFC 5545, 3.8.7.2: where no method is given, DTSTAMP says when what the event holds was
    last revised. A planned day follows from what is kept of all jobs, so that time is theirs.
    """
    calendar = Calendar()
    calendar.add("prodid", "-//Kitchen fronts//Diary//EN")
    calendar.add("version", "2.0")
    calendar.add("name", f"{shop.name}: jobs")
    calendar.add("x-wr-calname", f"{shop.name}: jobs")
    calendar.add("refresh-interval", timedelta(hours=HOURS), {"value": "DURATION"})
    for each in events:
        calendar.add_component(_event(shop, each, changed.astimezone(UTC)))
    file: bytes = calendar.to_ical()
    return file


def _event(shop: Shop, each: CalendarEvent, changed: datetime) -> Event:
    event = Event()
    event.add("uid", uid_of(shop, each))
    event.add("dtstamp", changed)
    event.add("last-modified", changed)
    event.add("summary", each.title)
    event.add("dtstart", each.span.start)
    event.add("dtend", _day_after(each.span.end))
    if each.site:
        event.add("location", each.site)
    # It takes a shop's time, not that of whoever reads the calendar.
    event.add("transp", "TRANSPARENT")
    return event


def uid_of(shop: Shop, each: CalendarEvent) -> str:
    """The name of an event that stays its own whatever is changed of it."""
    return str(uuid.uuid5(SPACE, f"{shop.created_at.isoformat()}/{each.key}/{each.stage}"))


def _day_after(day: date) -> date:
    """RFC 5545, 3.6.1: the end of an event is the first day that is none of it."""
    return day + timedelta(days=1)
