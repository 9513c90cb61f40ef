"""The fronts of an opening: as many rows as close it, each with what is decided about it."""

from collections.abc import Mapping, Sequence
from datetime import datetime

from django.core.exceptions import ValidationError

from fronts.facts.rows import by_column
from fronts.models import Box, BoxToMake, DoorOnHand, Front, HandlePlace, Opening
from fronts.rules.kinds import Closing
from fronts.rules.kitchen import CHOOSE, FrontFacts
from fronts.rules.kitchen import Opening as OpeningFacts
from fronts.rules.limits import MOST_HANDLES
from fronts.rules.validity import front_faults, tidied_front
from fronts.services.boxes import box_save, box_to_make_save
from fronts.services.rows import NO_DOORS, row_for, rows_replaced, stated_columns
from fronts.services.saving import checked, checked_at, enter, job_changed, saved
from fronts.services.what_goes import carried
from shopjobs.models import Job, Person
from shopjobs.services.recording import deleted, recorded


@recorded
def front_change(
    *, front: Front, facts: FrontFacts, at: datetime, by: Person | None = None
) -> Front:
    """Change what is decided about one front, with the places of its handles; its box stays."""
    opening = front.opening
    job = opening.cabinet.job
    closing = opening.closing
    enter(front, _columns(tidied_front(facts, closing), closing, job))
    checked(front)
    saved(front)
    handles_save(front, facts)
    text = f"Changed {_name(front)}"
    job_changed(job=job, text=text, by=by, at=at, about=opening.cabinet)
    return front


def fronts_at_hand(opening: Opening) -> list[Front]:
    """The opening's fronts in their order, as they were fetched with it where they were."""
    return sorted(opening.fronts.all(), key=lambda front: front.position)


def fronts_save(opening: Opening, rows: Sequence[Front], facts: OpeningFacts) -> bool:
    """Save a row for each front of the facts, take the rest away; whether their number changed."""
    job, closing = opening.cabinet.job, facts.closing
    for position, front in enumerate(facts.fronts):
        new = position >= len(rows)
        row = Front(opening=opening, position=position) if new else rows[position]
        enter(row, _columns(front, closing, job))
        checked(row)
        saved(row)
        if new:
            handles_save(row, front)
        if new and front.box is not None and closing.on_box:
            box_save(row, None, front.box)
        if new and front.box_to_make is not None and closing.on_box:
            box_to_make_save(row, None, front.box_to_make)
    surplus = rows[len(facts.fronts) :]
    if surplus:
        deleted(surplus)
    unboxed = not closing.on_box and any(on_box(row) for row in rows)
    if unboxed:
        for table in (Box, BoxToMake):
            deleted(table._default_manager.filter(front__opening=opening))
    others = len(rows) != len(facts.fronts)
    if others or unboxed:
        opening.refresh_from_db(fields=["fronts"])  # What was fetched with it holds no longer.
    return others


def fronts_without_a_place(rows: Sequence[Front], facts: OpeningFacts) -> list[str]:
    """What would go, in words, if an opening with these fronts had those of the facts."""
    surplus = rows[len(facts.fronts) :]
    unboxed = [row for row in rows if not facts.closing.on_box and on_box(row)]
    if not surplus and not unboxed:
        return []
    return carried([*surplus, *(row for row in unboxed if row not in surplus)], fits=surplus)


def on_box(row: Front) -> bool:
    """Whether a front stands on a box, one that exists or one that is to be made."""
    return hasattr(row, "box") or hasattr(row, "box_to_make")


def handles_save(row: Front, facts: FrontFacts) -> None:
    """Replace the places of a front's handles where they differ; a fault names its place."""
    if len(facts.handles) > MOST_HANDLES:
        raise ValidationError(f"enter at most {MOST_HANDLES} places")
    places = [row_for(HandlePlace, row, place, at) for at, place in enumerate(facts.handles)]
    for number, place in enumerate(places, start=1):
        checked_at(place, f"place {number}")
    before = HandlePlace.objects.filter(front=row).order_by("position", "pk")
    rows_replaced(HandlePlace, list(before), places)


def _columns(front: FrontFacts, closing: Closing, job: Job) -> Mapping[str, object]:
    """What the front's row holds; its door by name, refused where it can't serve."""
    faults = front_faults(front, closing)
    if faults:
        at = by_column(FrontFacts, faults)
        raise ValidationError({"door" if name == "door_on_hand" else name: said
                               for name, said in at.items()})  # fmt: skip
    named = front.door_on_hand
    if named is None or named == CHOOSE:
        return stated_columns(front, NO_DOORS)
    door = DoorOnHand.objects.filter(job=job, label=named).first()
    if door is None:
        raise ValidationError({"door": f"no door on hand is called {named}"})
    return stated_columns(front, {named: door})


def _name(front: Front) -> str:
    if front.opening.closing.single:
        return f"the front of {front.opening}"
    return f"front {front.position + 1} of {front.opening}"
