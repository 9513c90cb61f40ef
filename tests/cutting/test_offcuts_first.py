"""Offcuts of the shop's own: used first, cut within their edges, never dearer than without."""

from dataclasses import replace
from fractions import Fraction
from random import Random

import pytest

from fronts.cutting.model import Layout, Plan, Request, StockSize, WantedPart
from fronts.cutting.plan import plan
from fronts.cutting.stock_used import stock_bought

SHEET = StockSize("0", Fraction(2440), Fraction(1220), grain="length")
STICK = StockSize("0", Fraction(2440))
SEEDS = range(7)


def asked(seed: int, *, sticks: bool = False) -> Request:
    """Parts and offcuts as they come in a kitchen, the same for one seed."""
    random = Random(seed)

    def side(least: int, most: int) -> Fraction:
        return Fraction(random.randint(least * 2, most * 2), 2)

    parts = tuple(
        WantedPart(
            f"P{number}", side(150, 1100), None if sticks else side(90, 600),
            random.randint(1, 4), None if sticks else random.choice(("length", None)),
        )
        for number in range(random.randint(3, 14))
    )  # fmt: skip
    offcuts = tuple(
        StockSize(
            f"R{number}", side(200, 1500), None if sticks else side(120, 800), count=1,
            grain=None if sticks else random.choice(("length", None)), own=True,
        )
        for number in range(random.randint(1, 6))
    )  # fmt: skip
    stock = (STICK if sticks else SHEET, *offcuts)
    return Request(Fraction(16, 5), Fraction(10), stock, parts)


def bought(found: Plan) -> int:
    return sum(used.count for used in stock_bought(found))


def holds(layout: Layout, trim: Fraction) -> bool:
    """Whether every part lies within what is left of its piece once that is trimmed."""
    stock = layout.stock
    edge = Fraction(0) if stock.own else trim
    return all(
        edge <= placed.x
        and placed.x + placed.length <= stock.length - edge
        and (
            stock.width is None
            or placed.width is None
            or (edge <= placed.y and placed.y + placed.width <= stock.width - edge)
        )
        for placed in layout.placed
    )


@pytest.mark.parametrize("sticks", [False, True])
@pytest.mark.parametrize("seed", SEEDS)
def test_never_more_is_bought_than_without_and_every_part_lies_in_its_piece(
    seed: int, sticks: bool
) -> None:
    request = asked(seed, sticks=sticks)
    found = plan(request, 0.4)
    without = plan(replace(request, stock=request.stock[:1]), 0.4)
    assert not found.unplaced
    assert bought(found) <= bought(without)
    assert found.lower_bound <= bought(found) == found.sheets_taken
    assert found.proved is False or found.lower_bound == bought(found)
    assert all(holds(layout, request.trim) for layout in found.layouts)
    cut = [layout.stock.label for layout in found.layouts if layout.stock.own]
    assert len(cut) == len(set(cut))
    assert all(layout.count == 1 for layout in found.layouts if layout.stock.own)
    placed = sum(len(layout.placed) * layout.count for layout in found.layouts)
    assert placed == sum(part.count for part in request.parts)


def test_an_offcut_that_holds_all_leaves_nothing_to_buy() -> None:
    offcut = StockSize("R4", Fraction(500), Fraction(300), count=1, grain="length", own=True)
    part = WantedPart("B1.a", Fraction(500), Fraction(300), grain="length")
    found = plan(Request(Fraction(3), Fraction(10), (SHEET, offcut), (part,)), 1)
    assert [(layout.stock.label, layout.cuts) for layout in found.layouts] == [("R4", ())]
    assert (bought(found), found.lower_bound, found.proved) == (0, 0, True)


def test_an_offcut_is_used_though_it_saves_no_sheet() -> None:
    offcut = StockSize("R4", Fraction(700), Fraction(400), count=1, grain="length", own=True)
    large = WantedPart("B1.a", Fraction(2000), Fraction(900), grain="length")
    small = WantedPart("B2.a", Fraction(600), Fraction(300), grain="length")
    found = plan(Request(Fraction(3), Fraction(10), (SHEET, offcut), (large, small)), 1)
    held = {one.stock.label: [placed.part for placed in one.placed] for one in found.layouts}
    assert held == {"0": ["B1.a"], "R4": ["B2.a"]}
    assert (found.proved, bought(found)) == (True, 1)


def test_with_prices_an_offcut_costs_nothing() -> None:
    sheet = replace(SHEET, price=Fraction(80))
    offcut = StockSize("R4", Fraction(700), Fraction(400), count=1, grain="length", own=True)
    parts = tuple(
        WantedPart(f"B{n}.a", Fraction(650), Fraction(380), grain="length") for n in (1, 2)
    )
    found = plan(Request(Fraction(3), Fraction(10), (sheet, offcut), parts), 1)
    assert found.cost == found.cost_bound == 80
    assert found.lower_bound == 1
    assert {layout.stock.label for layout in found.layouts} == {"0", "R4"}


def test_what_runs_on_from_sheet_to_sheet_comes_out_of_no_offcut() -> None:
    offcut = StockSize("R4", Fraction(900), Fraction(700), count=1, grain="length", own=True)
    parts = tuple(
        WantedPart(
            f"B{n}.a", Fraction(800), Fraction(600), grain="length", block=f"set, {n}", order=n,
            place=(Fraction(0), Fraction(0)), sequence="island",
        )
        for n in (1, 2)
    )  # fmt: skip
    found = plan(Request(Fraction(3), Fraction(10), (SHEET, offcut), parts), 1)
    assert [layout.stock.label for layout in found.layouts] == ["0"]
