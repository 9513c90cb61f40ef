"""Plans as JSON: what was stored is read back the same, by whichever version stored it."""

import json
from fractions import Fraction
from typing import Any

from fronts.cutting.model import Cut, Layout, Offcut, Placement, Plan, Request, StockSize
from fronts.cutting.model import WantedPart as Part
from fronts.cutting.plan import plan
from fronts.cutting.plan_json import (
    plan_to_print,
    plan_to_store,
    request_to_store,
    stored_plan,
    stored_request,
)

STOCK = {"label": "sheet", "length": "2440", "width": "1220", "count": None, "grain": "length",
         "price": "48.5"}  # fmt: skip
OLD_REQUEST: dict[str, Any] = {
    "key": "plywood 18", "name": "Plywood", "seconds": 2,
    "kerf": "3.2", "trim": "0", "safe_width": "76.2", "stock": [STOCK],
    "parts": [{"label": "P1", "length": "2000", "width": "1220", "count": 1, "grain": None,
               "block": None, "order": 0}],
}  # fmt: skip
OLD_PLAN: dict[str, Any] = {
    "layouts": [{
        "stock": STOCK, "count": 1,
        "placed": [{"part": "P1", "x": "0", "y": "0", "length": "2000", "width": "1220",
                    "turned": False, "grain": None, "block": None}],
        "cuts": [{"number": 1, "kind": "cross", "along": "width", "at": "2000", "start": "0",
                  "end": "1220", "piece": "sheet", "fence": "2000", "keeps": "1", "falls": "2",
                  "hold": None}],
        "offcuts": [{"x": "2003.2", "y": "0", "length": "436.8", "width": "1220",
                     "usable": True}],
    }],
    "unplaced": [["P2", 3]], "lower_bound": 1, "proved": True, "cost": "48.5",
    "cost_bound": "48.5", "cannot_all_fit": False, "seconds": 0.1,
}  # fmt: skip


def test_a_plan_stored_before_is_read() -> None:
    """Exact lengths, prices, and what is not placed, from JSON as databases hold it."""
    stock = StockSize("sheet", Fraction(2440), Fraction(1220), None, "length", Fraction(97, 2))
    part = Part("P1", Fraction(2000), Fraction(1220))
    request = Request(Fraction(16, 5), Fraction(0), (stock,), (part,), Fraction("76.2"))
    layout = Layout(
        stock, 1,
        (Placement("P1", Fraction(0), Fraction(0), Fraction(2000), Fraction(1220), turned=False),),
        (Cut(1, "cross", "width", Fraction(2000), Fraction(0), Fraction(1220), "sheet",
             Fraction(2000), "1", "2", None),),
        (Offcut(Fraction("2003.2"), Fraction(0), Fraction("436.8"), Fraction(1220), usable=True),),
    )  # fmt: skip
    price = Fraction(97, 2)
    whole = Plan(request, (layout,), (("P2", 3),), 1, True, price, price, False, 0.1)

    assert request == stored_request(OLD_REQUEST)
    assert whole == stored_plan(OLD_PLAN, stored_request(OLD_REQUEST))


def test_what_is_stored_is_read_back_the_same() -> None:
    """A sheet plan and a stick plan, through JSON text and back."""
    for width in (Fraction(1220), None):
        stock = (StockSize("S", Fraction(2440), width, 1), StockSize("T", Fraction(1000), width))
        parts = (Part("A", Fraction(2273, 3), width and Fraction(300), 4),)
        made = plan(Request(Fraction(1, 3), Fraction(10), stock, parts), 1, lambda: 0.0)
        stored = json.loads(json.dumps([plan_to_store(made), request_to_store(made.request)]))

        assert made == stored_plan(stored[0], stored_request(stored[1]))


def test_a_stick_says_no_second_side() -> None:
    """Places and offcuts of sticks have no `y`, width or turn; those of sheets have all three."""
    flat, stick = (
        plan_to_print(
            plan(
                Request(
                    Fraction(0), Fraction(0), (StockSize("S", Fraction(900), width),),
                    (Part("A", Fraction(700), width and Fraction(300)),),
                ), 1,
            )
        )["sheets"][0]
        for width in (Fraction(400), None)
    )  # fmt: skip

    assert {"part", "x", "y", "length", "width", "turned"} == set(flat["placed"][0])
    assert {"part", "x", "length"} == set(stick["placed"][0])
    assert {"x", "length", "usable"} == set(stick["offcuts"][0])
