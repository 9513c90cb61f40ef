"""The shop's own tables where they differ from common practice: hinges, slides, materials."""

from collections.abc import Callable, Sequence
from fractions import Fraction
from itertools import pairwise
from typing import Any

from fronts.jobfile import sizes, values
from fronts.jobfile.reader import Place, Record
from fronts.rules.lengths import Mm
from fronts.rules.limits import (
    LEAST_KG,
    LONGEST_MATERIAL,
    MOST_HINGES,
    MOST_KG,
    MOST_TABLE_ROWS,
)

HEIGHT, WEIGHT, HINGES = "up_to", "up_to_kg", "hinges"
_weight = values.number(LEAST_KG, MOST_KG)
_hinges = values.whole(1, MOST_HINGES)


def tables(record: Record) -> dict[str, Any]:
    """What `record` says of the tables, by their names in `Practice`."""
    said: dict[str, Any] = {
        "hinges_by_height": record.take("hinges_by_height", _by_height),
        "hinges_by_weight": record.take("hinges_by_weight", _by_weight),
        "slide_classes": record.take("slide_classes", _classes),
        "material": record.take("material", values.text(LONGEST_MATERIAL)),
        "frame_material": record.take("frame_material", values.text(LONGEST_MATERIAL)),
    }
    return {key: value for key, value in said.items() if value}


def _by_height(place: Place) -> tuple[tuple[Mm, int], ...] | None:
    return _rows(place, HEIGHT, sizes.length)


def _by_weight(place: Place) -> tuple[tuple[Fraction, int], ...] | None:
    return _rows(place, WEIGHT, _weight)


def _rows(
    place: Place, key: str, read: Callable[[Place], Fraction | None]
) -> tuple[tuple[Fraction, int], ...] | None:
    records = [Record(each, (key, HINGES)) for each in place.items(MOST_TABLE_ROWS)]
    rows = [
        (
            each.need(key, read, sizes.STAND_IN, f"{key} and {HINGES}"),
            each.need(HINGES, _hinges, 1, f"how many hinges, 1 to {MOST_HINGES}"),
        )
        for each in records
    ]
    sound = all(each.sound(key, HINGES) for each in records)
    if sound and not _rising(rows):
        place.fault(f"one row or more, each {key} above the last and {HINGES} never fewer")
        return None
    return tuple(rows)


def _classes(place: Place) -> tuple[Fraction, ...] | None:
    found = [_weight(each) for each in place.items(MOST_TABLE_ROWS)]
    classes = [each for each in found if each is not None]
    if len(classes) == len(found) and not _rising([(each, 1) for each in classes]):
        place.fault("one load in kg or more, each above the last")
        return None
    return tuple(classes)


def _rising(rows: Sequence[tuple[Fraction, int]]) -> bool:
    steps = pairwise(rows)
    return bool(rows) and all(one[0] < two[0] and one[1] <= two[1] for one, two in steps)
