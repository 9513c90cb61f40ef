"""The doors on hand of a job."""

from collections.abc import Sequence

from fronts import models
from fronts.facts.rows import from_row
from fronts.rules.kitchen import DoorOnHand, Point
from fronts.snapshot.grouping import grouped
from shopjobs.models import Job


def doors_of(job: Job, rows: Sequence[models.DoorOnHand]) -> tuple[DoorOnHand, ...]:
    """The doors of these rows with their bores."""
    bores = models.HingeBore.objects.filter(door__job=job).order_by("position", "pk")
    bores_of = grouped(bores, "door_id")
    return tuple(door_facts(row, bores_of[row.pk]) for row in rows)


def door_facts(row: models.DoorOnHand, bores: Sequence[models.HingeBore]) -> DoorOnHand:
    """One door as it was entered."""
    return from_row(DoorOnHand, row, hinge_bores=tuple(from_row(Point, bore) for bore in bores))
