"""What the cutting benchmark measures: public instances, and kitchens from fixed seeds."""

import json
import random
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path
from typing import Any

from fronts.cutting.model import Request, StockSize, WantedPart

EXCERPT = Path(__file__).parents[1] / "cutting" / "data" / "public.json"
KITCHENS = 20


@dataclass(frozen=True)
class Case:
    """An instance with its best published value (None for a kitchen); `priced` compares cost."""

    group: str
    name: str
    request: Request
    best: float | None
    priced: bool = False


def excerpt() -> Iterator[Case]:
    """The few public instances that the tests use."""
    data = json.loads(EXCERPT.read_text("utf-8"))
    for one in data["sticks"]:
        yield _sticks("sticks", one["name"], one["capacity"], one["items"], one["best"])
    for one in data["sheets"]:
        boards = [{"w": one["bin"][0], "h": one["bin"][1], "cost": None, "copies": None}]
        yield _sheets("sheets", one["name"], boards, one["items"], one["best"])


def folder_of(folder: Path) -> Iterator[Case]:
    """Every instance of `sticks.json` and `sheets.json`."""
    for one in json.loads((folder / "sticks.json").read_text("utf-8"))["instances"]:
        group = f"1D {one['set']}"
        yield _sticks(group, one["name"], one["capacity"], one["items"], one["best"]["ub"])
    for one in json.loads((folder / "sheets.json").read_text("utf-8"))["instances"]:
        best = _published(one["best"])
        yield _sheets(f"2D {one['set']}", one["name"], one["bins"], one["items"], best)


def kitchens() -> Iterator[Case]:
    """60 to 120 fronts of 0.1-0.9 m by 0.1-2.2 m, grain kept, on sheets of 1220 by 2440."""
    stock = (StockSize("sheet", Fraction(2440), Fraction(1220), None, "length"),)
    for seed in range(KITCHENS):
        chance = random.Random(seed)
        parts = []
        for index in range(chance.randint(60, 120)):
            size = Fraction(chance.randint(100, 2200)), Fraction(chance.randint(100, 900))
            parts.append(WantedPart(f"P{index}", *size, 1, "length"))
        request = Request(Fraction("3.2"), Fraction(10), stock, tuple(parts))
        yield Case("kitchens", f"kitchen {seed}", request, None)


def _published(best: dict[str, float]) -> float:
    """Three stages without turning (two, where costs are given): free cutting may do better."""
    staged = [v for k, v in best.items() if k.startswith("orient_3stage") or k == "chen2016"]
    return min(staged) if staged else best["orient_2stage_nonexact_hfirst_cost"]


def _sticks(group: str, name: str, line: int, items: list[list[int]], best: float) -> Case:
    stock = (StockSize("stick", Fraction(line)),)
    parts = tuple(WantedPart(f"P{i}", Fraction(a), None, n) for i, (a, n) in enumerate(items))
    return Case(group, name, Request(Fraction(0), Fraction(0), stock, parts), best)


def _sheets(
    group: str, name: str, boards: list[dict[str, Any]], items: list[list[int]], best: float
) -> Case:
    priced = boards[0]["cost"] is not None
    stock = []
    for index, board in enumerate(boards):
        price = Fraction(board["cost"]) if priced else None
        size = Fraction(board["w"]), Fraction(board["h"])
        stock.append(StockSize(f"S{index}", *size, board["copies"], "length", price))
    parts = tuple(
        WantedPart(f"P{i}", Fraction(a), Fraction(b), n, "length")
        for i, (a, b, n) in enumerate(items)
    )
    return Case(group, name, Request(Fraction(0), Fraction(0), tuple(stock), parts), best, priced)
