"""A whole kitchen's rows, checked one by one and saved all at once."""

from collections.abc import Iterable, Mapping, Sequence

from django.core.exceptions import ValidationError

from fronts import models
from fronts.facts.rows import by_column
from fronts.rules.kitchen import Cabinet, DoorOnHand, Opening
from fronts.rules.validity import door_faults, front_faults, measured_faults, tidied
from fronts.services.rows import (
    bore_rows,
    box_row,
    cabinet_row,
    door_row,
    front_columns,
    opening_row,
    pin_rows,
)
from fronts.services.saving import checked_at
from shopjobs.models import Job

Doors = Mapping[str, models.DoorOnHand]


def doors_save(doors: Sequence[DoorOnHand], job: Job) -> dict[str, models.DoorOnHand]:
    """Save the doors on hand with their bores; the rows come back by label."""
    _refuse_same_labels((door.label for door in doors), "two doors on hand")
    rows = [door_row(job, door, position) for position, door in enumerate(doors)]
    for door, row in zip(doors, rows, strict=True):
        checked_at(row, f"door {row.label}", by_column(DoorOnHand, door_faults(door)))
    models.DoorOnHand.objects.bulk_create(rows)
    bores = [bore for door, row in zip(doors, rows, strict=True) for bore in bore_rows(row, door)]
    for bore in bores:
        checked_at(bore, f"door {bore.door.label}, hinge bore {bore.position + 1}")
    models.HingeBore.objects.bulk_create(bores)
    return {row.label: row for row in rows}


def cabinets_save(cabinets: Sequence[Cabinet], job: Job, doors: Doors) -> None:
    """Save the cabinets with their openings, fronts and boxes."""
    _refuse_same_labels((cabinet.label for cabinet in cabinets), "two cabinets")
    rows = [cabinet_row(job, cabinet, position) for position, cabinet in enumerate(cabinets)]
    for row in rows:
        checked_at(row, f"cabinet {row.label}")
    models.Cabinet.objects.bulk_create(rows)
    inside = [
        (row, opening, position)
        for cabinet, row in zip(cabinets, rows, strict=True)
        for position, opening in enumerate(cabinet.openings)
    ]
    openings_save(inside, doors)


def openings_save(openings: Sequence[tuple[models.Cabinet, Opening, int]], doors: Doors) -> None:
    """Save new openings with their fronts and boxes, each at a place in its cabinet."""
    names = (f"{cabinet.label}.{opening.label}" for cabinet, opening, _ in openings)
    _refuse_same_labels(names, "two openings")
    rows = []
    for cabinet, opening, position in openings:
        row = opening_row(cabinet, opening, position)
        faults = by_column(Opening, measured_faults(opening.measured), "measured.")
        checked_at(row, f"opening {row}", faults)
        rows.append(row)
    models.Opening.objects.bulk_create(rows)
    tidy = [tidied(opening) for _, opening, _ in openings]
    fronts_of = [
        (opening, row, _front_rows(opening, row, doors))
        for opening, row in zip(tidy, rows, strict=True)
    ]
    models.Front.objects.bulk_create(front for _, _, fronts in fronts_of for front in fronts)
    _save_boxes(fronts_of)


def _front_rows(opening: Opening, row: models.Opening, doors: Doors) -> list[models.Front]:
    rows = []
    for position, front in enumerate(opening.fronts):
        where = f"opening {row}"
        try:
            columns = front_columns(front, doors)
        except KeyError as error:
            raise ValidationError(f"{where}: no door on hand is called {error.args[0]}") from error
        made = models.Front(opening=row, position=position, **columns)
        faults = front_faults(front, opening.closing)
        if faults:
            raise ValidationError([f"{where}: {fault}" for fault in faults.values()])
        checked_at(made, where)
        rows.append(made)
    return rows


def _save_boxes(
    fronts_of: Sequence[tuple[Opening, models.Opening, Sequence[models.Front]]],
) -> None:
    boxes: list[models.Box] = []
    pins: list[models.ShelfPins] = []
    for opening, row, fronts in fronts_of:
        for facts, front in zip(opening.fronts, fronts, strict=True):
            if facts.box is None:
                continue
            if not opening.closing.on_box:
                raise ValidationError(f"opening {row} has no front that stands on a box")
            box = box_row(front, facts.box)
            checked_at(box, f"box {front.position + 1} of {row}")
            boxes.append(box)
            pins += pin_rows(box, facts.box)
    models.Box.objects.bulk_create(boxes)
    for pin in pins:
        checked_at(pin, str(pin))
    models.ShelfPins.objects.bulk_create(pins)


def _refuse_same_labels(labels: Iterable[str], which: str) -> None:
    seen: set[str] = set()
    for label in labels:
        if label in seen:
            raise ValidationError(f"{which} are called {label}")
        seen.add(label)
