"""What stands along a wall in another order: moved past its neighbour, or put before another.

The order of a run is that of its cabinets in the job and of what each thing follows. Along a
wall that changes, each thing follows what stands before it in its own run.
"""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.runs import Placed, Standing, runs_of
from fronts.rules.thing_kinds import RUNS, Run
from fronts.rules.wall_facts import Thing

Pins = Mapping[str, Mm | None]


def moved(kitchen: Kitchen, label: str, by: int) -> Kitchen:
    """The kitchen in which it stands one place earlier (-1) or later (1) in its run.

    The two that change places take up the same stretch of the wall. At the end of a run
    nothing changes. ValueError where nothing of this label stands.
    """
    wall, run, placed = _run_with(kitchen, label)
    at = next(i for i, one in enumerate(placed) if one.what.label == label)
    first = min(at, at + by)
    if not 0 <= first < len(placed) - 1:
        return kitchen
    left, right = placed[first : first + 2]
    pins: dict[str, Mm | None] = {right.what.label: left.what.x, left.what.label: None}
    if right.what.x is not None and right.x != left.right:
        pins[left.what.label] = right.right - left.what.width
    order = [one.what.label for one in placed]
    order[first], order[first + 1] = order[first + 1], order[first]
    return _ordered(kitchen, wall, {run: order}, pins)


def put_before(kitchen: Kitchen, labels: Sequence[str], before: str) -> Kitchen:
    """The kitchen in which these stand before another, those of its run in this order.

    One that is pinned where the run before it ends goes along. ValueError as `moved`.
    """
    wall, run, placed = _run_with(kitchen, before)
    order = [one.what.label for one in placed]
    these = [label for label in labels if label in order and label != before]
    rest = [label for label in order if label not in these]
    at = rest.index(before)
    pins: dict[str, Mm | None] = {}
    place = next(one for one in placed if one.what.label == before)
    earlier = [one for one in placed if one.what.label in rest[:at]]
    if (
        these
        and place.what.x is not None
        and place.x == (earlier[-1].right if earlier else NOTHING)
    ):
        first = next(one for one in placed if one.what.label == these[0])
        pins = {before: None} | ({} if first.what.x is not None else {these[0]: place.what.x})
    return _ordered(kitchen, wall, {run: [*rest[:at], *these, *rest[at:]]}, pins)


def _run_with(kitchen: Kitchen, label: str) -> tuple[str, Run, tuple[Placed, ...]]:
    for wall, runs in runs_of(kitchen).items():
        for run, placed in runs.items():
            if any(one.what.label == label for one in placed):
                return wall, run, placed
    raise ValueError(f"nothing called {label} stands in this kitchen")


def _ordered(
    kitchen: Kitchen, wall: str, orders: Mapping[Run, Sequence[str]], pins: Pins
) -> Kitchen:
    """The kitchen with runs of a wall in these orders, the others of the wall in their own."""
    runs = runs_of(kitchen)[wall]
    changed: dict[str, Standing] = {}
    turns: dict[str, Cabinet] = {}
    for run in RUNS:
        order = orders.get(run, [one.what.label for one in runs[run]])
        by_label = {one.what.label: one.what for one in runs[run]}
        before: str | None = None
        for label in order:
            changed[label] = _behind(by_label[label], before, run, pins)
            before = label
        stood = [one for one in kitchen.cabinets if one.label in by_label]
        ordered = [one for label in order if isinstance(one := changed[label], Cabinet)]
        turns |= {old.label: new for old, new in zip(stood, ordered, strict=True)}
    others = (changed.get(one.label, one) for one in kitchen.others)
    return replace(
        kitchen,
        cabinets=tuple(turns.get(one.label, one) for one in kitchen.cabinets),
        others=tuple(one for one in others if isinstance(one, Thing)),
    )


def _behind(what: Standing, before: str | None, run: Run, pins: Pins) -> Standing:
    x = pins.get(what.label, what.x)
    if isinstance(what, Cabinet):
        return what if x == what.x else replace(what, x=x)
    said = run if before is None and run != "floor" else what.run
    return replace(what, after=before, run=said, x=x)
