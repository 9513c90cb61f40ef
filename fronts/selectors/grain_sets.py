"""Fronts by what they are called, with the set in which their grain runs on."""

from collections import defaultdict
from dataclasses import dataclass

from fronts.models import Front
from fronts.rules.labels import numbered
from shopjobs.models import Job

_IN_ORDER = ("opening__cabinet__position", "opening__cabinet__pk", "opening__position",
             "opening__pk", "position")  # fmt: skip


@dataclass(frozen=True, slots=True)
class NamedFront:
    """A front's row by its label; `grain_set` is "" where its grain runs by itself."""

    key: int
    label: str
    cabinet: str
    wall: str
    grain_set: str


def named_fronts(job: Job) -> tuple[NamedFront, ...]:
    """All fronts of the job, in the order in which its cabinets were entered."""
    rows = Front.objects.filter(opening__cabinet__job=job)
    in_opening: dict[int, list[Front]] = defaultdict(list)
    for front in rows.select_related("opening__cabinet").order_by(*_IN_ORDER):
        in_opening[front.opening_id].append(front)
    return tuple(
        NamedFront(
            front.pk, label, front.opening.cabinet.label, front.opening.cabinet.wall,
            front.grain_set,
        )
        for fronts in in_opening.values()
        for front, label in zip(
            fronts, numbered(str(fronts[0].opening), len(fronts)), strict=True
        )
    )  # fmt: skip
