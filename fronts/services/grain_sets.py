"""Fronts named as one set, so that their grain runs on from one to the next."""

from collections.abc import Collection, Iterable
from datetime import datetime

from fronts.models import Front
from fronts.services.saving import checked, enter, job_changed, saved
from shopjobs.models import Job, Person
from shopjobs.services.recording import recorded
from shopjobs.services.refused import Refused


@recorded
def grain_set_save(
    *,
    job: Job,
    name: str,
    fronts: Collection[int],
    before: str,
    at: datetime,
    by: Person | None = None,
) -> None:
    """Let just these fronts, by their keys, be the set; `before` is what it was called, or ""."""
    rows = list(_fronts(job))
    if name != before and any(row.grain_set == name for row in rows):
        raise Refused("Another set is called so already; change that one instead.", field="name")
    chosen = [row for row in rows if row.pk in fronts]
    _named(chosen, name)
    _named((row for row in rows if before and row.grain_set == before and row not in chosen), "")
    text = f"Named {len(chosen)} fronts grain set {name}"
    job_changed(job=job, text=text, by=by, at=at)


@recorded
def grain_set_end(*, job: Job, name: str, at: datetime, by: Person | None = None) -> None:
    """Take a set apart: each of its fronts is cut by itself again."""
    _named((row for row in _fronts(job) if row.grain_set == name), "")
    job_changed(job=job, text=f"Took grain set {name} apart", by=by, at=at)


def _fronts(job: Job) -> Iterable[Front]:
    return Front.objects.filter(opening__cabinet__job=job).order_by("pk")


def _named(rows: Iterable[Front], name: str) -> None:
    for row in rows:
        if row.grain_set != name:
            enter(row, {"grain_set": name})
            checked(row)
            saved(row)
