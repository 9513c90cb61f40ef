"""Saw a printed plan again, cut by cut, knowing only the parts file and the plan's JSON.

Written on its own: nothing here is shared with the planner. Lengths are exact fractions.
"""

from collections import Counter
from fractions import Fraction
from typing import Any

Rect = tuple[Fraction, Fraction, Fraction, Fraction]
"""Left, bottom, right, top."""


def replay(request: dict[str, Any], plan: dict[str, Any]) -> None:
    """AssertionError where the plan cannot be sawn, or is not what the file asks for."""
    stock = {row["label"]: row for row in request["stock"]}
    parts = {row["label"]: row for row in request["parts"]}
    used: Counter[str] = Counter()
    made: Counter[str] = Counter()
    for sheet in plan["sheets"]:
        used[sheet["stock"]] += 1
        _saw(request, stock[sheet["stock"]], parts, sheet)
        made.update(placed["part"] for placed in sheet["placed"])
    made.update({row["part"]: row["count"] for row in plan["unplaced"]})
    assert made == Counter({label: row.get("count", 1) for label, row in parts.items()})
    for label, count in used.items():
        limit = stock[label].get("count")
        assert limit is None or count <= limit, label
    assert plan["sheets_used"] == len(plan["sheets"])
    assert plan["lower_bound"] <= plan["sheets_used"]


def _saw(
    request: dict[str, Any], stock: dict[str, Any], parts: dict[str, Any], sheet: dict[str, Any]
) -> None:
    kerf, trim = _mm(request["kerf"]), _mm(request.get("trim", "0"))
    flat = "width" in stock
    length, width = _mm(stock["length"]), _mm(stock["width"]) if flat else Fraction(0)
    pieces: list[Rect] = [(Fraction(0), Fraction(0), length, width)]
    for cut in sheet["cuts"]:
        _cut(pieces, cut, kerf, (length, width))
    inside = (trim, trim if flat else Fraction(0), length - trim, width - trim if flat else width)
    for placed in sheet["placed"]:
        rect = _rect(placed)
        assert rect in pieces, (placed, pieces)
        pieces.remove(rect)
        assert inside[0] <= rect[0] < rect[2] <= inside[2], placed
        assert inside[1] <= rect[1] <= rect[3] <= inside[3], placed
        _kept(parts[placed["part"]], stock, placed)
    left = [_rect(offcut) for offcut in sheet["offcuts"]]
    assert all(offcut in pieces for offcut in left), (left, pieces)
    _apart([_rect(placed) for placed in sheet["placed"]] + left, kerf)


def _cut(pieces: list[Rect], cut: dict[str, Any], kerf: Fraction, whole: Any) -> None:
    """Divide the one piece that the cut goes right across."""
    at, start, end = _mm(cut["at"]), _mm(cut["from"]), _mm(cut["to"])
    low, high = (1, 3) if cut["along"] == "length" else (0, 2)
    across = (0, 2) if cut["along"] == "length" else (1, 3)
    within = [
        piece
        for piece in pieces
        if (piece[across[0]], piece[across[1]]) == (start, end)
        and piece[low] <= at + kerf
        and at < piece[high]
        and (at > piece[low] or cut["kind"] == "trim")
    ]
    assert len(within) == 1, (cut, within, pieces)
    piece = list(within[0])
    pieces.remove(within[0])
    below, above = piece.copy(), piece.copy()
    below[high], above[low] = at, at + kerf
    for rest in (below, above):
        if rest[low] < rest[high]:
            pieces.append((rest[0], rest[1], rest[2], rest[3]))


def _kept(part: dict[str, Any], stock: dict[str, Any], placed: dict[str, Any]) -> None:
    """Size and grain."""
    if "width" not in part:
        assert _mm(placed["length"]) == _mm(part["length"])
        return
    size = _mm(part["length"]), _mm(part["width"])
    lies = _mm(placed["length"]), _mm(placed["width"])
    assert lies == (size[::-1] if placed["turned"] else size), placed
    if part.get("grain") and stock.get("grain"):
        turned = part["grain"] != stock["grain"]
        assert placed["turned"] == turned, placed


def _apart(rects: list[Rect], kerf: Fraction) -> None:
    for index, one in enumerate(rects):
        for other in rects[:index]:
            beside = one[0] >= other[2] + kerf or other[0] >= one[2] + kerf
            above = one[1] >= other[3] + kerf or other[1] >= one[3] + kerf
            assert beside or above, (one, other)


def _rect(placed: dict[str, Any]) -> Rect:
    x, y = _mm(placed["x"]), _mm(placed.get("y", "0"))
    return x, y, x + _mm(placed["length"]), y + _mm(placed.get("width", "0"))


def _mm(text: str) -> Fraction:
    return Fraction(text.removesuffix(" in")) * (Fraction("25.4") if text.endswith(" in") else 1)
