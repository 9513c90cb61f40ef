"""Fronts whose grain runs on: sawn as they stand on the wall, in order, with what is proved."""

import random
from itertools import chain
from typing import Any

import pytest

from fronts.cutting.model import Plan, Request, StockSize
from fronts.cutting.plan import plan
from fronts.cutting.plan_json import plan_to_print, request_to_store
from fronts.rules.cutting_groups import CuttingGroup, cutting_groups
from fronts.rules.grain_order import grouped
from fronts.rules.grain_results import GrainPlace
from fronts.rules.lengths import Mm
from fronts.rules.rect import Rect
from fronts.rules.results import Part
from fronts.rules.usual_stock import Saw
from fronts.services.cutting_requests import request_for
from tests.cutting.replay import replay

SAW = Saw(kerf=Mm(16, 5), trim=Mm(10), ends=Mm(15), safe=Mm(75))
SHEET = StockSize("sheet", Mm(2440), Mm(1220), grain="length")
ACROSS = StockSize("sheet", Mm(1220), Mm(2440), grain="width")
GAP = Mm(3)
SEEDS = range(8)


def face(chance: random.Random, at: Rect, deep: int) -> list[Rect]:
    """A face divided into fronts by lines right across, as a person divides a run."""
    upright = chance.random() < 0.5
    size = at.width if upright else at.height
    parts = chance.randint(2, 4)
    if deep == 0 or size < 150 * parts:
        return [at]
    shares = [chance.randint(2, 5) for _ in range(parts)]
    fronts, place = [], Mm(0)
    for share in shares:
        long = (size - GAP * (parts - 1)) * share / sum(shares)
        piece = (
            Rect(at.x + place, at.y, long, at.height)
            if upright
            else Rect(at.x, at.y + place, at.width, long)
        )
        fronts += face(chance, piece, deep - 1)
        place += long + GAP
    return fronts


def parts_of_set(name: str, rects: list[Rect], *, upright: bool) -> list[Part]:
    """A slab for each rectangle, numbered as the order says."""
    order = grouped([(rect, rect) for rect in rects]).pieces
    return [
        Part(
            label=f"{name}.{number}", front=f"{name}.{number}", part="slab",
            length=rect.height if upright else rect.width,
            width=rect.width if upright else rect.height,
            thickness=Mm(19), material="oak plywood", count=1,
            grain=GrainPlace(name, number, len(order), upright, rect),
        )
        for number, rect in enumerate(order, 1)
    ]  # fmt: skip


def loose(chance: random.Random) -> list[Part]:
    """Parts of no set."""
    return [
        Part(
            label=f"P{number}", front=f"P{number}", part="slab", length=Mm(chance.randint(90, 900)),
            width=Mm(chance.randint(90, 600)), thickness=Mm(19), material="oak plywood", count=1,
        )
        for number in range(chance.randint(0, 8))
    ]  # fmt: skip


def asked(parts: list[Part], *stock: StockSize) -> Request:
    """What the parts are planned from."""
    (group,) = cutting_groups(parts)
    return request_for(group, SAW, stock, sticks=False, upright=False)


def planned(request: Request) -> Plan:
    """The plan; counted work ends the search, on slow days too."""
    return plan(request, 0.3, lambda: 0.0)


def sawn(request: Request, found: Plan) -> dict[str, Any]:
    """The printed plan, once every cut of it was made again by code that knows no planner."""
    printed = plan_to_print(found)
    stored = request_to_store(request)
    replay({**stored, "unit": "mm"}, printed)
    return printed


def runs_on(parts: list[Part], placed: dict[str, Rect], *, upright: bool) -> None:
    """Neighbours on the wall are neighbours on the sheet, the same way round, a kerf apart."""
    walls = {part.label: part.grain.rect for part in parts if part.grain}
    for one, at in placed.items():
        for other, beside in placed.items():
            left = walls[one].right + GAP == walls[other].x
            above = walls[one].y == walls[other].top + GAP
            same_rows = walls[one].y < walls[other].top and walls[other].y < walls[one].top
            same_columns = walls[one].x < walls[other].right and walls[other].x < walls[one].right
            if left and same_rows:
                low = beside.y - at.top if upright else beside.x - at.right
                assert low >= SAW.kerf, (one, other)
            if above and same_columns:
                low = beside.x - at.right if upright else at.y - beside.top
                assert low >= SAW.kerf, (one, other)


@pytest.mark.parametrize("seed", SEEDS)
def test_a_set_is_sawn_as_it_stands_on_the_wall(seed: int) -> None:
    """Out of one sheet, right way round, by cuts right across; the bound is none too high."""
    chance = random.Random(seed)
    upright = chance.random() < 0.5
    room = Rect(Mm(0), Mm(0), *((Mm(1100), Mm(2300)) if upright else (Mm(2300), Mm(1100))))
    run = parts_of_set("Run", face(chance, room, 3), upright=upright)
    request = asked([*run, *loose(chance)], SHEET)
    found = planned(request)
    printed = sawn(request, found)
    assert printed["unplaced"] == []
    assert found.lower_bound <= found.sheets_used
    blocks = {part.block for part in request.parts if part.sequence}
    assert len(blocks) == 1
    (sheet,) = [layout for layout in found.layouts if any(p.sequence for p in layout.placed)]
    placed = {
        p.part: Rect(p.x, p.y, p.length, p.width or Mm(0)) for p in sheet.placed if p.sequence
    }
    assert set(placed) == {part.label for part in run}
    runs_on(run, placed, upright=upright)


@pytest.mark.parametrize("seed", SEEDS)
def test_a_set_larger_than_a_sheet_goes_over_neighbouring_sheets_in_order(seed: int) -> None:
    """As much as a sheet holds, then on to the next, and the plan's order of sheets is theirs."""
    chance = random.Random(seed)
    rects, x = [], Mm(0)
    for _ in range(chance.randint(4, 7)):
        wide = Mm(chance.randint(450, 800))
        rects += face(chance, Rect(x, Mm(0), wide, Mm(chance.randint(1700, 2200))), 2)
        x += wide + GAP
    run = parts_of_set("Run", rects, upright=True)
    request = asked([*run, *loose(chance)], SHEET)
    found = planned(request)
    sawn(request, found)
    assert found.lower_bound <= found.sheets_used
    numbers = [sorted(p.order for p in layout.placed if p.sequence) for layout in found.layouts]
    held = [each for each in numbers if each]
    assert numbers[: len(held)] == held
    assert list(chain.from_iterable(held)) == list(range(1, len(run) + 1))


def test_a_block_turns_as_one_on_a_sheet_whose_grain_lies_across() -> None:
    """Turned, not mirrored: what is on the left on the wall stays left of its neighbour."""
    rects = [
        Rect(Mm(0), Mm(0), Mm(300), Mm(700)),
        Rect(Mm(303), Mm(0), Mm(500), Mm(700)),
        Rect(Mm(0), Mm(703), Mm(803), Mm(150)),
    ]
    run = parts_of_set("Run", rects, upright=True)
    request = asked(run, ACROSS)
    found = planned(request)
    sawn(request, found)
    (layout,) = found.layouts
    at = {p.part: p for p in layout.placed}
    drawer, left, right = (at[f"Run.{number}"] for number in (1, 2, 3))
    assert all(p.turned for p in layout.placed)
    assert drawer.y < left.y == right.y
    assert left.x > right.x


def test_without_grain_nothing_is_kept_together() -> None:
    """A sheet without grain has no figure that could run on: its parts may turn."""
    rects = [Rect(Mm(0), Mm(0), Mm(300), Mm(700)), Rect(Mm(303), Mm(0), Mm(500), Mm(700))]
    run = parts_of_set("Run", rects, upright=True)
    request = asked(run, StockSize("sheet", Mm(2440), Mm(1220)))
    assert [(part.block, part.grain) for part in request.parts] == [(None, None)] * 2


def test_what_is_in_no_set_is_asked_as_ever() -> None:
    """A group without sets is the request that it was."""
    chance = random.Random(3)
    parts = loose(chance)
    (group,) = cutting_groups(parts)
    assert isinstance(group, CuttingGroup)
    request = request_for(group, SAW, [SHEET], sticks=False, upright=False)
    assert [part.label for part in request.parts] == [part.label for part in group.parts]
    assert {part.block for part in request.parts} == {None}
