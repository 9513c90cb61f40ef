"""Openings: entered, changed, deleted."""

from collections.abc import Sequence
from datetime import datetime

from django.core.exceptions import ValidationError

from fronts.facts.rows import by_column, columns_of
from fronts.models import Cabinet, Front, Opening
from fronts.rules.kitchen import Opening as OpeningFacts
from fronts.rules.limits import MOST_OPENINGS
from fronts.rules.validity import measured_faults, tidied
from fronts.services.fronts import fronts_at_hand, fronts_save, fronts_without_a_place
from fronts.services.label_clashes import label_taken_twice, past_cabinet
from fronts.services.ordering import last_position
from fronts.services.rows import row_for
from fronts.services.saving import (
    changed,
    checked,
    enter,
    job_changed,
    saved_under_its_label,
)
from fronts.services.what_goes import NOTHING_SETTLED, carried, settled_in
from shopjobs.models import Job, Person
from shopjobs.services.recording import deleted, recorded


@recorded
def opening_create(
    *, cabinet: Cabinet, facts: OpeningFacts, at: datetime, by: Person | None = None
) -> Opening:
    """Enter an opening with its fronts, last in its cabinet's order."""
    rows = Opening.objects.filter(cabinet=cabinet)
    if rows.count() >= MOST_OPENINGS:
        raise ValidationError(f"cabinet {cabinet.label} has {MOST_OPENINGS} openings, the most")
    opening = row_for(Opening, cabinet, facts, last_position(rows))
    _save(opening, [], tidied(facts))
    job_changed(job=cabinet.job, text=f"Entered opening {opening}", by=by, at=at, about=cabinet)
    return opening


@recorded
def opening_change(
    *, opening: Opening, facts: OpeningFacts, at: datetime, by: Person | None = None
) -> Opening:
    """Change what is known of an opening and decided about its fronts; boxes stay as they are.

    Fronts or boxes that have no place any more go, and that is told.
    """
    rows, cabinet = fronts_at_hand(opening), opening.cabinet
    went = fronts_without_a_place(rows, facts)
    before = settled_in(cabinet.job) if went else NOTHING_SETTLED
    enter(opening, columns_of(facts))
    _save(opening, rows, tidied(facts))
    went += before.lost(cabinet.job)
    text = f"Changed opening {opening}"
    job_changed(job=cabinet.job, text=text, by=by, at=at, about=cabinet, went=went)
    return opening


@recorded
def opening_delete(*, opening: Opening, at: datetime, by: Person | None = None) -> None:
    """Delete an opening with all that its fronts carry."""
    cabinet, name = opening.cabinet, str(opening)
    before = settled_in(cabinet.job)
    went = carried(list(opening.fronts.all()))
    deleted([opening])
    went += before.lost(cabinet.job)
    text = f"Deleted opening {name}"
    job_changed(job=cabinet.job, text=text, by=by, at=at, about=cabinet, went=went)


def _save(opening: Opening, rows: Sequence[Front], facts: OpeningFacts) -> None:
    checked(opening, by_column(OpeningFacts, measured_faults(facts.measured), "measured."))
    past = past_cabinet(opening, opening.cabinet, opening.cabinet.job.unit)
    if past:
        raise ValidationError(past)
    renamed = changed(opening) & {"label", "closed_by"}
    saved_under_its_label(
        opening, taken=f"cabinet {opening.cabinet.label} already has an opening {opening.label}"
    )
    resized = fronts_save(opening, rows, facts)
    if renamed or resized:
        refuse_shared_names(opening.cabinet.job)


def refuse_shared_names(job: Job) -> None:
    """No two fronts of a job may be called the same on its drawings."""
    name = label_taken_twice(job)
    if name is not None:
        raise ValidationError({"label": f"two fronts would be called {name}; give another label"})
