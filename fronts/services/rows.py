"""Rows for what a kitchen states, not yet saved: the way back from the snapshot."""

from collections.abc import Iterator, Mapping

from fronts import models
from fronts.facts.rows import columns_of
from fronts.rules.kitchen import CHOOSE, Box, Cabinet, DoorOnHand, FrontFacts, Opening
from shopjobs.models import Job


def cabinet_row(job: Job, cabinet: Cabinet, position: int) -> models.Cabinet:
    """A row for the cabinet, without its openings."""
    return models.Cabinet(job=job, position=position, **columns_of(cabinet))


def opening_row(cabinet: models.Cabinet, opening: Opening, position: int) -> models.Opening:
    """A row for the opening, without its fronts."""
    return models.Opening(cabinet=cabinet, position=position, **columns_of(opening))


def front_columns(front: FrontFacts, doors: Mapping[str, models.DoorOnHand]) -> dict[str, object]:
    """What is decided about a front, by its columns; KeyError where its door is not on hand."""
    choose = front.door_on_hand == CHOOSE
    named = None if front.door_on_hand is None or choose else doors[front.door_on_hand]
    return {**columns_of(front), "door": named, "choose": choose}


def box_row(front: models.Front, box: Box) -> models.Box:
    """A row for the box, without its pins."""
    return models.Box(front=front, **columns_of(box))


def pin_rows(box: models.Box, facts: Box) -> Iterator[models.ShelfPins]:
    """Rows for the box's rows of shelf-pin holes."""
    for position, pins in enumerate(facts.shelf_pins):
        yield models.ShelfPins(box=box, position=position, **columns_of(pins))


def door_row(job: Job, door: DoorOnHand, position: int) -> models.DoorOnHand:
    """A row for the door, without its bores."""
    return models.DoorOnHand(job=job, position=position, **columns_of(door))


def bore_rows(door: models.DoorOnHand, facts: DoorOnHand) -> Iterator[models.HingeBore]:
    """Rows for the door's bores."""
    for position, bore in enumerate(facts.hinge_bores):
        yield models.HingeBore(door=door, position=position, **columns_of(bore))
