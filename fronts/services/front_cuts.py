"""Marking fronts as cut, each with the size that it has then."""

from collections.abc import Mapping, Sequence
from datetime import datetime

from fronts.facts.rows import columns_of
from fronts.models import FrontCut
from fronts.rules.cut_fronts import cut_to
from fronts.rules.fits import hung_as
from fronts.rules.kitchen import Kitchen
from fronts.rules.results import Schedule
from fronts.selectors.kitchens import front_keys_of
from fronts.services.saving import checked, enter, job_told, saved
from shopjobs.models import Job, Person
from shopjobs.services.recording import deleted, recorded
from shopjobs.services.refused import Refused


@recorded
def fronts_mark_cut(
    *,
    job: Job,
    kitchen: Kitchen,
    schedule: Schedule,
    seen: Mapping[str, str],
    by: Person,
    at: datetime,
) -> int:
    """Freeze the sizes of some fronts as cut: how many; one that was cut before is cut anew.

    `seen` holds the short name of each front as the person saw it: one that is another by now
    is not marked, and none of the others then.
    """
    fronts = {front.label: front for front in schedule.fronts if front.label in seen}
    changed = [
        label
        for label, short in seen.items()
        if label not in fronts or hung_as(fronts[label]) != short
    ]
    if changed:
        raise Refused(
            f"Changed meanwhile: {', '.join(changed)}. Look at the sizes as they are now, then "
            "mark what was cut."
        )
    keys = front_keys_of(job)
    held = {row.front_id: row for row in FrontCut.objects.filter(front__in=keys.values())}
    for label, front in fronts.items():
        row = held.get(keys[label]) or FrontCut(front_id=keys[label])
        marked = {"cut_by": by, "cut_by_name": "", "cut_at": at}
        enter(row, {**columns_of(cut_to(front, kitchen)), **marked})
        checked(row)
        saved(row)
    job_told(job=job, text=f"Marked as cut: {_listed([*fronts])}", by=by, at=at)
    return len(fronts)


@recorded
def fronts_unmark_cut(*, job: Job, labels: Sequence[str], by: Person, at: datetime) -> None:
    """Take the marks of some fronts back; nothing happens where there are none."""
    keys = front_keys_of(job)
    known = {label: keys[label] for label in labels if label in keys}
    if deleted(FrontCut.objects.filter(front__in=known.values())):
        job_told(job=job, text=f"Not cut after all: {_listed([*known])}", by=by, at=at)


def _listed(labels: Sequence[str]) -> str:
    few = labels[:12]
    more = len(labels) - len(few)
    return ", ".join(few) + (f" and {more} more" if more else "")
