"""Cabinets: entered, changed, put in order, copied, deleted."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime

from django.core.exceptions import ValidationError

from fronts.facts.rows import columns_of
from fronts.models import Cabinet, DoorOnHand, Thing
from fronts.rules.facts import single_fact
from fronts.rules.kitchen import CHOOSE, FrontFacts
from fronts.rules.kitchen import Cabinet as CabinetFacts
from fronts.rules.kitchen import Opening as OpeningFacts
from fronts.rules.lengths import Mm
from fronts.services.kitchen_rows import placed_in, things_save
from fronts.services.openings import refuse_shared_names
from fronts.services.ordering import last_position
from fronts.services.resized import openings_let_follow
from fronts.services.rows import row_for
from fronts.services.saving import (
    changed,
    checked,
    enter,
    job_changed,
    saved_under_its_label,
)
from fronts.services.standing import followed, let_follow
from fronts.services.what_goes import in_cabinet, settled_in
from fronts.snapshot.things import whole
from shopjobs.models import Job, Person
from shopjobs.services.recording import deleted, recorded


@recorded
def cabinet_create(
    *, job: Job, facts: CabinetFacts, at: datetime, by: Person | None = None
) -> Cabinet:
    """Enter a cabinet with its openings, last in the job's order."""
    cabinet = row_for(Cabinet, job, facts, last_position(Cabinet.objects.filter(job=job)))
    _save(cabinet)
    _add_openings(cabinet, facts.openings)
    job_changed(job=job, text=f"Entered cabinet {cabinet.label}", by=by, at=at, about=cabinet)
    return cabinet


@recorded
def cabinet_change(
    *,
    cabinet: Cabinet,
    facts: CabinetFacts,
    at: datetime,
    by: Person | None = None,
    gets_face: bool = False,
) -> Cabinet:
    """Change what is known of a cabinet; its openings follow its size, and must lie within it.

    Where it gets another face along with its size, `face_change` says what its openings become.
    """
    was = followed(cabinet)
    resized = (cabinet.width, cabinet.height) != (facts.width, facts.height)
    before = whole(cabinet) if resized and not gets_face else None
    enter(cabinet, columns_of(facts))
    _save(cabinet, before)
    let_follow(was, cabinet)
    text = f"Changed cabinet {cabinet.label}"
    job_changed(job=cabinet.job, text=text, by=by, at=at, about=cabinet)
    return cabinet


@recorded
def cabinet_copy(
    *, cabinet: Cabinet, label: str, x: Mm | None, at: datetime, by: Person | None = None
) -> Cabinet:
    """Copy a cabinet with its openings, fronts and boxes to another place on its wall.

    A door on hand that the original names stays with the original: there is only one of it.
    """
    facts = replace(whole(cabinet), label=label, x=x)
    place = last_position(Cabinet.objects.filter(job=cabinet.job))
    copy = row_for(Cabinet, cabinet.job, facts, place)
    _save(copy)
    _add_openings(copy, without_named_doors(facts).openings)
    text = f"Copied cabinet {cabinet.label} as {copy.label}"
    job_changed(job=cabinet.job, text=text, by=by, at=at, about=copy)
    return copy


@recorded
def cabinet_delete(*, cabinet: Cabinet, at: datetime, by: Person | None = None) -> None:
    """Delete a cabinet with all that is in it."""
    job, before = cabinet.job, settled_in(cabinet.job)
    went, was = in_cabinet(cabinet), followed(cabinet)
    let_follow(was, None)
    deleted(Cabinet.objects.filter(pk=cabinet.pk))
    went += before.lost(job)
    text = f"Deleted cabinet {cabinet.label}"
    job_changed(job=job, text=text, by=by, at=at, about=cabinet, went=went)


def _save(cabinet: Cabinet, before: CabinetFacts | None = None) -> None:
    """Save it; its openings go along from what it was `before` it was resized."""
    checked(cabinet)
    new = changed(cabinet)
    if "label" in new and Thing.objects.filter(job=cabinet.job, label=cabinet.label).exists():
        taken = f"something else is called {cabinet.label} in this job; give another label"
        raise ValidationError({"label": taken})
    saved_under_its_label(cabinet, taken=f"there is already a cabinet {cabinet.label} in this job")
    if before is not None:
        openings_let_follow(cabinet, before)
    if "label" in new:
        refuse_shared_names(cabinet.job)


def _add_openings(cabinet: Cabinet, openings: Sequence[OpeningFacts]) -> None:
    if not openings:
        return
    doors = {door.label: door for door in DoorOnHand.objects.filter(job=cabinet.job)}
    things_save(single_fact(CabinetFacts, "openings"), placed_in(cabinet, openings), doors)
    refuse_shared_names(cabinet.job)


def without_named_doors(cabinet: CabinetFacts) -> CabinetFacts:
    """A cabinet of which there may be another: a door on hand is made into one front only."""

    def free(front: FrontFacts) -> FrontFacts:
        named = front.door_on_hand not in (None, CHOOSE)
        return replace(front, door_on_hand=None) if named else front

    return replace(
        cabinet,
        openings=tuple(
            replace(opening, fronts=tuple(free(front) for front in opening.fronts))
            for opening in cabinet.openings
        ),
    )
