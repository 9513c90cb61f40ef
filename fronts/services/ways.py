"""What one page says of a shop's ways, in one step: standard, numbers, tables, box stock."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime
from fractions import Fraction
from typing import Any

from fronts.rules.box_facts import BoxesMadeOf
from fronts.rules.practice import TABLES
from fronts.rules.standard_keys import Standard
from fronts.services.boxes_made_of import boxes_made_of_set
from fronts.services.saving import ways_changed
from fronts.services.standards import shared_level_of, standard_set, tables_set
from fronts.services.stock import practice_set
from fronts.snapshot.stock import tables_of
from shopjobs.models import Person, Shop
from shopjobs.services.recording import recorded

_WORDS = ("material", "frame_material")


@dataclass(frozen=True, slots=True)
class Ways:
    """What is said anew; a standard and box stock whole, numbers and tables by their names."""

    standard: Standard | None = None
    boxes: BoxesMadeOf | None = None
    numbers: Mapping[str, Fraction | None] = field(default_factory=dict)
    tables: Mapping[str, Any] = field(default_factory=dict)


@recorded
def ways_set(
    *, shop: Shop, ways: Ways, what: str, at: datetime, by: Person | None = None
) -> None:  # fmt: skip
    """Set all of it or nothing, and tell it as one change of `what`."""
    if ways.standard is not None:
        standard_set(owner=shop, standard=ways.standard, at=at, by=by)
    if ways.boxes is not None:
        boxes_made_of_set(owner=shop, boxes=ways.boxes, at=at, by=by)
    if ways.numbers:
        practice_set(owner=shop, values=ways.numbers, at=at, by=by)
    if ways.tables:
        nothing = {name: "" if name in _WORDS else None for name in TABLES}
        tables = {**nothing, **tables_of(shared_level_of(shop)), **ways.tables}
        tables_set(owner=shop, **tables, at=at, by=by)
    ways_changed(owner=shop, what=what, by=by, at=at)
