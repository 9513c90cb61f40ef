"""What a plan is asked to cut: saw, stock and parts, where nobody said otherwise and where so."""

from dataclasses import replace
from fractions import Fraction

import pytest

from fronts.cutting.model import Request, Side, StockSize, WantedPart
from fronts.rules.cutting_groups import cutting_groups
from fronts.rules.lengths import Mm
from fronts.rules.usual_stock import USUAL_SAW, Saw
from fronts.services.cutting_requests import (
    default_saw,
    default_stock,
    parts_to_cut,
    request_for,
    usual_request,
)
from tests.rules.parts_to_cut import part
from tests.rules.small_kitchens import inch

SHEET = StockSize("sheet", inch("96"), inch("48"))
STICK = StockSize("stick", inch("96"))
SHEETS = Request(Mm(1), Mm(2), (SHEET,), (), Mm(3))
STICKS = Request(Mm(4), Mm(5), (STICK,), (), Mm(6))
USUAL = USUAL_SAW["in"]
(SLABS,) = cutting_groups([
    part("slab", "MDF", "16", "6", front="B1.a.1"),
    replace(part("slab", "MDF", "16", "9", front="B2.a.2", count=2), stack="B2.a"),
])  # fmt: skip
(STILES,) = cutting_groups([part("stile", "cherry", "28", "2 1/4", count=2)])
PLANNED_BEFORE: list[tuple[str, dict[str, Request], Saw]] = [
    ("nothing", {}, USUAL),
    ("sheets", {"a": SHEETS}, Saw(Mm(1), Mm(2), USUAL.ends, Mm(3))),
    ("sticks", {"a": STICKS}, Saw(Mm(4), USUAL.trim, Mm(5), Mm(6))),
    ("both", {"a": STICKS, "b": SHEETS}, Saw(Mm(1), Mm(2), Mm(5), Mm(3))),
]


@pytest.mark.parametrize(
    ("kept", "saw"), [row[1:] for row in PLANNED_BEFORE], ids=[row[0] for row in PLANNED_BEFORE]
)
def test_the_saw_is_that_of_the_last_plan(kept: dict[str, Request], saw: Saw) -> None:
    """Trims are those of sheets and of sticks; kerf and safe width go by the sheets first."""
    assert default_saw("in", kept) == saw


def test_stock_is_bought_in_its_usual_size() -> None:
    """A sheet, of wood along its grain, or a stick."""
    (plywood,) = cutting_groups([part("slab", "birch plywood", "16", "6")])

    assert default_stock(SLABS, "in") == (SHEET,)
    assert default_stock(plywood, "in") == (replace(SHEET, grain="length"),)
    assert default_stock(STILES, "in") == (STICK,)


def test_parts_are_cut_from_the_usual_with_the_usual() -> None:
    """Sheets are trimmed all round, sticks at their ends."""
    sheets, sticks = (usual_request(group, "in") for group in (SLABS, STILES))

    assert (sheets.kerf, sheets.trim, sheets.safe_width) == (USUAL.kerf, USUAL.trim, USUAL.safe)
    assert (sticks.kerf, sticks.trim) == (USUAL.kerf, USUAL.ends)
    assert sheets.stock == (SHEET,)
    assert [each.block for each in sheets.parts] == [None, None]
    assert sticks.parts == (WantedPart("B1.a stile", inch("28"), count=2),)


PARTS: list[tuple[str, bool, bool, Side | None, bool]] = [
    ("no grain", False, False, None, False),
    ("a grain", True, False, "length", False),
    ("a grain, stacks upright", True, True, "length", True),
    ("stacks upright without a grain", False, True, None, True),
]


@pytest.mark.parametrize(
    ("grained", "upright", "grain", "turned"), [row[1:] for row in PARTS], ids=[r[0] for r in PARTS]
)
def test_stacks_that_stand_upright_are_cut_in_one_block(
    grained: bool, upright: bool, grain: Side | None, turned: bool
) -> None:
    """Only what belongs to a stack is turned; where no stock has a grain all may turn."""
    stacked, single = parts_to_cut(SLABS, sticks=False, grained=grained, upright=upright)

    assert single == WantedPart("B1.a.1", inch("16"), inch("6"), 1, grain)
    assert stacked == (
        WantedPart("B2.a.2", inch("9"), inch("16"), 2, grain, "B2.a", 2)
        if turned
        else WantedPart("B2.a.2", inch("16"), inch("9"), 2, grain)
    )


def test_one_size_with_a_grain_is_enough() -> None:
    """An offcut with a grain beside a sheet without: no part may turn."""
    offcut = StockSize("offcut", inch("30"), inch("20"), 1, "length", Fraction(0))

    asked = request_for(SLABS, USUAL, [SHEET, offcut], sticks=False, upright=False)

    assert {each.grain for each in asked.parts} == {"length"}
