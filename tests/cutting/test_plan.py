"""Plans that can be sawn: replayed from their own JSON by code that knows no planner."""

import itertools
import json
from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from fronts.cutting.model import HOLD_CROSS, HOLD_RIP
from fronts.cutting.plan import plan
from fronts.cutting.plan_json import plan_to_print
from fronts.jobfile.parts_file import read_request
from tests.cutting.replay import replay

PUBLIC = json.loads((Path(__file__).parent / "data" / "public.json").read_text("utf-8"))


def planned(request: dict[str, Any], seconds: float = 2) -> dict[str, Any]:
    """The plan's JSON for a parts file; counted work ends the search, on slow days too."""
    return plan_to_print(plan(read_request(json.dumps(request).encode()), seconds, lambda: 0.0))


def kitchen(**changes: Any) -> dict[str, Any]:
    """A small kitchen of our own: doors with grain, shelves without, two offcuts on hand."""
    sizes = [("Door", "720", "396", 8, "length"), ("Panel", "2150", "580", 2, "length"),
             ("Shelf", "560", "280", 9, None), ("Kick", "96", "880", 3, "width")]  # fmt: skip
    request: dict[str, Any] = {
        "unit": "mm", "kerf": "3.2", "trim": "10",
        "stock": [
            {"label": "sheet", "length": "2440", "width": "1220", "count": None, "grain": "length"},
            {"label": "offcut", "length": "900", "width": "700", "count": 2, "grain": "width"},
        ],
        "parts": [{"label": a, "length": b, "width": c, "count": n, "grain": g}
                  for a, b, c, n, g in sizes],
    }  # fmt: skip
    return request | changes


@st.composite
def kitchens(draw: st.DrawFn) -> dict[str, Any]:
    """Sheets or sticks with kerf, trim, grain, turning, several stock sizes, some limited."""
    flat = draw(st.booleans())
    grains = st.sampled_from(["length", "width", None])
    stock, parts = [], []
    for i in range(draw(st.integers(1, 3))):
        row: dict[str, Any] = {"label": f"S{i}", "length": str(draw(st.integers(900, 2500)))}
        if flat:
            row |= {"width": str(draw(st.integers(900, 1300))), "grain": draw(grains)}
        stock.append(row | {"count": draw(st.sampled_from([None, 1, 3]))})
    for i in range(draw(st.integers(1, 12))):
        row = {"label": f"P{i}", "length": f"{draw(st.integers(40, 850))}.5"}
        if flat:
            row |= {"width": str(draw(st.integers(30, 850))), "grain": draw(grains)}
        parts.append(row | {"count": draw(st.integers(1, 6))})
    kerf, trim = (
        draw(st.sampled_from(["0", "3.2", "1/8 in"])),
        draw(st.sampled_from(["0", "2", "10"])),
    )
    return {"unit": "mm", "kerf": kerf, "trim": trim, "stock": stock, "parts": parts}


@settings(max_examples=60, deadline=None)
@given(kitchens())
def test_every_plan_can_be_sawn(request: dict[str, Any]) -> None:
    """Every part once, inside the trim, a kerf apart, its grain kept, by cuts right across."""
    replay(request, planned(request, 0.3))


def test_the_kitchen_is_sawn_and_proved() -> None:
    """A real mix of parts is planned onto the least stock, and says so."""
    found = planned(kitchen())
    replay(kitchen(), found)
    assert found["proved"]
    assert found["sheets_used"] == found["lower_bound"]


def test_same_file_same_plan() -> None:
    """Twice the same file gives twice the same plan, but for the seconds."""
    first, second = planned(kitchen()), planned(kitchen())
    assert first | {"seconds": 0} == second | {"seconds": 0}


def test_a_narrower_saw_never_needs_more() -> None:
    """With a thinner kerf the proven least does not grow."""
    wide, thin = planned(kitchen(kerf="6")), planned(kitchen(kerf="1"))
    assert thin["lower_bound"] <= wide["sheets_used"]


def test_stock_that_runs_out_leaves_parts_unplaced() -> None:
    """What limited stock can't hold is listed, and the plan is not called the least."""
    stock = [{"label": "board", "length": "1000", "width": "500", "count": 1}]
    parts = [{"label": "P", "length": "480", "width": "480", "count": 5}]
    request = kitchen(stock=stock, parts=parts, trim="0")
    found = planned(request)
    replay(request, found)
    assert found["unplaced"] == [{"part": "P", "count": 3}]
    assert found["cannot_all_fit"]
    assert not found["proved"]


def test_prices_decide_where_given() -> None:
    """The dear sheet is left in the rack where two cheap ones do; an offcut on hand is free."""
    stock = [
        {"label": "dear", "length": "2000", "width": "1000", "price": "90"},
        {"label": "cheap", "length": "1000", "width": "1000", "price": "40.50"},
        {"label": "scrap", "length": "600", "width": "600", "count": 1},
    ]
    parts = [{"label": "P", "length": "990", "width": "990", "count": 2},
             {"label": "Q", "length": "500", "width": "500", "count": 1}]  # fmt: skip
    found = planned(kitchen(stock=stock, parts=parts, trim="0"))
    assert sorted(sheet["stock"] for sheet in found["sheets"]) == ["cheap", "cheap", "scrap"]
    assert found["cost"] == "81" == found["cost_bound"]
    assert found["proved"]


def test_a_drawer_stack_stays_one_block_in_grain_order() -> None:
    """Fronts of one block lie in one column along the grain, in order, one kerf apart."""
    stack = [{"label": f"D{i}", "length": str(140 + 60 * i), "width": "600", "grain": "length",
              "block": "B2", "order": i} for i in range(3)]  # fmt: skip
    request = kitchen(parts=[*stack, *kitchen()["parts"]])
    found = planned(request)
    replay(request, found)
    (sheet,) = [s for s in found["sheets"] if any(p.get("block") for p in s["placed"])]
    placed = sorted((p for p in sheet["placed"] if p.get("block")), key=lambda p: p["part"])
    turned = placed[0]["turned"]
    along, size = ("y", "width") if turned else ("x", "length")
    for low, high in itertools.pairwise(placed):
        assert Fraction(high[along]) == Fraction(low[along]) + Fraction(low[size]) + Fraction("3.2")


@pytest.mark.parametrize(("grain", "sides"), [("length", ("length", "width")),
                                              ("width", ("width", "length"))])  # fmt: skip
def test_a_block_of_unequal_parts_is_cut_up_to_each_ones_size(
    grain: str, sides: tuple[str, str]
) -> None:
    """The narrower front of a stack is cut to its own width after the block is cut up."""
    along, across = sides
    stack = [{"label": f"D{i}", along: str(200 + i), across: str(600 - 50 * i), "grain": grain,
              "block": "B2", "order": i} for i in range(3)]  # fmt: skip
    for file in (kitchen(parts=stack), kitchen(parts=stack, stock=kitchen()["stock"][1:])):
        found = planned(file)
        replay(file, found)
        assert found["sheets_used"] == 1
        assert {cut["kind"] for cut in found["sheets"][0]["cuts"]} >= {"block", "rip", "cross"}


def test_narrow_strips_say_how_to_hold_them() -> None:
    """A rip under 3 in against the fence, and a short piece, are marked; wide ones are not."""
    parts = [{"label": "Strip", "length": "2000", "width": "40"},
             {"label": "Block", "length": "50", "width": "60"},
             {"label": "Wide", "length": "2000", "width": "500"}]  # fmt: skip
    found = planned(kitchen(parts=parts))
    holds = {cut["hold"] for sheet in found["sheets"] for cut in sheet["cuts"]}
    assert holds == {HOLD_RIP, HOLD_CROSS, None}
    for cut in (cut for sheet in found["sheets"] for cut in sheet["cuts"]):
        assert (cut["hold"] is None) == (
            min(Fraction(cut["fence"]), Fraction(cut["to"]) - Fraction(cut["from"]))
            >= Fraction("76.2")
        )


def test_one_part_leaves_one_big_offcut() -> None:
    """A single small part leaves the rest of the sheet as one large piece and one small one."""
    parts = [{"label": "P", "length": "600", "width": "300"}]
    found = planned(kitchen(parts=parts, stock=kitchen()["stock"][:1]))
    (sheet,) = found["sheets"]
    areas = [Fraction(o["length"]) * Fraction(o["width"]) for o in sheet["offcuts"]]
    assert max(areas) > Fraction(8, 10) * 2420 * 1200


def test_ten_thousand_equal_parts_share_layouts() -> None:
    """Equal sheets are one layout with a count; every sheet is still listed."""
    request = kitchen(parts=[{"label": "P", "length": "300", "width": "200", "count": 10_000,
                              "grain": "length"}])  # fmt: skip
    found = planned(request)
    assert len(found["layouts"]) <= 3
    assert sum(layout["count"] for layout in found["layouts"]) == len(found["sheets"])
    assert sum(len(sheet["placed"]) for sheet in found["sheets"]) == 10_000


def test_a_thousand_different_parts_are_planned() -> None:
    """Every one of a thousand different parts is placed once."""
    parts = [{"label": f"P{i}", "length": str(101 + i * 7 % 1900), "width": str(101 + i * 13 % 780)}
             for i in range(1_000)]  # fmt: skip
    found = planned(kitchen(parts=parts))
    placed = [p["part"] for sheet in found["sheets"] for p in sheet["placed"]]
    assert sorted(placed) == sorted(part["label"] for part in parts)
    assert not found["unplaced"]


@pytest.mark.parametrize("instance", PUBLIC["sticks"], ids=lambda one: one["source"])
def test_public_sticks(instance: dict[str, Any]) -> None:
    """The bound is at most the published optimum of an instance, and the plan reaches it."""
    request = {
        "unit": "mm", "kerf": "0", "trim": "0",
        "stock": [{"label": "S", "length": f"{instance['capacity']}/100"}],
        "parts": [{"label": f"P{i}", "length": f"{size}/100", "count": n}
                  for i, (size, n) in enumerate(instance["items"])],
    }  # fmt: skip
    found = planned(request, 10)
    assert found["lower_bound"] <= instance["best"] <= found["sheets_used"]
    assert found["sheets_used"] == instance["best"]


@pytest.mark.parametrize("instance", PUBLIC["sheets"], ids=lambda one: one["source"])
def test_public_sheets(instance: dict[str, Any]) -> None:
    """The bound is at most the published value of an instance (three stages, no turning)."""
    request = {
        "unit": "mm", "kerf": "0", "trim": "0",
        "stock": [{"label": "S", "length": str(instance["bin"][0]),
                   "width": str(instance["bin"][1]),
                   "grain": "length"}],
        "parts": [{"label": f"P{i}", "length": str(a), "width": str(b), "count": n,
                   "grain": "length"} for i, (a, b, n) in enumerate(instance["items"])],
    }  # fmt: skip
    found = planned(request, 4)
    replay(request, found)
    assert found["lower_bound"] <= instance["best"]
