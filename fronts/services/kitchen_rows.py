"""The rows of an imported kitchen, checked one by one and kept all at once."""

from collections.abc import Iterable, Mapping, Sequence

from django.core.exceptions import ValidationError
from django.db.models import Model

from fronts import models
from fronts.rules.kitchen import Cabinet, DoorOnHand, Opening
from fronts.services.boxes import pins_row
from fronts.services.rows import box_row, cabinet_row, door_row, opening_row
from fronts.services.saving import checked
from shopjobs.models import Job


def import_doors(doors: Sequence[DoorOnHand], job: Job) -> dict[str, models.DoorOnHand]:
    """Keep the doors on hand; they come back by label."""
    rows = {door.label: door_row(door, position) for position, door in enumerate(doors)}
    if len(rows) < len(doors):
        raise ValidationError("two doors on hand have the same label")
    for row in rows.values():
        row.job = job
        _check(row, f"door {row.label}")
    models.DoorOnHand.objects.bulk_create(rows.values())
    bores = [
        models.HingeBore(door=rows[door.label], position=position, x=bore.x, y=bore.y)
        for door in doors
        for position, bore in enumerate(door.hinge_bores)
    ]
    for bore in bores:
        _check(bore, f"door {bore.door.label}, hinge bore {bore.position + 1}")
    models.HingeBore.objects.bulk_create(bores)
    return rows


def import_cabinets(
    cabinets: Sequence[Cabinet], job: Job, doors: Mapping[str, models.DoorOnHand]
) -> None:
    """Keep the cabinets with their openings and boxes."""
    _refuse_same_labels((cabinet.label for cabinet in cabinets), "two cabinets")
    rows = [cabinet_row(cabinet, position) for position, cabinet in enumerate(cabinets)]
    for row in rows:
        row.job = job
        _check(row, f"cabinet {row.label}")
    models.Cabinet.objects.bulk_create(rows)
    kept: list[tuple[Opening, models.Opening]] = []
    for cabinet, row in zip(cabinets, rows, strict=True):
        kept += _openings(cabinet, row, doors)
    models.Opening.objects.bulk_create(row for _, row in kept)
    _import_boxes(kept)


def _openings(
    cabinet: Cabinet, row: models.Cabinet, doors: Mapping[str, models.DoorOnHand]
) -> list[tuple[Opening, models.Opening]]:
    labels = (opening.label for opening in cabinet.openings)
    _refuse_same_labels(labels, f"two openings of cabinet {cabinet.label}")
    kept = []
    for position, opening in enumerate(cabinet.openings):
        try:
            found = opening_row(opening, position, doors)
        except KeyError as error:
            where = f"opening {cabinet.label}.{opening.label}"
            raise ValidationError(f"{where}: no door on hand is called {error.args[0]}") from error
        found.cabinet = row
        _check(found, f"opening {found}")
        kept.append((opening, found))
    return kept


def _import_boxes(kept: Sequence[tuple[Opening, models.Opening]]) -> None:
    boxes, pins = [], []
    for opening, row in kept:
        for index, facts in enumerate(opening.boxes):
            if facts is None:
                continue
            box = box_row(facts, index)
            box.opening = row
            _check(box, f"box {index + 1} of {row}")
            boxes.append(box)
            pins += [pins_row(box, place, each) for place, each in enumerate(facts.shelf_pins)]
    models.Box.objects.bulk_create(boxes)
    for each in pins:
        _check(each, str(each))
    models.ShelfPins.objects.bulk_create(pins)


def _check(row: Model, where: str) -> None:
    try:
        checked(row)
    except ValidationError as error:
        told = [
            f"{where}, {name}: {message}" if name != "__all__" else f"{where}: {message}"
            for name, messages in error.message_dict.items()
            for message in messages
        ]
        raise ValidationError(told) from error


def _refuse_same_labels(labels: Iterable[str], which: str) -> None:
    seen: set[str] = set()
    for label in labels:
        if label in seen:
            raise ValidationError(f"{which} are called {label}")
        seen.add(label)
