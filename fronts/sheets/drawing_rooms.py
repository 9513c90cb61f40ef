"""How large the cabinet and the backs of its fronts come out side by side, reckoned beforehand.

Scales are hundredths of a pixel to the millimetre.
"""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction

from fronts.drawings.svg import Px
from fronts.rules.kitchen import Cabinet
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.results import Front
from fronts.sheets.fitting_drawings import CROWDED
from fronts.sheets.page_height import HEADING, WIDTH

BETWEEN: Px = 12_00
SPACE: Px = 6_00
"""Between the cabinet and what stands beside it; between two drawings side by side."""

LEAST_CABINET = 13
LEAST_BACK, GOOD_BACK = 13, 24
"""Scales that can be read: of the cabinet, and of a front's back; and the one to aim at."""

_HIGH_ENOUGH: Px = 200_00
"""A tall cabinet that is drawn so high can be read at a smaller scale."""

_AROUND_CABINET: tuple[Px, Px] = (112_00, 84_00)
_AROUND_SMALL_CABINET: tuple[Px, Px] = (100_00, 46_00)
_AROUND_BACK: tuple[Px, Px] = (60_00, 42_00)
"""What the dimensions take of a drawing's room, across and up and down."""

_MOST_DIVIDED = 5
_WIDTHS: range = range(200_00, 600_00, 20_00)
"""Widths tried for the cabinet where something stands beside it."""


@dataclass(frozen=True, slots=True)
class _Row:
    """Backs side by side, how wide they are together, and how high the highest is."""

    fronts: tuple[Front, ...]
    wide: Mm
    highest: Mm


@dataclass(frozen=True, slots=True)
class _Way:
    """Rows one over another, and how high they are together."""

    rows: tuple[_Row, ...]
    high: Mm


@dataclass(frozen=True, slots=True)
class Backs:
    """Backs in rows to one scale, with the room that each has; none fits at a scale below 0."""

    scale: Fraction
    rows: tuple[tuple[tuple[Front, tuple[Px, Px]], ...], ...]


@dataclass(frozen=True, slots=True)
class Arranged:
    """The cabinet's room, and the backs at its right, or under it, in a column so wide."""

    cabinet: tuple[Px, Px]
    scale: Fraction
    least: Fraction
    backs: Backs
    column: Px

    @property
    def readable(self) -> bool:
        return self.scale >= self.least and self.backs.scale >= LEAST_BACK

    def merit(self) -> tuple[bool, bool, Fraction, Fraction]:
        """What can be read comes first, then good backs, the larger cabinet, the larger backs."""
        return self.readable, self.backs.scale >= GOOD_BACK, self.scale, self.backs.scale


def backs_in_rows(fronts: Sequence[Front], width: Px, height: Px) -> Backs:
    """The rows in which the backs of these fronts come out largest, in their order."""
    return _largest_backs(_divided(fronts), width, height)


def _largest_backs(ways: Sequence[_Way], width: Px, height: Px) -> Backs:
    scales = ((_scale_in_rows(way, width, height), way) for way in ways)
    scale, way = max(scales, key=lambda one: one[0])
    return _in_rows(way.rows, scale)


def _divided(fronts: Sequence[Front]) -> list[_Way]:
    """Every way to break them into rows, or for many of them, into rows of as many each."""
    return [_way([_row(row) for row in rows]) for rows in _ways_to_divide(fronts)]


def _way(rows: Sequence[_Row]) -> _Way:
    return _Way(tuple(rows), sum((row.highest for row in rows), NOTHING))


def _ways_to_divide(fronts: Sequence[Front]) -> Iterator[list[Sequence[Front]]]:
    if len(fronts) > _MOST_DIVIDED:
        for count in range(1, len(fronts) + 1):
            yield [fronts[start : start + count] for start in range(0, len(fronts), count)]
        return
    for first in range(1, len(fronts)):
        for rest in _ways_to_divide(fronts[first:]):
            yield [fronts[:first], *rest]
    yield [fronts]


def _row(fronts: Sequence[Front]) -> _Row:
    wide = sum((each.width for each in fronts), NOTHING)
    return _Row(tuple(fronts), wide, max(each.height for each in fronts))


def _scale_in_rows(way: _Way, width: Px, height: Px) -> Fraction:
    across, along = _AROUND_BACK
    return min(
        (height - len(way.rows) * (HEADING + along)) / way.high,
        *((width - len(row.fronts) * (SPACE + across)) / row.wide for row in way.rows),
    )


def _in_rows(rows: Sequence[_Row], scale: Fraction) -> Backs:
    return Backs(scale, tuple(tuple(_rooms(row, scale)) for row in rows))


def _rooms(row: _Row, scale: Fraction) -> Iterator[tuple[Front, tuple[Px, Px]]]:
    across, along = _AROUND_BACK
    for front in row.fronts:
        yield front, (round(front.width * scale) + across, round(row.highest * scale) + along)


def side_by_side(
    cabinet: Cabinet,
    fronts: Sequence[Front],
    height: Px,
    under: Callable[[Px], Px],
    width: Px = WIDTH,
) -> Arranged:
    """The cabinet as large as it goes while the backs at its right can be read.

    `under` says how high what stands below the backs is, by the width that they have.
    """
    rooms = ((wide, width - wide - BETWEEN) for wide in _WIDTHS if wide < width - 2 * BETWEEN)
    backs = _divided(fronts)
    ways = (_beside(cabinet, backs, height, room, under) for room in rooms)
    return max(ways, key=Arranged.merit)


def one_over_another(cabinet: Cabinet, fronts: Sequence[Front], height: Px) -> Arranged:
    """The cabinet across the page, and one row of good backs under it."""
    row = _row(fronts)
    high = round(row.highest * GOOD_BACK) + _AROUND_BACK[1] + HEADING
    room = WIDTH, height - high - HEADING
    backs = _in_rows([row], _scale_in_rows(_way([row]), WIDTH, high))
    return _arranged(cabinet, room, backs, WIDTH)


def _arranged(cabinet: Cabinet, room: tuple[Px, Px], backs: Backs, column: Px) -> Arranged:
    least = min(Fraction(LEAST_CABINET), _HIGH_ENOUGH / cabinet.height)
    return Arranged(room, _cabinet_scale(cabinet, room), least, backs, column)


def _beside(
    cabinet: Cabinet,
    ways: Sequence[_Way],
    height: Px,
    widths: tuple[Px, Px],
    under: Callable[[Px], Px],
) -> Arranged:
    room, right = (widths[0], height - HEADING), widths[1]
    backs = _largest_backs(ways, right, height - under(right))
    return _arranged(cabinet, room, backs, right)


def _cabinet_scale(cabinet: Cabinet, room: tuple[Px, Px]) -> Fraction:
    """As the elevation is drawn: where it comes out small, without the widths above it."""
    bare, full, small = (
        min((room[0] - across) / cabinet.width, (room[1] - along) / cabinet.height)
        for across, along in ((0, 0), _AROUND_CABINET, _AROUND_SMALL_CABINET)
    )
    return small if full < bare * CROWDED else full
