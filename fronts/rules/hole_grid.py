"""Places for a mounting hole, tried exactly and quickly: in solid wood, and clear of all else.

Every length of a site becomes whole parts of a millimetre, so that comparing many places
takes no fractions; nothing is rounded.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from heapq import heapify, heappop, heapreplace
from itertools import chain
from math import lcm

from fronts.rules.box_facts import Box
from fronts.rules.hole_spans import HoleSpan, HoleSpans
from fronts.rules.kinds import FRONT_BUILDS, SIDES
from fronts.rules.lengths import Mm
from fronts.rules.practice import Practice
from fronts.rules.results import Front
from fronts.rules.slides import slide_outlines


@dataclass(frozen=True, slots=True)
class Round:
    """A round thing to stay clear of, in the box front's places."""

    x: Mm
    y: Mm
    diameter: Mm


@dataclass(frozen=True, slots=True)
class Site:
    """The box front with the front behind it: what a hole must be in, and clear of."""

    box: Box
    front: Front
    side_offset: Mm
    jig_thickness: Mm
    rounds: tuple[Round, ...]
    spans: HoleSpans
    practice: Practice


class HoleGrid:
    """A site in whole parts of a millimetre, so that many places are tried exactly and quickly."""

    def __init__(self, site: Site, step: Mm) -> None:
        box, front, practice = site.box, site.front, site.practice
        spans = (site.spans.across, site.spans.low, site.spans.high or site.spans.low)
        radius = practice.hole_diameter / 2
        rounds = [(thing.x, thing.y, thing.diameter / 2) for thing in site.rounds]
        pins = [(pins.x, pins.y, pins.pitch, pins.diameter / 2) for pins in box.shelf_pins]
        bars = [(bar.left, bar.bottom, bar.right, bar.top) for bar in slide_outlines(box)]
        lengths = [
            step, box.width, box.height, front.width, front.height,
            *(front.frame[side] for side in SIDES), site.side_offset, site.jig_thickness,
            radius, practice.hole_to_edge, practice.hole_clear, *chain(*rounds, *pins, *bars),
            *chain.from_iterable((span.least, span.wished, span.most) for span in spans),
        ]  # fmt: skip
        self.scale = lcm(*(length.denominator for length in lengths))
        whole = self.whole
        self.step = whole(step)
        self.box = (whole(box.width), whole(box.height))
        self.front = (whole(front.width), whole(front.height))
        self.offset = (whole(site.side_offset), whole(site.jig_thickness))
        framed = FRONT_BUILDS[front.build].framed
        frame = front.frame
        self.frame = (
            ((whole(frame.left), whole(frame.right)), (whole(frame.bottom), whole(frame.top)))
            if framed
            else None
        )
        self.edge = whole(practice.hole_to_edge)
        self.need = whole(radius) + whole(practice.hole_clear)
        across, low, high = (self._whole_span(span) for span in spans)
        self.spans = ((across, across), (low, high))
        self.rounds = [(whole(x), whole(y), whole(radius)) for x, y, radius in rounds]
        self.pins = [
            (whole(x), whole(y), whole(pitch), row.count, whole(radius))
            for (x, y, pitch, radius), row in zip(pins, box.shelf_pins, strict=True)
        ]
        self.bars = [tuple(whole(length) for length in bar) for bar in bars]

    def whole(self, length: Mm) -> int:
        return length.numerator * (self.scale // length.denominator)

    def _whole_span(self, span: HoleSpan) -> tuple[int, int, int]:
        return self.whole(span.least), self.whole(span.wished), self.whole(span.most)

    def place_in_corner(self, *, right: bool, top: bool) -> tuple[int, int] | None:
        """How far in from the box's side and end the hole of one corner goes."""
        (least, across, _), (lowest, along, _) = self.spans[0][right], self.spans[1][top]
        if across < least or along < lowest:
            return None
        for inward, up in self._moves(right=right, top=top):
            x, y = across + inward * self.step, along + up * self.step
            if self._clear(self.box[0] - x if right else x, self.box[1] - y if top else y):
                return x, y
        return None

    def _moves(self, *, right: bool, top: bool) -> Iterator[tuple[int, int]]:
        """Moves across and along that end in solid wood, the shortest first."""
        here = self._in_wood(0, 0, far=right), self._in_wood(1, 0, far=top)
        if None not in here and any(here):
            yield 0, 0  # Most holes stay; the others are worth looking at all the lines.
        yield from _by_distance(self._lines(0, far=right), self._lines(1, far=top))

    def _lines(self, axis: int, *, far: bool) -> list[tuple[int, bool]]:
        """Moves along one direction that stay in wood, nearest first; in a stile (rail) or not."""
        least, start, limit = self.spans[axis][far]
        moves = range(-((start - least) // self.step), (limit - start) // self.step + 1)
        lines = []
        for move in sorted(moves, key=lambda move: (abs(move), move)):
            in_member = self._in_wood(axis, move, far=far)
            if in_member is not None:
                lines.append((move, in_member))
        return lines

    def _in_wood(self, axis: int, move: int, *, far: bool) -> bool | None:
        """Whether a hole moved so lies in a stile (rail); None: not in the front's wood at all."""
        inset = self.spans[axis][far][1] + move * self.step
        behind = (self.box[axis] - inset if far else inset) + self.offset[axis]
        if not self.edge <= behind <= self.front[axis] - self.edge:
            return None
        return self._in_member(axis, behind)

    def _in_member(self, axis: int, place: int) -> bool:
        if self.frame is None:
            return True
        low, high = self.frame[axis]
        return place <= low - self.edge or place >= self.front[axis] - high + self.edge

    def _clear(self, x: int, y: int) -> bool:
        """Whether a hole there leaves enough wood to everything else."""
        for at, up, radius in self.rounds:
            if (x - at) ** 2 + (y - up) ** 2 < (self.need + radius) ** 2:
                return False
        for at, up, pitch, count, radius in self.pins:
            nearest = min(max((2 * (y - up) + pitch) // (2 * pitch), 0), count - 1)
            if (x - at) ** 2 + (y - up - nearest * pitch) ** 2 < (self.need + radius) ** 2:
                return False
        for left, bottom, right, top in self.bars:
            dx, dy = max(left - x, x - right, 0), max(bottom - y, y - top, 0)
            if dx * dx + dy * dy < self.need**2:
                return False
        return True


def _by_distance(
    columns: Sequence[tuple[int, bool]], rows: Sequence[tuple[int, bool]]
) -> Iterator[tuple[int, int]]:
    """Moves across and along that end in a stile or a rail, the shortest first."""
    in_rail = [row for row in rows if row[1]]
    heap = []
    for across, in_stile in columns:
        lane = rows if in_stile else in_rail
        if lane:
            heap.append((across**2 + lane[0][0] ** 2, abs(lane[0][0]), across, 0, in_stile))
    heapify(heap)
    while heap:
        _, _, across, place, in_stile = heap[0]
        lane = rows if in_stile else in_rail
        yield across, lane[place][0]
        if place + 1 == len(lane):
            heappop(heap)
        else:
            along = lane[place + 1][0]
            heapreplace(heap, (across**2 + along**2, abs(along), across, place + 1, in_stile))
