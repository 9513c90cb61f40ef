"""The cabinets of a job with their openings and boxes."""

from collections.abc import Mapping, Sequence
from typing import cast

from fronts import models
from fronts.rules.kitchen import (
    CHOOSE,
    Box,
    Cabinet,
    CabinetBuild,
    ClosedBy,
    FrontBuild,
    FrontWish,
    Hinged,
    Kind,
    Measured,
    Opening,
    ShelfPins,
    SlideKind,
)
from fronts.snapshot.grouping import grouped
from fronts.snapshot.standards import standard_of
from shopjobs.models import Job


def cabinets_of(job: Job, doors: Mapping[int, str]) -> tuple[Cabinet, ...]:
    in_order = ("position", "pk")
    cabinets = models.Cabinet.objects.filter(job=job).order_by(*in_order)
    openings = models.Opening.objects.filter(cabinet__job=job).order_by(*in_order)
    boxes = models.Box.objects.filter(opening__cabinet__job=job).order_by("index")
    pins = models.ShelfPins.objects.filter(box__opening__cabinet__job=job).order_by(*in_order)
    pins_of = grouped(pins, "box_id")
    boxes_of = grouped(boxes, "opening_id")
    openings_of = grouped(openings, "cabinet_id")
    return tuple(
        cabinet_facts(
            cabinet,
            tuple(
                opening_facts(
                    opening,
                    doors.get(opening.front_door_id or 0),
                    _boxes(opening, boxes_of[opening.pk], pins_of),
                )
                for opening in openings_of[cabinet.pk]
            ),
        )
        for cabinet in cabinets
    )


def cabinet_facts(row: models.Cabinet, openings: tuple[Opening, ...]) -> Cabinet:
    """One cabinet as it was entered."""
    return Cabinet(
        label=row.label,
        kind=cast(Kind, row.kind),
        build=cast(CabinetBuild, row.build),
        wall=row.wall,
        x=row.x,
        y=row.y,
        width=row.width,
        height=row.height,
        depth=row.depth,
        openings=openings,
        standard=standard_of(row),
    )


def opening_facts(row: models.Opening, door: str | None, boxes: tuple[Box | None, ...]) -> Opening:
    """One opening as it was entered."""
    return Opening(
        label=row.label,
        x=row.x,
        y=row.y,
        width=row.width,
        height=row.height,
        closed_by=cast(ClosedBy, row.closed_by),
        hinged=cast(Hinged | None, row.hinged or None),
        count=row.count,
        heights=row.heights,
        front=_wish(row, door),
        boxes=boxes,
        measured=Measured(
            width_top=row.measured_width_top,
            width_bottom=row.measured_width_bottom,
            height_left=row.measured_height_left,
            height_right=row.measured_height_right,
            diagonal_1=row.diagonal_1,
            diagonal_2=row.diagonal_2,
        ),
        standard=standard_of(row),
    )


def _wish(row: models.Opening, door: str | None) -> FrontWish:
    return FrontWish(
        door_on_hand=CHOOSE if row.front_choose else door,
        width=row.front_width,
        height=row.front_height,
        thickness=row.front_thickness_own,
        build=cast(FrontBuild | None, row.front_build or None),
        material=row.front_material or None,
        shift_x=row.shift_x,
        shift_y=row.shift_y,
    )


def _boxes(
    opening: models.Opening,
    rows: Sequence[models.Box],
    pins_of: Mapping[int, Sequence[models.ShelfPins]],
) -> tuple[Box | None, ...]:
    """One place a front, None where a front has no box; nothing where none has one."""
    found: list[Box | None] = [None] * (opening.count if rows else 0)
    for row in rows:
        found[row.index] = Box(
            width=row.width,
            height=row.height,
            front_thickness=row.front_thickness,
            rise=row.rise,
            depth=row.depth,
            side_clearance=row.side_clearance,
            slide=cast(SlideKind | None, row.slide or None),
            slide_width=row.slide_width,
            slide_height=row.slide_height,
            shelf_pins=tuple(
                ShelfPins(x=pin.x, y=pin.y, pitch=pin.pitch, count=pin.count, diameter=pin.diameter)
                for pin in pins_of[row.pk]
            ),
        )
    return tuple(found)
