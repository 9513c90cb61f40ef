"""What is subtracted is all there: gap + front + overlay closes exactly, and no front is
larger than its rule.
"""

from collections import defaultdict
from itertools import pairwise
from typing import Literal

from hypothesis import given

from fronts.rules.kinds import SIDES, Side
from fronts.rules.kitchen import CHOOSE, Cabinet, FrontFacts, Kitchen, Opening
from fronts.rules.lengths import Mm
from fronts.rules.opening_sizes import widths_of
from fronts.rules.results import Front, Schedule
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Settled, Sides
from fronts.rules.standards import settled
from tests.rules.laws import KITCHEN_LAW
from tests.rules.transforms import as_drawn
from tests.strategies import kitchens
from tests.strategies_of_hardware import equipped_kitchens


def _openings(of: Kitchen) -> list[tuple[Cabinet, Opening, Settled]]:
    return [
        (
            cabinet,
            each,
            settled(each.standard, cabinet.standard, of.standard_of(cabinet.kind), of.standard),
        )
        for cabinet in of.cabinets
        for each in cabinet.openings
    ]


def _fronts_in(found: Schedule, cabinet: Cabinet, opening: Opening) -> list[Front]:
    """The fronts of an opening, from the left and from the bottom."""
    own = [e for e in found.fronts if (e.cabinet, e.opening) == (cabinet.label, opening.label)]
    return own if opening.closing.across else own[::-1]


@KITCHEN_LAW
@given(kitchens() | equipped_kitchens())
def test_every_opening_closes(of: Kitchen) -> None:
    """Overlay + opening + overlay = fronts + the gaps between them, across and upwards.

    But for what a front was moved by.
    """
    of = as_drawn(of)
    found = schedule(of)
    for cabinet, opening, standard in _openings(of):
        fronts = _fronts_in(found, cabinet, opening)
        if not fronts:
            continue
        singles, between = [[front] for front in fronts], standard.gap_between
        shared, across = [fronts], opening.closing.across
        for row in shared if across else singles:
            wide = sum((e.width for e in row), between * (len(row) - 1))
            moved = _moved(row[-1], opening, "x") - _moved(row[0], opening, "x")
            assert _lap(row[0], "left") + opening.width + _lap(row[-1], "right") == wide + moved
        for column in singles if across else shared:
            tall = sum((e.height for e in column), between * (len(column) - 1))
            moved = _moved(column[-1], opening, "y") - _moved(column[0], opening, "y")
            laps = _lap(column[0], "bottom") + _lap(column[-1], "top")
            assert laps + opening.height == tall + moved
        # … and on the wall: cabinet's edge + member - overlay is where the front begins and ends.
        first, last = fronts[0], fronts[-1]
        end = cabinet.width - opening.x - opening.width
        assert cabinet.left + opening.x - _lap(first, "left") == first.x
        assert cabinet.left + cabinet.width - end + _lap(last, "right") == last.right
        assert cabinet.y + opening.y - _lap(first, "bottom") == first.y
        for one, other in pairwise(fronts):
            gap = other.x - one.right if across else other.y - one.top
            axis: Literal["x", "y"] = "x" if across else "y"
            assert gap == between + _moved(other, opening, axis) - _moved(one, opening, axis)


def _moved(front: Front, opening: Opening, axis: Literal["x", "y"]) -> Mm:
    """How far somebody moved the front off its place."""
    number = front.label.removeprefix(f"{front.cabinet}.{opening.label}").lstrip(".")
    decided = opening.fronts[int(number or 1) - 1]
    return decided.shift_x if axis == "x" else decided.shift_y


def _lap(front: Front, side: Side) -> Mm:
    lap = front.edges[side].overlay
    assert lap is not None
    return lap


@KITCHEN_LAW
@given(kitchens() | equipped_kitchens())
def test_every_row_and_column_of_a_wall_closes(of: Kitchen) -> None:
    """Front + gap + the front that faces it, from end to end, is the distance on the wall."""
    found = schedule(of)
    by_label = {each.label: each for each in found.fronts}
    walls: dict[tuple[str, str], list[Front]] = defaultdict(list)
    for each in found.fronts:
        walls[each.wall, each.plane].append(each)
        for side in SIDES:
            edge = each.edges[side]
            assert (edge.gap is None) == (edge.faces is None)
            if edge.gap is not None and edge.faces is not None:
                _check_distance(each, by_label[edge.faces], side, edge.gap)

    for fronts in walls.values():
        for each in fronts:
            row = [f for f in fronts if f.y < each.y + each.height / 2 < f.top]
            _check_row(sorted(row, key=lambda f: (f.x, f.right)))


def _check_distance(one: Front, other: Front, side: Side, gap: Mm) -> None:
    away = {
        "left": one.x - other.right,
        "right": other.x - one.right,
        "top": other.y - one.top,
        "bottom": one.y - other.top,
    }
    level = (one.x - other.right, other.x - one.right)
    upright = (one.y - other.top, other.y - one.top)
    if gap >= 0:
        assert away[side] == gap
        assert max(upright if side in ("left", "right") else level) < 0
    else:
        wide = min(one.right, other.right) - max(one.x, other.x)
        tall = min(one.top, other.top) - max(one.y, other.y)
        assert -gap == min(wide, tall)


def _check_row(row: list[Front]) -> None:
    """Along one line the widths and gaps add up, where each next front is faced."""
    if not row or any(after.x < before.right for before, after in pairwise(row)):
        return
    gaps = [after.x - before.right for before, after in pairwise(row)]
    assert sum((f.width for f in row), Mm(0)) + sum(gaps) == row[-1].right - row[0].x
    for (before, after), gap in zip(pairwise(row), gaps, strict=True):
        nearest, back = before.edges.right.gap, after.edges.left.gap
        assert nearest is not None
        assert back is not None
        assert nearest <= gap
        assert back <= gap


@KITCHEN_LAW
@given(kitchens() | equipped_kitchens())
def test_no_front_is_larger_than_its_rule(of: Kitchen) -> None:
    """A new front's edges never pass what the rule's own words allow, nor miss it by a step."""
    of = as_drawn(of)
    found = schedule(of)
    for cabinet, opening, standard in _openings(of):
        allowed = _allowed(cabinet, opening, standard)
        fronts = [e for e in _fronts_in(found, cabinet, opening) if e.is_new]
        if not fronts or allowed is None or _states_a_size(opening) or _moved_apart(opening):
            continue
        shift_x, shift_y = opening.fronts[0].shift_x, opening.fronts[0].shift_y
        first, last = fronts[0], fronts[-1]
        short = {
            "left": allowed.left - _lap(first, "left") - shift_x,
            "right": allowed.right - _lap(last, "right") + shift_x,
            "top": allowed.top - _lap(last, "top") + shift_y,
            "bottom": allowed.bottom - _lap(first, "bottom") - shift_y,
        }
        leaves = 2 if opening.closed_by == "pair" else 1
        assert short["left"] == short["right"]
        assert 0 <= short["left"] + short["right"] < leaves * of.job.step
        assert short["top"] == short["bottom"]
        if any(front.own_height is None for front in opening.fronts):
            assert 0 <= short["top"] + short["bottom"] < of.job.step
            assert all((e.height / of.job.step).denominator == 1 for e in _free(fronts, opening))
        assert all((e.width / of.job.step).denominator == 1 for e in fronts)


def _free(fronts: list[Front], opening: Opening) -> list[Front]:
    """Those whose height the rule gives; fronts run from the bottom, heights from the top."""
    own = [front.own_height for front in opening.fronts]
    return [e for e, h in zip(reversed(fronts), own, strict=False) if h is None]


def _states_a_size(opening: Opening) -> bool:
    return any(front.width or front.height for front in opening.fronts)


def _moved_apart(opening: Opening) -> bool:
    return len({(front.shift_x, front.shift_y) for front in opening.fronts}) > 1


def _allowed(cabinet: Cabinet, opening: Opening, standard: Settled) -> Sides[Mm] | None:
    """How far past its opening a front may go on each side, from the rule's own words."""
    if standard.mount == "inset":
        gap = standard.inset_gap
        return Sides(-gap.left, -gap.right, -gap.top, -gap.bottom)
    if standard.overlay is not None:
        return standard.overlay
    if standard.reveal is None:
        return None
    found: dict[Side, Mm] = {}
    for side in SIDES:
        between = [s for o in cabinet.openings if (s := _stands(opening, o, side)) is not None]
        if between:
            found[side] = (min(between) - standard.reveal.between) / 2
        else:
            found[side] = _to_end(cabinet, opening, side) - standard.reveal.end[side]
    return Sides(**found)


def _stands(one: Opening, other: Opening, side: Side) -> Mm | None:
    """Width of the member between two openings on this side; None: they don't share one."""
    beside = one.y < other.y + other.height and other.y < one.y + one.height
    along = one.x < other.x + other.width and other.x < one.x + one.width
    faces = beside if side in ("left", "right") else along
    width = {
        "left": one.x - other.x - other.width,
        "right": other.x - one.x - one.width,
        "top": other.y - one.y - one.height,
        "bottom": one.y - other.y - other.height,
    }[side]
    return width if other is not one and faces and width >= 0 else None


def _to_end(cabinet: Cabinet, opening: Opening, side: Side) -> Mm:
    return {
        "left": opening.x,
        "right": cabinet.width - opening.x - opening.width,
        "top": cabinet.height - opening.y - opening.height,
        "bottom": opening.y,
    }[side]


@KITCHEN_LAW
@given(kitchens() | equipped_kitchens())
def test_measured_openings_are_closed_by_their_rule(of: Kitchen) -> None:
    """A new overlay front covers the greatest width, a new inset one goes into the least."""
    found = schedule(of)
    for cabinet, opening, standard in _openings(of):
        fronts = _fronts_in(found, cabinet, opening)
        if not fronts or any(_exists(front) for front in opening.fronts):
            continue
        widths = widths_of(opening)
        span = max(widths) if standard.mount == "overlay" else min(widths)
        for row in [fronts] if opening.closing.across else [[front] for front in fronts]:
            laps = _lap(row[0], "left") + _lap(row[-1], "right")
            assert row[-1].right - row[0].x == span + laps


def _exists(front: FrontFacts) -> bool:
    """Whether the front is there already, so that the rules don't size it."""
    return front.width is not None or front.door_on_hand not in (None, CHOOSE)
