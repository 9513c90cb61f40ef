"""Doors that no front is made of, job by job."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from fronts.figures.sizes import size
from fronts.models import DoorOnHand
from fronts.selectors.unused_doors import unused_doors
from shopjobs.models import Job


@dataclass(frozen=True, slots=True)
class DoorShown:
    """One door: how large, how made, which bores it has."""

    key: int
    label: str
    size: str
    what: str


@dataclass(frozen=True, slots=True)
class JobDoors:
    """The doors of one job."""

    job: Job
    rows: tuple[DoorShown, ...]


def doors_by_job(jobs: Sequence[Job]) -> Iterator[JobDoors]:
    """The jobs that have such doors, with them."""
    doors = unused_doors(jobs)
    for job in jobs:
        rows = tuple(door_shown(row, job.unit) for row in doors.get(job.pk, ()))
        if rows:
            yield JobDoors(job, rows)


def door_shown(row: DoorOnHand, unit: str) -> DoorShown:
    """A door in words."""
    bores = len(row.hinge_bores.all())
    said = [row.build, row.material or ""]
    said += ["knob hole"] if row.knob_x is not None else []
    said += [f"{bores} hinge bore{'s' if bores > 1 else ''}"] if bores else []
    sizes = f"{size(unit, row.width, row.height, row.thickness)} {unit}"
    return DoorShown(row.pk, row.label, sizes, ", ".join(word for word in said if word))
