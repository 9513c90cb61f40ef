"""The order along a wall: moved past a neighbour, or put before another; its rows follow."""

from collections.abc import Callable, Mapping, Sequence
from datetime import datetime

from fronts.models import Cabinet, Thing
from fronts.rules.kitchen import Kitchen
from fronts.rules.run_order import moved, put_before
from fronts.services.saving import enter, job_changed, saved
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person
from shopjobs.services.recording import recorded


@recorded
def standing_move(
    *, row: Cabinet | Thing, by_places: int, at: datetime, by: Person | None = None
) -> bool:
    """Move it one place earlier (-1) or later (1) in its run; whether there was one."""
    job, label = row.job, row.label
    if not _reordered(job, lambda kitchen: moved(kitchen, label, by_places)):
        return False
    about = row if isinstance(row, Cabinet) else None
    job_changed(job=job, text=f"Moved {label} along its wall", by=by, at=at, about=about)
    return True


def standing_put_before(job: Job, labels: Sequence[str], before: str) -> None:
    """Put what is entered before another, as part of a change that tells of itself."""
    _reordered(job, lambda kitchen: put_before(kitchen, labels, before))


def _reordered(job: Job, change: Callable[[Kitchen], Kitchen]) -> bool:
    """Write what a change of the order comes to: whether that is anything."""
    kitchen = kitchen_of(job)
    now = change(kitchen)
    if now == kitchen:
        return False
    cabinets = {row.label: row for row in Cabinet.objects.filter(job=job)}
    for position, cabinet in enumerate(now.cabinets):
        _keep(cabinets[cabinet.label], job, {"position": position, "x": cabinet.x})
    things = {row.label: row for row in Thing.objects.filter(job=job)}
    before = {thing.label: thing for thing in kitchen.others}
    for thing in now.others:
        if thing != before[thing.label]:
            place = {"after": thing.after or "", "run": thing.run or "", "x": thing.x}
            _keep(things[thing.label], job, place)
    return True


def _keep(row: Cabinet | Thing, job: Job, values: Mapping[str, object]) -> None:
    row.job = job
    if any(getattr(row, name) != value for name, value in values.items()):
        enter(row, values)
        saved(row)
