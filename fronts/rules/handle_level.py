"""With which door's handle a pull-out's is level: that of the nearest door beside it.

Beside is on its wall and at its heights, with a handle that is at its heights too. Fronts at
the same heights share one row of doors, in which the nearest is looked up.
"""

from bisect import bisect_left, bisect_right
from collections.abc import Sequence
from dataclasses import dataclass

from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.rect import Rect


@dataclass(frozen=True, slots=True)
class DoorOnWall:
    """A door's outline on its wall; `handle` is how high above the floor its handle is."""

    wall: str
    outline: Rect
    handle: Mm


class DoorsOnWalls:
    """All doors of a kitchen, in its order."""

    def __init__(self, doors: Sequence[DoorOnWall]) -> None:
        self._doors = doors
        self._rows: dict[tuple[str, Mm, Mm], _Row] = {}

    def handle_beside(self, wall: str, front: Rect) -> Mm | None:
        """How high the handle of the nearest door beside a front is; of two, the first's."""
        at = wall, front.y, front.top
        if at not in self._rows:
            self._rows[at] = _Row([door for door in self._doors if _is_at(door, *at)])
        return self._rows[at].nearest_handle(front)


def _is_at(door: DoorOnWall, wall: str, low: Mm, high: Mm) -> bool:
    outline = door.outline
    return (
        door.wall == wall
        and outline.y < high
        and low < outline.top
        and low < door.handle < high
    )  # fmt: skip


class _Row:
    """Doors beside each other, by where they begin and by where they end."""

    def __init__(self, doors: Sequence[DoorOnWall]) -> None:
        lefts = [door.outline.x for door in doors]
        rights = [door.outline.right for door in doors]
        self._handles = [door.handle for door in doors]
        self._spans = list(zip(lefts, rights, strict=True))
        self._by_left = sorted(range(len(doors)), key=lefts.__getitem__)
        self._by_right = sorted(range(len(doors)), key=rights.__getitem__)
        self._lefts, self._rights = sorted(lefts), sorted(rights)

    def nearest_handle(self, front: Rect) -> Mm | None:
        before, after = bisect_right(self._rights, front.x), bisect_left(self._lefts, front.right)
        near: Sequence[int] = self._by_left[after : after + 1]
        if before:
            first = bisect_left(self._rights, self._rights[before - 1])
            near = [*near, self._by_right[first]]
        if after > before:  # some stand neither before nor after it, but over or under it
            near = range(len(self._spans))
        nearest = min(near, key=lambda door: (self._apart(door, front), door), default=None)
        return None if nearest is None else self._handles[nearest]

    def _apart(self, door: int, front: Rect) -> Mm:
        left, right = self._spans[door]
        return max(left - front.right, front.x - right, NOTHING)
