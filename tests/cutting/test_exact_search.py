"""Few parts: the plan is the least there is, and says so."""

from random import Random
from typing import Any

import pytest
from hypothesis import given, settings

from tests.cutting.exhaustive import least_sheets
from tests.cutting.replay import replay
from tests.cutting.test_bounds import small_sheets
from tests.cutting.test_plan import planned

SHEETS = [("17", "13"), ("2440", "1220")]


def parts_file(sheet: tuple[str, str], sizes: list[tuple[int, int]], grain: str | None) -> Any:
    """A parts file without kerf or trim, on as many sheets as it takes."""
    return {
        "unit": "mm", "kerf": "0", "trim": "0",
        "stock": [{"label": "S", "length": sheet[0], "width": sheet[1], "grain": "length"}],
        "parts": [{"label": f"P{i}", "length": str(a), "width": str(b), "grain": grain}
                  for i, (a, b) in enumerate(sizes)],
    }  # fmt: skip


def sawn_up(sheet: tuple[str, str], pieces: int, chance: Random) -> list[tuple[int, int]]:
    """A whole sheet sawn right across, piece after piece, in a random order."""
    sizes = [(int(sheet[0]), int(sheet[1]))]
    while len(sizes) < pieces:
        length, width = sizes.pop(chance.randrange(len(sizes)))
        if length + width == 2:
            sizes.append((length, width))
        elif chance.randrange(length + width - 2) < length - 1:
            at = chance.randint(1, length - 1)
            sizes += [(at, width), (length - at, width)]
        else:
            at = chance.randint(1, width - 1)
            sizes += [(length, at), (length, width - at)]
    chance.shuffle(sizes)
    return sizes


@settings(max_examples=150, deadline=None)
@given(small_sheets())
def test_the_least_is_found_and_proved(request: dict[str, Any]) -> None:
    """As trying everything says: limited stock, several sizes, grain and turning."""
    true_least = least_sheets(request)
    found = planned(request, 1)
    replay(request, found)
    if true_least is None:
        assert found["cannot_all_fit"]
        return
    assert not found["unplaced"]
    assert found["proved"]
    assert found["sheets_used"] == found["lower_bound"] == true_least


@pytest.mark.parametrize("seed", range(6))
@pytest.mark.parametrize("sheet", SHEETS, ids=["17 x 13", "2440 x 1220"])
@pytest.mark.parametrize("grain", ["length", None])
def test_what_was_one_sheet_is_one_sheet(
    seed: int, sheet: tuple[str, str], grain: str | None
) -> None:
    """Nine to twelve parts that fill a sheet to the last millimetre are cut from one."""
    sizes = sawn_up(sheet, 9 + seed % 4, Random(seed))
    request = parts_file(sheet, sizes, grain)
    found = planned(request)
    replay(request, found)
    assert (found["sheets_used"], found["proved"]) == (1, True)


def test_what_fills_a_sheet_but_cannot_be_sawn_takes_two() -> None:
    """Four parts round a fifth: no cut goes right across, so one sheet is not enough."""
    pinwheel = [(1500, 500), (940, 800), (1540, 420), (900, 720), (600, 300)]
    assert sum(a * b for a, b in pinwheel) == 2440 * 1220
    found = planned(parts_file(SHEETS[1], pinwheel, "length"))
    assert (found["sheets_used"], found["lower_bound"], found["proved"]) == (2, 2, True)


def test_grain_free_stock_is_planned_as_if_it_had_grain_and_bound_as_if_not() -> None:
    """Two parts that share a sheet only across their grain: one sheet is not ruled out."""
    request = parts_file(("10", "6"), [(6, 5), (6, 5)], "length")
    request["stock"][0]["grain"] = None
    found = planned(request)
    assert (found["sheets_used"], found["lower_bound"], found["proved"]) == (2, 1, False)


def test_dear_and_limited_stock_is_shared_out_at_the_least_cost() -> None:
    """One scrap holds the small parts, so that the cheap sheet is enough beside it."""
    request = parts_file(("10", "10"), [(10, 9), (4, 1), (5, 1), (6, 6), (6, 5)], "length")
    request["stock"] = [
        {"label": "cheap", "length": "10", "width": "10", "price": "30", "count": 1},
        {"label": "dear", "length": "12", "width": "12", "price": "70"},
        {"label": "scrap", "length": "6", "width": "11", "count": 1},
    ]
    found = planned(request)
    replay(request, found)
    assert (found["cost"], found["cost_bound"], found["proved"]) == ("30", "30", True)


@pytest.mark.parametrize(("parts", "least"), [(3, 3), (4, None)])
def test_short_stock_is_shared_out_or_proved_to_be_too_little(
    parts: int, least: int | None
) -> None:
    """Each of three boards holds one part, whichever way; area alone would let five through."""
    request = parts_file(("10", "8"), [(6, 5)] * parts, "length")
    request["stock"] = [
        {"label": "large", "length": "10", "width": "8", "count": 2, "grain": "length"},
        {"label": "small", "length": "9", "width": "8", "count": 1, "grain": "length"},
    ]
    assert least_sheets(request) == least
    found = planned(request)
    replay(request, found)
    assert found["cannot_all_fit"] == (least is None)
    assert (found["sheets_used"], found["proved"]) == (3, least is not None)
