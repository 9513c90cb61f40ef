"""The true least number of sheets or sticks for a few parts, by trying everything.

Free edge-to-edge cutting of any number of stages, turning where allowed, limited stock. Written on
its own: nothing here is shared with the planner. Small whole sizes without kerf only.
"""

from functools import lru_cache
from itertools import combinations
from typing import Any

Size = tuple[int, int]


def fits(length: int, width: int, parts: tuple[tuple[int, int, bool], ...]) -> bool:
    """Whether these (length, width, may turn) can all be cut from one sheet edge to edge."""
    return _fits(length, width, tuple(sorted(parts)))


@lru_cache(maxsize=200_000)
def _fits(length: int, width: int, parts: tuple[tuple[int, int, bool], ...]) -> bool:
    if not parts:
        return True
    if sum(a * b for a, b, _ in parts) > length * width:
        return False
    if len(parts) == 1:
        a, b, turns = parts[0]
        return (a <= length and b <= width) or (turns and b <= length and a <= width)
    rest = range(1, len(parts))
    for size in range(len(parts) - 1):
        for chosen in combinations(rest, size):
            here = (parts[0], *(parts[i] for i in chosen))
            there = tuple(parts[i] for i in rest if i not in chosen)
            if any(
                _fits(x, width, here) and _fits(length - x, width, there) for x in range(1, length)
            ) or any(
                _fits(length, y, here) and _fits(length, width - y, there) for y in range(1, width)
            ):
                return True
    return False


def least(boards: list[tuple[int, int, int]], parts: list[tuple[int, int, bool]]) -> int | None:
    """The least number of boards (length, width, how many), or None where they cannot do."""
    kinds = [(length, width) for length, width, _ in boards]
    return _least(kinds, tuple(count for *_, count in boards), tuple(parts))


def least_sheets(request: dict[str, Any]) -> int | None:
    """The least number of sheets for a parts file without kerf or trim, on stock with grain."""
    boards = [(int(s["length"]), int(s["width"]), s["count"]) for s in request["stock"]]
    parts = []
    for row in request["parts"]:
        size = int(row["length"]), int(row["width"])
        lying = size[::-1] if row["grain"] == "width" else size
        parts.append((*lying, row["grain"] is None))
    return least(boards, parts)


def _least(
    kinds: list[Size], counts: tuple[int, ...], parts: tuple[tuple[int, int, bool], ...]
) -> int | None:
    if not parts:
        return 0
    best: int | None = None
    rest = range(1, len(parts))
    for kind, (length, width) in enumerate(kinds):
        if counts[kind] == 0:
            continue
        fewer = tuple(n - (i == kind) for i, n in enumerate(counts))
        for size in range(len(parts)):
            for chosen in combinations(rest, size):
                if not fits(length, width, (parts[0], *(parts[i] for i in chosen))):
                    continue
                there = tuple(parts[i] for i in rest if i not in chosen)
                more = _least(kinds, fewer, there)
                if more is not None and (best is None or more + 1 < best):
                    best = more + 1
    return best
