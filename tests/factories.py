"""Small parts of a kitchen, in inches, for tests that need one there."""

from datetime import UTC, datetime
from typing import Unpack

from fronts.models import Box, Cabinet, DoorOnHand, Opening
from fronts.rules.practice import inches
from fronts.services.boxes import box_set
from fronts.services.cabinets import cabinet_create
from fronts.services.doors import door_create
from fronts.services.openings import opening_create
from fronts.services.values import BoxValues, CabinetValues, DoorValues, OpeningValues
from shopjobs.models import Job

NOW = datetime(2027, 3, 1, 9, 30, tzinfo=UTC)
"""The time at which a test does what it does."""


def make_cabinet(job: Job, **changes: Unpack[CabinetValues]) -> Cabinet:
    """A face-frame base cabinet, 18 in wide."""
    values: CabinetValues = {
        "label": "B1",
        "kind": "base",
        "build": "face-frame",
        "wall": "North",
        "x": inches(0),
        "y": inches(4),
        "width": inches(18),
        "height": inches(61, 2),
        "depth": inches(24),
    }
    values.update(changes)
    return cabinet_create(job=job, at=NOW, **values)


def make_opening(cabinet: Cabinet, **changes: Unpack[OpeningValues]) -> Opening:
    """An opening 15 in wide and 27 1/2 in high, behind a door hung on the left."""
    values: OpeningValues = {
        "label": "a",
        "x": inches(3, 2),
        "y": inches(3, 2),
        "width": inches(15),
        "height": inches(55, 2),
        "closed_by": "door",
        "hinged": "left",
    }
    values.update(changes)
    return opening_create(cabinet=cabinet, at=NOW, **values)


def make_box(opening: Opening, index: int = 0, **changes: Unpack[BoxValues]) -> Box:
    """A box 14 in wide and 6 in high on side slides."""
    values: BoxValues = {
        "width": inches(14),
        "height": inches(6),
        "depth": inches(21),
        "front_thickness": inches(1, 2),
        "rise": inches(1, 2),
        "slide": "side",
    }
    values.update(changes)
    return box_set(opening=opening, index=index, at=NOW, **values)


def make_door(job: Job, **changes: Unpack[DoorValues]) -> DoorOnHand:
    """A slab door on hand, 16 in × 28 1/2 in."""
    values: DoorValues = {
        "label": "D1",
        "width": inches(16),
        "height": inches(57, 2),
        "thickness": inches(3, 4),
    }
    values.update(changes)
    return door_create(job=job, at=NOW, **values)
