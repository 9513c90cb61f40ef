"""Where cabinets and things stand along their walls: run by run, each where the last one ended.

A wall has a floor run and an upper run. What has an `x` is pinned, and its run goes on from
its end. An upper thing that would overlap a floor thing reaching above its bottom edge (a tall
cabinet, a tall appliance) moves on to that one's right end, until it stands free.
"""

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace

from fronts.rules.kinds import CABINET_KINDS
from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.thing_kinds import RUNS, THING_KINDS, Run
from fronts.rules.wall_facts import Thing

Standing = Cabinet | Thing


@dataclass(frozen=True, slots=True)
class Placed:
    """A cabinet or a thing in its place; `y` None: nobody says how high it hangs."""

    what: Standing
    run: Run
    x: Mm
    y: Mm | None

    @property
    def right(self) -> Mm:
        return self.x + self.what.width

    @property
    def top(self) -> Mm:
        """Its upper edge above the floor; 0 where its height is not known."""
        return (self.y or NOTHING) + (self.what.height or NOTHING)

    @property
    def has_heights(self) -> bool:
        """Whether it is known from where to where it stands above the floor."""
        return self.y is not None and self.what.height is not None

    def beside(self, bottom: Mm, top: Mm, run: Run) -> bool:
        """Whether any of it stands at these heights; where its own are not known, by its run."""
        if self.y is None or self.what.height is None:
            return run == self.run
        return self.y < top and bottom < self.top


def runs_of(kitchen: Kitchen) -> dict[str, dict[Run, tuple[Placed, ...]]]:
    """Everything that stands on each wall, by wall and run, from the left end on."""
    walls: dict[str, list[Standing]] = defaultdict(list)
    for what in in_order(kitchen):
        walls[what.wall].append(what)
    runs = _run_of_each(kitchen)
    return {wall: _placed(standing, runs) for wall, standing in walls.items()}


def on_walls(runs: Mapping[str, Mapping[Run, Sequence[Placed]]]) -> list[Placed]:
    """Everything in these runs, wall by wall and run by run."""
    return [placed for wall in runs.values() for run in RUNS for placed in wall[run]]


def is_solid(what: Standing) -> bool:
    """Whether nothing else can be where it stands: a gap is where nothing is."""
    return isinstance(what, Cabinet) or THING_KINDS[what.kind].solid


def run_of(cabinet: Cabinet) -> Run:
    """The run that a cabinet stands in."""
    return "upper" if CABINET_KINDS[cabinet.kind].hangs else "floor"


def standing_in(kitchen: Kitchen) -> tuple[Standing, ...]:
    """Cabinets and things as they are listed."""
    return (*kitchen.cabinets, *kitchen.others)


def in_order(kitchen: Kitchen) -> list[Standing]:
    """Cabinets as they are listed, each thing after what it follows.

    Several after the same stand as they are listed; what follows nothing comes first on its
    wall. What follows something that there isn't, or only each other, comes last.
    """
    followers: dict[tuple[str, str | None], list[Thing]] = defaultdict(list)
    labels = {what.label for what in standing_in(kitchen)}
    for thing in kitchen.others:
        after = thing.after if thing.after in labels else None
        followers["" if after else thing.wall, after].append(thing)
    ordered: list[Standing] = []

    def follow(what: Standing) -> None:
        waiting = [what]
        while waiting:
            one = waiting.pop()
            ordered.append(one)
            waiting += reversed(followers.pop(("", one.label), []))

    for wall in dict.fromkeys(what.wall for what in standing_in(kitchen)):
        for thing in followers.pop((wall, None), []):
            follow(thing)
        for cabinet in kitchen.cabinets:
            if cabinet.wall == wall:
                follow(cabinet)
    for rest in list(followers.values()):
        ordered += [thing for thing in rest if thing not in ordered]
    return ordered


def stood(kitchen: Kitchen) -> Kitchen:
    """The kitchen whose cabinets and things all have a place along their walls."""
    if all(what.x is not None for what in standing_in(kitchen)):
        return kitchen
    places = {placed.what.label: placed.x for placed in on_walls(runs_of(kitchen))}
    return replace(
        kitchen,
        cabinets=tuple(replace(one, x=places[one.label]) for one in kitchen.cabinets),
        others=tuple(replace(one, x=places[one.label]) for one in kitchen.others),
    )


def _run_of_each(kitchen: Kitchen) -> dict[str, Run]:
    """The run of each cabinet and thing: what a thing says itself, else that of what it follows."""
    runs: dict[str, Run] = {cabinet.label: run_of(cabinet) for cabinet in kitchen.cabinets}
    for what in in_order(kitchen):
        if isinstance(what, Thing):
            followed: Run = runs.get(what.after or "", "floor")
            own: Run = "floor" if THING_KINDS[what.kind].grounded else followed
            runs[what.label] = what.run or own
    return runs


def _placed(standing: Sequence[Standing], runs: Mapping[str, Run]) -> dict[Run, tuple[Placed, ...]]:
    floor: list[Placed] = []
    end = NOTHING
    for what in standing:
        if runs[what.label] == "floor":
            x = end if what.x is None else what.x
            floor.append(Placed(what, "floor", x, what.y or NOTHING))
            end = x + what.width
    upper: list[Placed] = []
    end = NOTHING
    hanging = [what for what in standing if runs[what.label] == "upper"]
    for index, what in enumerate(hanging):
        y = _bottom(hanging, index)
        x = _clear(end, what.width, y, floor) if what.x is None else what.x
        upper.append(Placed(what, "upper", x, y))
        end = x + what.width
    return {"floor": tuple(floor), "upper": tuple(upper)}


def _bottom(hanging: Sequence[Standing], index: int) -> Mm | None:
    """How high it hangs: its own y, else that of the wall cabinet before it, else of the next."""
    own = hanging[index].y
    if own is not None:
        return own
    near = (*reversed(hanging[:index]), *hanging[index + 1 :])
    return next((what.y for what in near if isinstance(what, Cabinet)), None)


def _clear(x: Mm, width: Mm, bottom: Mm | None, floor: Iterable[Placed]) -> Mm:
    """From `x` on to the right: the first place clear of what reaches above the bottom edge."""
    tall = [placed for placed in floor if bottom is not None and placed.top > bottom]
    while True:
        met = [placed.right for placed in tall if placed.x < x + width and x < placed.right]
        if not met:
            return x
        x = max(met)


def followed_in_a_ring(kitchen: Kitchen) -> frozenset[str]:
    """The labels of things that follow each other in a ring, so that none of them has a place."""
    after = {thing.label: thing.after for thing in kitchen.others}
    ring: set[str] = set()
    for label in after:
        seen: set[str] = set()
        at: str | None = label
        while at in after and at not in seen:
            seen.add(at)
            at = after[at]
        if at == label and label in seen:
            ring.add(label)
    return frozenset(ring)
