"""Jigs that differ by less than the play of the mounting holes are made as one.

A jig that is thinner than a front wants sets that front higher by the difference, a thicker one
lower; how far that may be is said in `jig_bodies`. Jigs stay as long as their box is wide: their
ends show the side offset.

The fewest jigs, and of those plans the one with the least shift in all (`stabbing_points`).
Fronts of one line that want different jigs move together: each way to move them is tried. Where
that makes more than `MOST_WAYS`, the last lines stay as planned, which the plan then says.
The schedule's own figures stay what they are.
"""

from collections import defaultdict
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import product
from typing import TypeAlias

from fronts.rules.fitting_results import Fitting, Jig
from fronts.rules.jig_bodies import Body, Length, bodies_on_jigs, is_supported, length_of
from fronts.rules.jigs import shared_jigs
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.results import Schedule
from fronts.rules.stabbing_points import Cost, Span, nearest_held, stabbing_points

MOST_WAYS = 2_000
"""Ways in which lines over several jigs are moved, tried in all, at most."""


@dataclass(frozen=True, slots=True)
class Packers:
    """Two packers as thick as this, and the fronts that they serve."""

    thickness: Mm
    fronts: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class JigPlan:
    """What is made and taken along; `shifts` of the fronts that sit off, above nothing: higher.

    `spared` are the jigs that the schedule has and nobody makes, thickness by length. `exact`:
    none but these can be spared; else some lines were left as planned without a look.
    """

    jigs: tuple[Jig, ...]
    packers: tuple[Packers, ...]
    shifts: Mapping[str, Mm]
    spared: tuple[tuple[Mm, Length], ...]
    exact: bool

    def jig_of(self, front: str) -> Jig | None:
        return next((jig for jig in self.jigs if front in jig.fronts), None)

    def thickness_under(self, fitting: Fitting) -> Mm:
        """How thick the jig is, or the packers, on which a front is set as it is made."""
        return fitting.jig_thickness - self.shifts.get(fitting.front, NOTHING)

    def packers_of(self, front: str) -> Packers | None:
        return next((each for each in self.packers if front in each.fronts), None)


def merged_jigs(schedule: Schedule, kitchen: Kitchen) -> JigPlan:
    """The jigs and packers of the whole kitchen, as few as may be."""
    supported = [each for each in schedule.fittings if is_supported(each, schedule)]
    bodies, exact = _tried(bodies_on_jigs(supported, schedule, kitchen))
    shifts = _least(bodies)
    made = [
        replace(each, jig_thickness=each.jig_thickness - shifts.get(each.front, NOTHING))
        for each in supported
    ]
    packers: dict[Mm, list[str]] = defaultdict(list)
    for each in made:
        if each.method == "packers":
            packers[each.jig_thickness].append(each.front)
    kept = {(each.jig_thickness, length_of(each)) for each in made}
    wanted = {(each.jig_thickness, length_of(each)) for each in supported}
    return JigPlan(
        jigs=shared_jigs(made, schedule.fronts, kitchen.practice),
        packers=tuple(Packers(thick, tuple(packers[thick])) for thick in sorted(packers)),
        shifts={label: shift for label, shift in shifts.items() if shift},
        spared=tuple(sorted(wanted - kept, key=lambda jig: (jig[0], jig[1] or NOTHING))),
        exact=exact,
    )


def _tried(bodies: Sequence[Body]) -> tuple[list[Body], bool]:
    """The bodies, of which so many of several jigs may move that all their ways can be tried."""
    ways, kept, exact = 1, [], True
    for body in bodies:
        if not body.is_simple and len(body.shifts) > 1:
            if ways * len(body.shifts) > MOST_WAYS:
                body, exact = replace(body, shifts=(NOTHING,)), False
            ways *= len(body.shifts)
        kept.append(body)
    return kept, exact


def _least(bodies: Sequence[Body]) -> dict[str, Mm]:
    """The shift of every front in the best way to move them."""
    several = [body for body in bodies if not body.is_simple]
    simple: dict[Length, list[Body]] = defaultdict(list)
    for body in bodies:
        if body.is_simple:
            simple[body.wants[0].length].append(body)
    lengths = list(dict.fromkeys(want.length for body in bodies for want in body.wants))
    remembered = _Remembered(lambda length, given: _stabbed(simple[length], given))
    best = min(
        (_way(several, moved, lengths, remembered) for moved in _ways(several)),
        key=lambda way: way.cost,
        default=None,
    )
    if best is None:
        return {}
    shifts = {
        label: shift
        for body, shift in zip(several, best.moved, strict=True)
        for label in body.fronts
    }
    for length, points in best.points.items():
        for body in simple[length]:
            want = body.wants[0]
            shift = want.thickness - nearest_held(_span(body), points)
            shifts |= dict.fromkeys(body.fronts, shift)
    return shifts


_Given: TypeAlias = tuple[Mm, ...]
_Stabbed: TypeAlias = tuple[Cost, tuple[Mm, ...]]


class _Remembered:
    """What comes of the jigs of one length beside those that are given, worked out once."""

    def __init__(self, work_out: Callable[[Length, _Given], _Stabbed]) -> None:
        self._work_out = work_out
        self._known: dict[tuple[Length, _Given], _Stabbed] = {}

    def __call__(self, length: Length, given: _Given) -> _Stabbed:
        if (length, given) not in self._known:
            self._known[length, given] = self._work_out(length, given)
        return self._known[length, given]


@dataclass(frozen=True, slots=True)
class _Way:
    """One way to move the bodies of several jigs, and the jigs that follow from it."""

    cost: tuple[int, Mm, int, tuple[Mm, ...]]
    moved: tuple[Mm, ...]
    points: Mapping[Length, tuple[Mm, ...]]


def _ways(several: Sequence[Body]) -> Iterator[tuple[Mm, ...]]:
    return product(*(body.shifts for body in several))


def _way(
    several: Sequence[Body],
    moved: tuple[Mm, ...],
    lengths: Sequence[Length],
    remembered: _Remembered,
) -> _Way:
    given: dict[Length, set[Mm]] = defaultdict(set)
    off = NOTHING
    for body, shift in zip(several, moved, strict=True):
        off += len(body.fronts) * abs(shift)
        for want in body.wants:
            given[want.length].add(want.thickness - shift)
    count, unwanted, points = 0, 0, {}
    for length in lengths:
        (more, by, others), points[length] = remembered(length, tuple(sorted(given[length])))
        count, off, unwanted = count + more, off + by, unwanted + others
    return _Way((count, off, unwanted, moved), moved, points)


def _stabbed(simple: Sequence[Body], given: _Given) -> _Stabbed:
    """The jigs of one length: those that are given, and as few beside them as may be."""
    spans = [_span(body) for body in simple]
    spans += [Span(thick, thick, thick) for thick in given]
    points = {body.wants[0].thickness - shift for body in simple for shift in body.shifts}
    return stabbing_points(spans, points)


def _span(body: Body) -> Span:
    want = body.wants[0]
    return Span(
        want.thickness,
        want.thickness - body.shifts[-1],
        want.thickness - body.shifts[0],
        want.count,
    )
