"""Dimension lines after ISO 129-1: thin lines, obliques at the ends, figures that never meet.

A figure stands beside its own piece where it fits. Others are led to: along a level chain in
a second row and a third, along an upright one in the same column; moved apart as little as it
takes.
Figures side by side stand an em apart, so that two never read as one number.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal, TypeAlias

from fronts.drawings.drawing import Anchor, Drawing, text_area
from fronts.drawings.geometry import Area
from fronts.drawings.lettering import line_height, text_width
from fronts.drawings.svg import Px

Axis: TypeAlias = Literal["x", "y"]
Towards: TypeAlias = Literal[-1, 1]

_TICK: Px = 3_50
_PAST: Px = 3_00
_CLEAR: Px = 5_00
_AIR: Px = 2_00
_LEADER: Px = 8_00
_MOST_ROWS = 8
_CROWDED = 2
"""How many ems a figure may be moved before every other one goes into a row of its own."""


@dataclass(frozen=True, slots=True)
class Piece:
    """One piece of a chain, from `start` to `end` along it."""

    start: Px
    end: Px
    text: str
    bold: bool = False

    @property
    def middle(self) -> Px:
        return (self.start + self.end) // 2


@dataclass(frozen=True, slots=True)
class Chain:
    """Where a chain of dimensions runs: along which axis, at what place, figures towards where.

    `base` is where the extension lines begin.
    """

    axis: Axis
    at: Px
    towards: Towards
    base: Px
    size: Px = 11_00

    def point(self, along: Px, across: Px) -> tuple[Px, Px]:
        return (along, across) if self.axis == "x" else (across, along)

    def along(self, piece: Piece) -> Px:
        """What the figure takes along the chain, with an em between it and the next."""
        if self.axis == "y":
            return line_height(self.size)
        return text_width(piece.text, self.size, bold=piece.bold) + self.size

    def across(self, piece: Piece) -> Px:
        if self.axis == "x":
            return line_height(self.size)
        return text_width(piece.text, self.size, bold=piece.bold)


def dimension_chain(drawing: Drawing, chain: Chain, pieces: Sequence[Piece]) -> Px:
    """Draw the chain; gives the outermost place that it takes, for the next one to begin after."""
    drawn = [each for each in pieces if each.end > each.start]
    if not drawn:
        return chain.at
    _lines(drawing, chain, drawn)
    if chain.axis == "y":
        return chain.at + chain.towards * _column(drawing, chain, drawn)
    inside = [each for each in drawn if each.end - each.start >= chain.along(each)]
    outside = [each for each in drawn if each.end - each.start < chain.along(each)]
    first = chain.at + chain.towards * _CLEAR
    for piece in inside:
        _figure(drawing, chain, piece, piece.middle, first)
    depth = max((chain.across(each) for each in inside), default=0) + _CLEAR
    if outside:
        depth = _second_row(drawing, chain, outside, depth)
    return chain.at + chain.towards * depth


def spread(wants: Sequence[tuple[Px, Px]]) -> list[Px]:
    """Middles for things wanted at (middle, extent), in order, moved apart as little as it takes.

    Pools neighbours that would meet, so that each pool stays centred on what it wanted.
    """
    pools: list[tuple[list[int], Px, Px]] = []
    for index, (middle, extent) in enumerate(wants):
        pool = ([index], middle - extent // 2, extent)
        while pools and pools[-1][1] + pools[-1][2] > pool[1]:
            before = pools.pop()
            count, total = len(before[0]) + len(pool[0]), before[2] + pool[2]
            centre = (
                (before[1] + before[2] // 2) * len(before[0])
                + (pool[1] + pool[2] // 2) * len(pool[0])
            ) // count
            pool = (before[0] + pool[0], centre - total // 2, total)
        pools.append(pool)
    middles = [0] * len(wants)
    for indexes, start, _ in pools:
        for index in indexes:
            middles[index] = start + wants[index][1] // 2
            start += wants[index][1]
    return middles


def small_gap(
    drawing: Drawing,
    *,
    axis: Axis,
    start: Px,
    end: Px,
    tries: Sequence[Px],
    text: str,
    size: Px,
    rooms: tuple[Area | None, Area | None],
) -> bool:
    """Dimension a narrow gap by two arrows that point into it, its figure behind one of them.

    Tried at each of the places `tries` across the gap, the figure first in the room after the
    gap, then in the one before; False where there is no free place.
    """
    for at in tries:
        for room, towards in ((rooms[1], 1), (rooms[0], -1)):
            if room is None:
                continue
            edge = end if towards == 1 else start
            area, x, y, anchor = _behind_arrow(axis, edge, towards, at, text, size)
            arrows = _arrow_area(axis, start, end, at)
            apart = Area(area.left - size, area.top - _AIR, area.right + size, area.bottom + _AIR)
            uncrossed = drawing.uncrossed(area) and drawing.free(apart)
            if room.holds(area) and uncrossed and drawing.free(arrows):
                _arrow(drawing, axis, start, at, -1)
                _arrow(drawing, axis, end, at, 1)
                drawing.text(x, y, text, size, anchor, kind="gap")
                drawing.taken.append(arrows)
                return True
    return False


def _behind_arrow(
    axis: Axis, edge: Px, towards: int, at: Px, text: str, size: Px
) -> tuple[Area, Px, Px, Anchor]:
    if axis == "x":
        x, y = edge + towards * (_ARROW + 2_00), at
        anchor: Anchor = "start" if towards == 1 else "end"
    else:
        x, y = at, edge + towards * (_ARROW + line_height(size) // 2)
        anchor = "middle"
    return text_area(x, y, text, size, anchor), x, y, anchor


_ARROW: Px = 9_00
_HEAD: Px = 4_50
_HALF_HEAD: Px = 1_60


def _arrow_area(axis: Axis, start: Px, end: Px, at: Px) -> Area:
    if axis == "x":
        return Area(start - _ARROW, at - _HALF_HEAD, end + _ARROW, at + _HALF_HEAD)
    return Area(at - _HALF_HEAD, start - _ARROW, at + _HALF_HEAD, end + _ARROW)


def _arrow(drawing: Drawing, axis: Axis, tip: Px, at: Px, away: int) -> None:
    tail, neck = tip + away * _ARROW, tip + away * _HEAD
    if axis == "x":
        drawing.line("dimension", tip, at, tail, at)
        drawing.solid([(tip, at), (neck, at - _HALF_HEAD), (neck, at + _HALF_HEAD)])
    else:
        drawing.line("dimension", at, tip, at, tail)
        drawing.solid([(at, tip), (at - _HALF_HEAD, neck), (at + _HALF_HEAD, neck)])


def _lines(drawing: Drawing, chain: Chain, pieces: Sequence[Piece]) -> None:
    stops = sorted({each.start for each in pieces} | {each.end for each in pieces})
    begin, end = chain.base + chain.towards * 2_00, chain.at + chain.towards * _PAST
    along = (*chain.point(stops[0], chain.at), *chain.point(stops[-1], chain.at))
    across = [(*chain.point(stop, begin), *chain.point(stop, end)) for stop in stops]
    drawing.lines("dimension", [along, *across])
    places = [chain.point(stop, chain.at) for stop in stops]
    drawing.lines("cabinet", [(x - _TICK, y + _TICK, x + _TICK, y - _TICK) for x, y in places])


def _second_row(drawing: Drawing, chain: Chain, pieces: Sequence[Piece], depth: Px) -> Px:
    """Figures that are led to; every other one goes a row farther where they are crowded."""
    order = sorted(pieces, key=lambda each: each.middle)
    middles = spread([(each.middle, chain.along(each)) for each in order])
    moved = (abs(at - each.middle) for each, at in zip(order, middles, strict=True))
    far = [False] * len(order)
    if max(moved) > _CROWDED * chain.size:
        far = [index % 2 == 1 for index in range(len(order))]
        middles = spread([(each.middle, _AIR * 2 if off else chain.along(each))
                          for each, off in zip(order, far, strict=True)])  # fmt: skip
    high = line_height(chain.size)
    beyond = _apart(chain, order, middles, far)
    row = depth + _LEADER
    for piece, near, at, off in zip(order, middles, beyond, far, strict=True):
        reach = row + high + _LEADER if off else row
        ends = [(piece.middle, 0), (piece.middle, depth + 1_00), (near, row - 1_00)]
        if off:
            ends += [(near, row + high + 1_00), (at, reach - 1_00)]
        path = [chain.point(along, chain.at + chain.towards * out) for along, out in ends]
        drawing.path("dimension", path)
        _figure(drawing, chain, piece, at, chain.at + chain.towards * reach)
    return row + high + (high + _LEADER if any(far) else 0)


def _apart(
    chain: Chain, order: Sequence[Piece], middles: Sequence[Px], far: Sequence[bool]
) -> list[Px]:
    """Where the figures stand once those of the farther row are spread among themselves."""
    wants = [(middle, chain.along(piece))
             for piece, middle, off in zip(order, middles, far, strict=True) if off]  # fmt: skip
    places = iter(spread(wants))
    return [next(places) if off else middle for middle, off in zip(middles, far, strict=True)]


def _column(drawing: Drawing, chain: Chain, pieces: Sequence[Piece]) -> Px:
    """Figures one under another beside an upright chain; those pushed off their piece are led."""
    order = sorted(pieces, key=lambda each: each.middle)
    middles = spread([(each.middle, chain.along(each)) for each in order])
    led = [
        not each.start + chain.size // 2 <= middle <= each.end - chain.size // 2
        for each, middle in zip(order, middles, strict=True)
    ]
    depth = _CLEAR + (_LEADER if any(led) else 0)
    depth = _clear_of_others(drawing, chain, list(zip(order, middles, strict=True)), depth)
    edge = chain.at + chain.towards * depth
    for piece, middle, off in zip(order, middles, led, strict=True):
        if off:
            end = chain.point(middle, edge - chain.towards * 1_50)
            elbow = chain.point(piece.middle, chain.at + chain.towards * _CLEAR)
            drawing.path("dimension", [chain.point(piece.middle, chain.at), elbow, end])
        _figure(drawing, chain, piece, middle, edge)
    return depth + max(chain.across(each) for each in pieces)


def _clear_of_others(
    drawing: Drawing, chain: Chain, placed: Sequence[tuple[Piece, Px]], depth: Px
) -> Px:
    """The depth, from `depth` outwards, at which no figure stands on what is there already."""
    for _ in range(_MOST_ROWS):
        edge = chain.at + chain.towards * depth
        places = (_place(chain, middle, edge) for _, middle in placed)
        areas = (text_area(*place[:2], piece.text, chain.size, place[2], bold=piece.bold)
                 for place, (piece, _) in zip(places, placed, strict=True))  # fmt: skip
        if all(drawing.free(each) for each in areas):
            break
        depth += line_height(chain.size) // 2
    return depth


def _figure(drawing: Drawing, chain: Chain, piece: Piece, middle: Px, edge: Px) -> None:
    x, y, anchor = _place(chain, middle, edge)
    drawing.text(x, y, piece.text, chain.size, anchor, bold=piece.bold, kind="dimension")


def _place(chain: Chain, middle: Px, edge: Px) -> tuple[Px, Px, Anchor]:
    """Where a figure stands whose near edge is at `edge`."""
    if chain.axis == "x":
        return middle, edge + chain.towards * line_height(chain.size) // 2, "middle"
    return edge, middle, "end" if chain.towards == -1 else "start"
