"""Several rows of a job's walls at once: their fronts changed, copied, mirrored, deleted.

Each is one step back: all of it, or nothing.
"""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from datetime import datetime
from typing import Any

from fronts.facts.rows import columns_of
from fronts.models import Cabinet, Front, Opening, Thing
from fronts.rules.kitchen import Cabinet as CabinetFacts
from fronts.rules.kitchen import FrontFacts, Kitchen
from fronts.rules.labels import front_labels
from fronts.rules.lengths import Mm
from fronts.rules.mirrored import mirrored
from fronts.rules.next_cabinet import NewLabels
from fronts.rules.runs import runs_of, standing_in
from fronts.rules.schedule import schedule
from fronts.rules.thing_kinds import RUNS, Run
from fronts.rules.validity import belongs
from fronts.rules.wall_facts import Thing as ThingFacts
from fronts.selectors.kitchens import with_fronts
from fronts.services.boxes import box_save
from fronts.services.cabinets import cabinet_create, cabinet_delete, without_named_doors
from fronts.services.fronts import front_change, handles_save
from fronts.services.openings import opening_change
from fronts.services.saving import checked, enter, job_changed, saved
from fronts.services.things import thing_create, thing_delete
from fronts.snapshot import kitchen_of
from fronts.snapshot.things import at_hand, whole
from shopjobs.models import Job, Person
from shopjobs.services.recording import recorded

FrontWidths = Mapping[tuple[str, str, int], Mm]
"""How wide each front is that is worked out, by cabinet, opening and its place in that."""


@recorded
def fronts_set(
    *,
    job: Job,
    fronts: Sequence[Front],
    values: Mapping[str, Any],
    at: datetime,
    by: Person | None = None,
) -> int:
    """Let fronts say these values, each as far as its way of closing has a use for it.

    How many that changed; `values` are by the names of a front's facts.
    """
    count = 0
    for front in fronts:
        held: FrontFacts = at_hand(front)
        fit = {
            name: value for name, value in values.items() if belongs(name, front.opening.closing)
        }
        if replace(held, **fit) != held:
            front_change(front=front, facts=replace(held, **fit), at=at, by=by)
            count += 1
    if count:
        job_changed(job=job, text=f"Changed {_counted(count, 'front')} at once", by=by, at=at)
    return count


@recorded
def standing_copy(
    *,
    job: Job,
    to: Job,
    wall: str,
    rows: Sequence[Cabinet | Thing],
    turned: bool,
    at: datetime,
    by: Person | None = None,
) -> list[str]:
    """Copy what stands on a job's walls behind what stands on a wall of a job; the new labels.

    Where they are `turned`, as in a mirror: the last comes first, left and right change.
    """
    kitchen, target = kitchen_of(job), kitchen_of(to)
    chosen = {row.label for row in rows}
    widths = front_widths(kitchen) if turned else {}
    labels = NewLabels(what.label for what in standing_in(target))
    made: list[str] = []
    ends = _ends(target, wall)
    for run in RUNS:
        standing = [
            placed.what
            for runs in runs_of(kitchen).values()
            for placed in runs[run]
            if placed.what.label in chosen
        ]
        before = ends.get(run)
        for what in reversed(standing) if turned else standing:
            label = labels.new(what.label)
            if isinstance(what, CabinetFacts):
                facts = without_named_doors(what)
                if turned:
                    facts = mirrored(facts, _width_in(widths, what.label))
                facts = replace(facts, label=label, wall=wall, x=None)
                cabinet_create(job=to, facts=facts, at=at, by=by)
            else:
                thing_create(job=to, facts=_behind(what, label, wall, run, before), at=at, by=by)
            before = label
            made.append(label)
    turning = " as in a mirror" if turned else ""
    text = f"Copied {_counted(len(made), 'row')} to wall {wall}{turning}"
    job_changed(job=to, text=text, by=by, at=at)
    return made


@recorded
def cabinets_mirror(
    *, job: Job, cabinets: Sequence[Cabinet], at: datetime, by: Person | None = None
) -> None:
    """Let cabinets stand where they are as in a mirror, with all that is in them."""
    widths = front_widths(kitchen_of(job))
    for cabinet in cabinets:
        facts = mirrored(whole(cabinet), _width_in(widths, cabinet.label))
        enter(cabinet, columns_of(facts))
        checked(cabinet)
        saved(cabinet)
        rows = {row.label: row for row in Opening.objects.filter(cabinet=cabinet)}
        for opening in facts.openings:
            row = with_fronts(rows[opening.label])
            row.cabinet = cabinet
            opening_change(opening=row, facts=opening, at=at, by=by)
            for front, said in zip(row.fronts.all(), opening.fronts, strict=True):
                front.opening = row
                handles_save(front, said)
                if said.box is not None:
                    box_save(front, front.box, said.box)
    text = f"Mirrored {_counted(len(cabinets), 'cabinet')}"
    job_changed(job=job, text=text, by=by, at=at)


@recorded
def standing_delete(
    *, job: Job, rows: Sequence[Cabinet | Thing], at: datetime, by: Person | None = None
) -> None:
    """Delete cabinets with all that is in them, and things."""
    for row in rows:
        row.job = job
        if isinstance(row, Cabinet):
            cabinet_delete(cabinet=row, at=at, by=by)
        else:
            row.refresh_from_db(fields=["after"])  # What it followed may be gone by now.
            thing_delete(row=row, at=at, by=by)
    if len(rows) > 1:
        job_changed(job=job, text=f"Deleted {_counted(len(rows), 'row')} at once", by=by, at=at)


def front_widths(kitchen: Kitchen) -> FrontWidths:
    """How wide the fronts of a kitchen are, as far as they are worked out."""
    by_label = {front.label: front.width for front in schedule(kitchen).fronts}
    return {
        (cabinet.label, opening.label, place): by_label[label]
        for cabinet in kitchen.cabinets
        for opening in cabinet.openings
        for place, label in enumerate(front_labels(cabinet.label, opening))
        if label in by_label
    }


def _width_in(widths: FrontWidths, cabinet: str) -> Callable[[str, int], Mm | None]:
    return lambda opening, place: widths.get((cabinet, opening, place))


def _ends(kitchen: Kitchen, wall: str) -> dict[Run, str]:
    """What stands last in each run of a wall."""
    runs = runs_of(kitchen).get(wall, {})
    return {run: placed[-1].what.label for run, placed in runs.items() if placed}


def _behind(thing: ThingFacts, label: str, wall: str, run: Run, before: str | None) -> ThingFacts:
    said = run if before is None and run != "floor" else thing.run
    return replace(thing, label=label, wall=wall, x=None, after=before, run=said)


def _counted(count: int, one: str) -> str:
    return f"{count} {one}{'' if count == 1 else 's'}"
