"""The bound never exceeds the true least, and what is called proved is the least."""

import json
from typing import Any

from hypothesis import given, settings
from hypothesis import strategies as st

from fronts.cutting.plan import plan
from fronts.cutting.plan_json import plan_to_print
from fronts.jobfile.parts_file import read_request
from tests.cutting.exhaustive import least, least_sheets
from tests.cutting.replay import replay

SIDE = st.integers(1, 8)
GRAIN = st.sampled_from(["length", "width", None])


@st.composite
def small_sheets(draw: st.DrawFn) -> dict[str, Any]:
    """A parts file of few small parts, all of which fit some stock in their grain."""
    boards = draw(st.lists(st.tuples(SIDE, SIDE, st.integers(1, 5)), min_size=1, max_size=2))
    stock = [
        {"label": f"S{i}", "length": str(a), "width": str(b), "count": n, "grain": "length"}
        for i, (a, b, n) in enumerate(boards)
    ]
    largest = max(boards)
    parts = []
    for i in range(draw(st.integers(1, 5))):
        grain = draw(GRAIN)
        size = [draw(st.integers(1, largest[0])), draw(st.integers(1, largest[1]))]
        length, width = reversed(size) if grain == "width" else size
        parts.append({"label": f"P{i}", "length": str(length), "width": str(width), "grain": grain})
    return {"unit": "mm", "kerf": "0", "trim": "0", "stock": stock, "parts": parts}


@settings(max_examples=150, deadline=None)
@given(small_sheets())
def test_sheets_against_trying_everything(request: dict[str, Any]) -> None:
    """Sheets with limited stock, several sizes, grain and turning: bound <= least <= plan."""
    _check(request, least_sheets(request))


@settings(max_examples=100, deadline=None)
@given(
    st.lists(st.tuples(st.integers(4, 12), st.integers(1, 4)), min_size=1, max_size=2),
    st.lists(st.integers(1, 12), min_size=1, max_size=6),
)
def test_sticks_against_trying_everything(
    boards: list[tuple[int, int]], lengths: list[int]
) -> None:
    """Sticks of several limited lengths: bound <= least <= plan."""
    longest = max(length for length, _ in boards)
    lengths = [min(length, longest) for length in lengths]
    request = {
        "unit": "mm", "kerf": "0", "trim": "0",
        "stock": [{"label": f"S{i}", "length": str(n), "count": c}
                  for i, (n, c) in enumerate(boards)],
        "parts": [{"label": f"P{i}", "length": str(n)} for i, n in enumerate(lengths)],
    }  # fmt: skip
    _check(request, least([(n, 1, c) for n, c in boards], [(n, 1, False) for n in lengths]))


def _check(request: dict[str, Any], true_least: int | None) -> None:
    found = plan_to_print(plan(read_request(json.dumps(request).encode()), 0.2, lambda: 0.0))
    replay(request, found)
    if true_least is None:
        assert found["unplaced"]
        assert not found["proved"]
        return
    assert found["lower_bound"] <= true_least
    assert not found["cannot_all_fit"]
    if not found["unplaced"]:
        assert found["sheets_used"] >= true_least
        if found["proved"]:
            assert found["sheets_used"] == true_least
