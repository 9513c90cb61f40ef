"""Drawer boxes behind a front, with their shelf pins."""

from collections.abc import Mapping
from datetime import datetime
from typing import TypeVar

from django.core.exceptions import ValidationError

from fronts.facts.rows import columns_of
from fronts.models import Box, BoxToMake, Front, ShelfPins
from fronts.rules.box_facts import Box as BoxFacts
from fronts.rules.box_facts import BoxToMake as BoxToMakeFacts
from fronts.rules.limits import MOST_PIN_ROWS
from fronts.services.rows import called, row_for, rows_replaced
from fronts.services.saving import checked, checked_at, enter, job_changed, saved
from fronts.services.what_goes import settled_in
from shopjobs.models import Person
from shopjobs.services.recording import deleted, recorded

AnyBox = TypeVar("AnyBox", Box, BoxToMake)


@recorded
def box_enter(*, front: Front, facts: BoxFacts, at: datetime, by: Person | None = None) -> Box:
    """Enter or change the box that a front stands on, with its rows of shelf-pin holes.

    What was decided about one to be made goes.
    """
    _refuse_without_box(front)
    went = _taken_away(BoxToMake, front)
    box = box_save(front, _row_of(Box, front), facts)
    _tell(front, f"Entered {called(box)}", by, at, went)
    return box


@recorded
def box_make(
    *, front: Front, facts: BoxToMakeFacts, at: datetime, by: Person | None = None
) -> BoxToMake:
    """Decide about a box that is to be made; one that was measured goes."""
    _refuse_without_box(front)
    before = settled_in(front.opening.cabinet.job)
    went = _taken_away(Box, front)
    box = box_to_make_save(front, _row_of(BoxToMake, front), facts)
    went += before.lost(front.opening.cabinet.job)
    _tell(front, f"Decided to make {called(box)}", by, at, went)
    return box


@recorded
def box_remove(*, front: Front, at: datetime, by: Person | None = None) -> None:
    """Take away the front's box, found or to be made; nothing happens where there is none."""
    box = _row_of(Box, front) or _row_of(BoxToMake, front)
    if box is None:
        return
    box.front = front
    before = settled_in(front.opening.cabinet.job)
    name, pins = called(box), isinstance(box, Box) and box.shelf_pins.exists()
    deleted([box])
    went = ["its shelf-pin holes"] if pins else []
    went += before.lost(front.opening.cabinet.job)
    _tell(front, f"Removed {name}", by, at, went)


def _refuse_without_box(front: Front) -> None:
    if not front.opening.closing.on_box:
        raise ValidationError("a box stands behind a drawer or a pull-out front only")


def _row_of(table: type[AnyBox], front: Front) -> AnyBox | None:
    return table._default_manager.filter(front=front).first()


def _taken_away(table: type[AnyBox], front: Front) -> list[str]:
    """Delete what the front stands on in the table; what went, in words."""
    box = _row_of(table, front)
    if box is None:
        return []
    deleted([box])
    return [_GOES[table]]


_GOES: Mapping[type, str] = {
    Box: "the size that was measured",
    BoxToMake: "what was decided about making it",
}


def _tell(front: Front, text: str, by: Person | None, at: datetime, went: list[str]) -> None:
    cabinet = front.opening.cabinet
    job_changed(job=cabinet.job, text=text, by=by, at=at, about=cabinet, went=went)


def box_to_make_save(front: Front, box: BoxToMake | None, facts: BoxToMakeFacts) -> BoxToMake:
    """Save the row of a box to be made, new or there already."""
    if box is None:
        box = row_for(BoxToMake, front, facts)
    else:
        box.front = front
        enter(box, columns_of(facts))
    checked(box)
    return saved(box)


def box_save(front: Front, box: Box | None, facts: BoxFacts) -> Box:
    """Save the box's row, new or there already, and those of its pins."""
    if box is None:
        box = row_for(Box, front, facts)
    else:
        box.front = front
        enter(box, columns_of(facts))
    checked(box)
    saved(box)
    _save_pins(box, facts)
    return box


def _save_pins(box: Box, facts: BoxFacts) -> None:
    """Replace the rows of holes where they differ; a fault names its row, counted from 1."""
    if len(facts.shelf_pins) > MOST_PIN_ROWS:
        raise ValidationError(f"enter at most {MOST_PIN_ROWS} rows of holes")
    rows = [row_for(ShelfPins, box, pins, place) for place, pins in enumerate(facts.shelf_pins)]
    for number, row in enumerate(rows, start=1):
        checked_at(row, f"row {number}")
    before = sorted(box.shelf_pins.all(), key=lambda pin: pin.position)
    rows_replaced(ShelfPins, before, rows)
