"""With which door's handle a pull-out's is level."""

from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.handle_level import DoorOnWall, DoorsOnWalls
from fronts.rules.lengths import Mm
from fronts.rules.rect import Rect
from tests.rules.laws import LAW

FEW = st.integers(0, 6).map(Mm)
RECTS = st.builds(Rect, st.integers(0, 30).map(Mm), FEW, st.integers(1, 8).map(Mm), FEW)
DOORS = st.lists(st.builds(DoorOnWall, st.sampled_from(["North", "East"]), RECTS, FEW), max_size=12)


def _beside(doors: list[DoorOnWall], front: Rect) -> Mm | None:
    """Door by door, as the rule says it."""
    nearest, handle = None, None
    for door in doors:
        at = door.outline
        level = at.y < front.top and front.y < at.top and front.y < door.handle < front.top
        apart = max(at.x - front.right, front.x - at.right, Mm(0))
        if door.wall == "North" and level and (nearest is None or apart < nearest):
            nearest, handle = apart, door.handle
    return handle


@LAW
@given(DOORS, st.lists(RECTS, min_size=1, max_size=4))
def test_the_nearest_door_beside_it(doors: list[DoorOnWall], fronts: list[Rect]) -> None:
    """On its wall and at its heights, left or right; of two as near the first."""
    walls = DoorsOnWalls(doors)

    assert [walls.handle_beside("North", front) for front in fronts] == [
        _beside(doors, front) for front in fronts
    ]


def test_it_is_beside_on_the_left_the_right_or_nowhere() -> None:
    """Doors 4 from it, 3 from it, and one on another wall that is nearer."""

    def door(wall: str, x: int, handle: int) -> DoorOnWall:
        return DoorOnWall(wall, Rect(Mm(x), Mm(0), Mm(10), Mm(30)), Mm(handle))

    doors = [door("North", 6, 21), door("North", 33, 22), door("East", 31, 23)]
    front = Rect(Mm(20), Mm(0), Mm(10), Mm(30))

    assert DoorsOnWalls(doors).handle_beside("North", front) == 22
    assert DoorsOnWalls(doors[:1]).handle_beside("North", front) == 21
    assert DoorsOnWalls(doors[2:]).handle_beside("North", front) is None
