"""Places for a mounting hole, tried exactly and quickly: in solid wood, and clear of all else.

Every length of a site becomes whole parts of a millimetre, so that comparing many places
takes no fractions; nothing is rounded.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from heapq import heapify, heappop, heapreplace
from math import lcm

from fronts.rules.kinds import FRONT_BUILDS
from fronts.rules.kitchen import Box
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
    practice: Practice


class HoleGrid:
    """A site in whole parts of a millimetre, so that many places are tried exactly and quickly."""

    def __init__(self, site: Site, step: Mm) -> None:
        box, front, practice = site.box, site.front, site.practice
        bars = slide_outlines(box)
        lengths = [
            step, box.width / 2, box.height / 2, front.width, front.height, front.stile, front.rail,
            site.side_offset, site.jig_thickness, practice.hole_inset, practice.hole_to_edge,
            practice.hole_diameter / 2, practice.hole_clear / 2,
        ]  # fmt: skip
        for obstacle in site.rounds:
            lengths += [obstacle.x, obstacle.y, obstacle.diameter / 2]
        for pins in box.shelf_pins:
            lengths += [pins.x, pins.y, pins.pitch, pins.diameter / 2]
        for bar in bars:
            lengths += [bar.left, bar.bottom, bar.right, bar.top]
        self.scale = lcm(*(length.denominator for length in lengths))
        whole = self.whole
        self.step = whole(step)
        self.box = (whole(box.width), whole(box.height))
        self.front = (whole(front.width), whole(front.height))
        self.offset = (whole(site.side_offset), whole(site.jig_thickness))
        framed = FRONT_BUILDS[front.build].framed
        self.frame = (whole(front.stile), whole(front.rail)) if framed else None
        self.edge = whole(practice.hole_to_edge)
        self.need = whole(practice.hole_diameter / 2) + whole(practice.hole_clear)
        apart = whole(practice.hole_diameter / 2) + whole(practice.hole_clear / 2)
        self.limits = (whole(box.width / 2) - apart, whole(box.height / 2) - apart)
        self.wished = tuple(min(whole(practice.hole_inset), limit) for limit in self.limits)
        self.rounds = [
            (whole(obstacle.x), whole(obstacle.y), whole(obstacle.diameter / 2))
            for obstacle in site.rounds
        ]
        self.pins = [
            (whole(pins.x), whole(pins.y), whole(pins.pitch), pins.count, whole(pins.diameter / 2))
            for pins in box.shelf_pins
        ]
        self.bars = [(whole(b.left), whole(b.bottom), whole(b.right), whole(b.top)) for b in bars]

    def whole(self, length: Mm) -> int:
        return length.numerator * (self.scale // length.denominator)

    def place_in_corner(self, *, right: bool, top: bool) -> tuple[int, int] | None:
        """How far in from the box's side and end the hole of one corner goes."""
        across, along = self.wished
        if across < self.edge or along < self.edge:
            return None
        if self._good(across, along, right=right, top=top):
            return across, along
        columns = self._lines(0, far=right)
        rows = self._lines(1, far=top)
        for inward, up in _by_distance(columns, rows):
            x, y = across + inward * self.step, along + up * self.step
            if self._clear(self.box[0] - x if right else x, self.box[1] - y if top else y):
                return x, y
        return None

    def _good(self, across: int, along: int, *, right: bool, top: bool) -> bool:
        """Whether the place wished for is in solid wood, and clear."""
        x = self.box[0] - across if right else across
        y = self.box[1] - along if top else along
        behind = (x + self.offset[0], y + self.offset[1])
        inside = all(
            self.edge <= place <= size - self.edge
            for place, size in zip(behind, self.front, strict=True)
        )
        in_wood = inside and any(self._in_member(axis, behind[axis]) for axis in (0, 1))
        return in_wood and self._clear(x, y)

    def _lines(self, axis: int, *, far: bool) -> list[tuple[int, bool]]:
        """Moves along one direction that stay in wood, nearest first; in a stile (rail) or not."""
        start, limit, size = self.wished[axis], self.limits[axis], self.box[axis]
        moves = range(-((start - self.edge) // self.step), (limit - start) // self.step + 1)
        lines = []
        for move in sorted(moves, key=lambda move: (abs(move), move)):
            place = start + move * self.step
            behind = (size - place if far else place) + self.offset[axis]
            if self.edge <= behind <= self.front[axis] - self.edge:
                lines.append((move, self._in_member(axis, behind)))
        return lines

    def _in_member(self, axis: int, place: int) -> bool:
        if self.frame is None:
            return True
        member = self.frame[axis] - self.edge
        return place <= member or place >= self.front[axis] - member

    def _clear(self, x: int, y: int) -> bool:
        """Whether a hole there leaves enough wood to everything else."""
        for at, up, radius in self.rounds:
            if (x - at) ** 2 + (y - up) ** 2 < (self.need + radius) ** 2:
                return False
        for at, up, pitch, count, radius in self.pins:
            reach = self.need + radius
            if abs(x - at) < reach:
                nearest = min(max((2 * (y - up) + pitch) // (2 * pitch), 0), count - 1)
                if (x - at) ** 2 + (y - up - nearest * pitch) ** 2 < reach**2:
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
