"""What a front meets along its wall: too close, past the run's end, lines that miss.

Fronts are compared only in one plane of one wall; faces that lie farther apart in depth than
`near_plane` pass each other. A run goes on where the next cabinet stands within `filler`
(common practice, no source).
"""

from collections.abc import Iterator, Mapping, Sequence
from itertools import islice

from fronts.rules.cabinet_edges import to_cabinet_edges
from fronts.rules.findings import FindingWriter
from fronts.rules.kinds import SIDES, Side
from fronts.rules.kitchen import Cabinet
from fronts.rules.laying import Laid
from fronts.rules.lengths import Mm
from fronts.rules.neighbours import Facing, Placed
from fronts.rules.practice import Practice
from fronts.rules.rect import Rect
from fronts.rules.results import Finding

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
    fronts: Sequence[Laid], cabinets: Sequence[Cabinet], writer: FindingWriter, practice: Practice
) -> Iterator[Finding]:
    """Findings about fronts that go past their cabinet's edge where nothing of the run follows."""
    for front in fronts:
        cabinet, outline = front.cabinet, Rect(front.x, front.y, front.width, front.height)
        within = to_cabinet_edges(outline, cabinet)
        for side in SIDES:
            past = -within[side]
            if past > 0 and not _run_goes_on(cabinet, side, cabinets, practice):
                yield writer.past_cabinet_edge(front.label, cabinet.label, side, past)
        if front.y < 0:
            yield writer.below_floor(front.label, -front.y)


def overlapping_cabinets(cabinets: Sequence[Cabinet], writer: FindingWriter) -> Iterator[Finding]:
    """Cabinets that can't both stand where they were measured."""
    order = sorted(range(len(cabinets)), key=lambda i: (cabinets[i].wall, cabinets[i].x))
    for place, index in enumerate(order):
        one, met = cabinets[index], 0
        for later in islice(order, place + 1, None):
            other = cabinets[later]
            if other.wall != one.wall or other.x >= one.x + one.width or met == MOST_TOLD:
                break
            tall = min(one.y + one.height, other.y + other.height) - max(one.y, other.y)
            if tall > 0:
                met += 1
                wide = min(one.x + one.width, other.x + other.width) - other.x
                yield writer.cabinets_overlap(one.label, other.label, min(wide, tall))


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


def _run_goes_on(
    cabinet: Cabinet, side: Side, cabinets: Sequence[Cabinet], practice: Practice
) -> bool:
    """Whether another cabinet stands at that side, near enough for the run to go on."""
    level = side in ("left", "right")
    for other in cabinets:
        if other is cabinet or other.wall != cabinet.wall:
            continue
        if level:
            beside = other.y < cabinet.y + cabinet.height and cabinet.y < other.y + other.height
        else:
            beside = other.x < cabinet.x + cabinet.width and cabinet.x < other.x + other.width
        away = {
            "left": cabinet.x - other.x - other.width,
            "right": other.x - cabinet.x - cabinet.width,
            "top": other.y - cabinet.y - cabinet.height,
            "bottom": cabinet.y - other.y - other.height,
        }[side]
        if beside and -practice.filler <= away <= practice.filler:
            return True
    return False
