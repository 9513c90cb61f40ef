"""The doors on hand of a job."""

from collections.abc import Sequence
from typing import cast

from fronts import models
from fronts.rules.kitchen import DoorOnHand, FrontBuild, KnobHole, Point
from fronts.rules.practice import PRACTICE
from fronts.snapshot.grouping import grouped
from shopjobs.models import Job


def doors_of(job: Job, rows: Sequence[models.DoorOnHand]) -> tuple[DoorOnHand, ...]:
    bores = models.HingeBore.objects.filter(door__job=job).order_by("position", "pk")
    bores_of = grouped(bores, "door_id")
    return tuple(
        DoorOnHand(
            label=row.label,
            width=row.width,
            height=row.height,
            thickness=row.thickness,
            build=cast(FrontBuild, row.build),
            stile=row.stile,
            rail=row.rail,
            panel_thickness=row.panel_thickness,
            knob_hole=_knob_hole(row),
            hinge_bores=tuple(Point(bore.x, bore.y) for bore in bores_of[row.pk]),
            bore_diameter=row.bore_diameter,
            material=row.material or None,
        )
        for row in rows
    )


def _knob_hole(row: models.DoorOnHand) -> KnobHole | None:
    if row.knob_x is None or row.knob_y is None:
        return None
    diameter = PRACTICE.knob_hole if row.knob_diameter is None else row.knob_diameter
    return KnobHole(x=row.knob_x, y=row.knob_y, diameter=diameter)
