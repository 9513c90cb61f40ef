"""What a front meets along its wall: too close, past the run's end, lines that miss.

Fronts are compared only in one plane of one wall; faces that lie farther apart in depth than
`near_plane` pass each other. A run goes on where the next cabinet stands within `filler`
(common practice, no source).
"""

from bisect import bisect_left, bisect_right
from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from itertools import islice

from fronts.rules.cabinet_edges import to_cabinet_edges
from fronts.rules.findings import FindingWriter
from fronts.rules.kinds import SIDES, Side
from fronts.rules.kitchen import Cabinet
from fronts.rules.laying import Laid
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.neighbours import Facing, Placed
from fronts.rules.practice import Practice
from fronts.rules.rect import Rect
from fronts.rules.results import Finding
from fronts.rules.runs import Placed as Standing
from fronts.rules.runs import is_solid, run_of
from fronts.rules.thing_kinds import THING_KINDS

MOST_TOLD = 5
"""Overlaps told of one cabinet; more is a kitchen typed over itself."""


def placed(laid: Laid) -> Placed:
    """The front's rectangle, in the plane in which it meets others."""
    return Placed((laid.cabinet.wall, laid.plane), laid.x, laid.y, laid.right, laid.top)


def meeting_findings(
    fronts: Sequence[Laid],
    faced: Sequence[Mapping[Side, Facing]],
    writer: FindingWriter,
    practice: Practice,
) -> Iterator[Finding]:
    """Findings about fronts that face each other: each pair once, the earlier first."""
    told: set[tuple[int, int]] = set()
    for index, sides in enumerate(faced):
        for side, facing in sides.items():
            for other in facing.fronts:
                pair = (min(index, other), max(index, other))
                if pair in told:
                    continue
                told.add(pair)
                one, two = fronts[pair[0]], fronts[pair[1]]
                yield from _too_close(one, two, facing.gap, writer, practice)
                if side in ("left", "right"):
                    yield from _lines(one, two, writer, practice)


def run_end_findings(
    fronts: Sequence[Laid], standing: Sequence[Standing], writer: FindingWriter, practice: Practice
) -> Iterator[Finding]:
    """Findings about fronts that go past their cabinet's edge where nothing of the run follows."""
    near = _Near([one for one in standing if _goes_on(one)], practice.filler)
    for front in fronts:
        cabinet, outline = front.cabinet, Rect(front.x, front.y, front.width, front.height)
        within = to_cabinet_edges(outline, cabinet)
        for side in SIDES:
            past = -within[side]
            if past > 0 and not _run_goes_on(cabinet, side, near.to(cabinet), practice):
                yield writer.past_cabinet_edge(front.label, cabinet.label, side, past)
        if front.y < 0:
            yield writer.below_floor(front.label, -front.y)


def overlap_findings(standing: Sequence[Standing], writer: FindingWriter) -> Iterator[Finding]:
    """Cabinets and things that can't both stand where they were measured."""
    solid = [one for one in standing if is_solid(one.what)]
    order = sorted(solid, key=lambda one: (one.what.wall, one.x))
    for place, one in enumerate(order):
        met = 0
        for other in islice(order, place + 1, None):
            if other.what.wall != one.what.wall or other.x >= one.right or met == MOST_TOLD:
                break
            by = _overlap(one, other)
            if by > 0:
                met += 1
                yield writer.cabinets_overlap(one.what.label, other.what.label, by)


def _overlap(one: Standing, other: Standing) -> Mm:
    """By how much the smaller way; where a height is not known, across, within a run alone."""
    wide = min(one.right, other.right) - other.x
    if one.has_heights and other.has_heights:
        bottom = max(one.y or NOTHING, other.y or NOTHING)
        return min(wide, min(one.top, other.top) - bottom)
    return wide if one.run == other.run else NOTHING


def _too_close(
    one: Laid, other: Laid, gap: Mm, writer: FindingWriter, practice: Practice
) -> Iterator[Finding]:
    least = max(one.standard.least_gap, other.standard.least_gap)
    in_plane = abs(one.cabinet.depth - other.cabinet.depth) <= practice.near_plane
    if gap < least and in_plane and not _openings_overlap(one, other):
        yield writer.fronts_too_close(one.label, other.label, gap, least)


def _openings_overlap(one: Laid, other: Laid) -> bool:
    """Whether the fault lies with two openings of one cabinet, of which it is told already."""
    a, b = one.rect, other.rect
    if one.cabinet is not other.cabinet or one.opening is other.opening:
        return False
    return a.x < b.right and b.x < a.right and a.y < b.top and b.y < a.top


def _lines(one: Laid, other: Laid, writer: FindingWriter, practice: Practice) -> Iterator[Finding]:
    misses = [("tops", abs(one.top - other.top)), ("bottoms", abs(one.y - other.y))]
    seen = [(line, by) for line, by in misses if 0 < by < practice.lines_seen]
    if seen:
        yield writer.lines_miss(one.label, other.label, seen)


def _goes_on(one: Standing) -> bool:
    """Whether the run goes on with it, so that a front may lap over to it."""
    return isinstance(one.what, Cabinet) or THING_KINDS[one.what.kind].goes_on


class _Near:
    """What stands near a cabinet on its wall, found without a look at all that stands there."""

    def __init__(self, standing: Sequence[Standing], reach: Mm) -> None:
        self._reach = reach + max((one.what.width for one in standing), default=NOTHING)
        self._by_wall: dict[str, list[Standing]] = defaultdict(list)
        for one in sorted(standing, key=_left):
            self._by_wall[one.what.wall].append(one)

    def to(self, cabinet: Cabinet) -> Sequence[Standing]:
        """Everything that begins or ends within reach of the cabinet."""
        on_wall = self._by_wall[cabinet.wall]
        first = bisect_left(on_wall, cabinet.left - self._reach, key=_left)
        last = bisect_right(on_wall, cabinet.left + cabinet.width + self._reach, key=_left)
        return on_wall[first:last]


def _left(one: Standing) -> Mm:
    return one.x


def _run_goes_on(
    cabinet: Cabinet, side: Side, standing: Sequence[Standing], practice: Practice
) -> bool:
    """Whether something stands at that side, near enough for the run to go on."""
    level = side in ("left", "right")
    left, top = cabinet.left, cabinet.y + cabinet.height
    right = left + cabinet.width
    for other in standing:
        if other.what is cabinet or other.what.wall != cabinet.wall:
            continue
        if level:
            beside = other.beside(cabinet.y, top, run_of(cabinet))
        else:
            beside = other.has_heights and other.x < right and left < other.right
        away = {
            "left": left - other.right,
            "right": other.x - right,
            "top": (other.y or NOTHING) - top,
            "bottom": cabinet.y - other.top,
        }[side]
        if beside and -practice.filler <= away <= practice.filler:
            return True
    return False
