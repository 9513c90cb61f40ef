"""What faces what along a wall, against a slow reckoning straight from the rule's words."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.kinds import Side
from fronts.rules.lengths import INCH, Mm
from fronts.rules.neighbours import Facing, Placed, facing
from tests.rules.laws import LAW

PLANE = ("North", "overlay")


def _placed(*edges: int | Fraction, plane: tuple[str, str] = PLANE) -> Placed:
    left, bottom, right, top = (Fraction(each) for each in edges)
    return Placed(plane, left, bottom, right, top)


def _overlap(low: Mm, high: Mm, other_low: Mm, other_high: Mm) -> Mm:
    return min(high, other_high) - max(low, other_low)


def _faces(one: Placed, other: Placed) -> tuple[Side, Mm] | None:
    """On which side of one the other faces it, and how far away; None: it does not."""
    wide = _overlap(one.left, one.right, other.left, other.right)
    tall = _overlap(one.bottom, one.top, other.bottom, other.top)
    if wide > 0 and tall > 0:
        if wide <= tall:
            right = one.left + one.right < other.left + other.right
            return ("right" if right else "left"), -wide
        above = one.bottom + one.top < other.bottom + other.top
        return ("top" if above else "bottom"), -tall
    if tall > 0:
        return ("right" if other.left >= one.right else "left"), -wide
    if wide > 0:
        return ("top" if other.bottom >= one.top else "bottom"), -tall
    return None


def _slowly(fronts: list[Placed]) -> list[dict[Side, Facing]]:
    """Every front held against every other."""
    found: list[dict[Side, Facing]] = []
    for index, one in enumerate(fronts):
        near: dict[Side, Facing] = {}
        for place, other in enumerate(fronts):
            seen = _faces(one, other) if place != index and one.plane == other.plane else None
            if seen is None:
                continue
            side, gap = seen
            known = near.get(side)
            if known is None or gap < known.gap:
                near[side] = Facing(gap, (place,))
            elif gap == known.gap:
                near[side] = Facing(gap, (*known.fronts, place))
        found.append(near)
    return found


SIXTEENTHS = INCH / 16
# Around the seams of any sorting by place, negative places among them; close, so that fronts
# touch, overlap, hold each other and share edges.
near = st.one_of(
    st.integers(-40, 40).map(lambda n: n * 10 * SIXTEENTHS),
    st.integers(-3, 6).map(lambda n: Fraction(n * 300)),
    st.fractions(-700, 700, max_denominator=7),
)
size = st.one_of(
    st.integers(1, 30).map(lambda n: n * 10 * SIXTEENTHS),
    st.integers(1, 3).map(lambda n: Fraction(n * 300)),
    st.fractions(Fraction(1, 7), 900, max_denominator=7),
)
planes = st.sampled_from([PLANE, ("North", "inset"), ("South", "overlay")])


@st.composite
def _walls(draw: st.DrawFn) -> list[Placed]:
    found = []
    for _ in range(draw(st.integers(0, 9))):
        x, y = draw(near), draw(near)
        found.append(Placed(draw(planes), x, y, x + draw(size), y + draw(size)))
    # Fronts in the very same place have no left or right of each other.
    middles = {(p.plane, p.left + p.right, p.bottom + p.top): p for p in found}
    return list(middles.values())


def _same_middle(fronts: list[Placed]) -> bool:
    """Whether two overlapping fronts share a middle: which is left of which is anyone's guess."""
    for index, one in enumerate(fronts):
        for other in fronts[index + 1 :]:
            seen = _faces(one, other)
            if one.plane != other.plane or seen is None or seen[1] >= 0:
                continue
            level = seen[0] in ("left", "right")
            if level and one.left + one.right == other.left + other.right:
                return True
            if not level and one.bottom + one.top == other.bottom + other.top:
                return True
    return False


@LAW
@given(_walls())
def test_the_same_as_holding_every_front_against_every_other(fronts: list[Placed]) -> None:
    """Nearest in the plane whose span overlaps; overlapping ones with a gap below zero."""
    if _same_middle(fronts):
        fronts = fronts[:1]

    assert facing(fronts) == _slowly(fronts)


@LAW
@given(_walls())
def test_the_order_in_which_fronts_are_named_is_no_matter(fronts: list[Placed]) -> None:
    """Gaps belong to places, not to the list."""
    if _same_middle(fronts):
        fronts = fronts[:1]
    last = len(fronts) - 1

    backwards = facing(fronts[::-1])[::-1]

    turned = [
        {s: Facing(f.gap, tuple(sorted(last - i for i in f.fronts))) for s, f in each.items()}
        for each in backwards
    ]
    assert turned == facing(fronts)


def test_two_doors_side_by_side() -> None:
    """Each faces the other across the 3 mm between them."""
    found = facing([_placed(0, 0, 400, 700), _placed(403, 0, 800, 700)])

    assert found == [
        {"right": Facing(Fraction(3), (1,))},
        {"left": Facing(Fraction(3), (0,))},
    ]


def test_a_door_beside_a_stack_faces_all_of_it() -> None:
    """Fronts at the same distance all face it, in their order."""
    door = _placed(0, 0, 400, 700)
    drawers = [_placed(403, 0, 800, 300), _placed(403, 303, 800, 700)]

    assert facing([door, *drawers])[0]["right"] == Facing(Fraction(3), (1, 2))


def test_the_nearest_hides_what_is_behind_it() -> None:
    """A front two cabinets on is faced only where nothing stands between."""
    found = facing([_placed(0, 0, 10, 10), _placed(12, 0, 20, 10), _placed(15, 0, 30, 10)])

    assert found[0]["right"] == Facing(Fraction(2), (1,))


@pytest.mark.parametrize(
    "other",
    [
        _placed(403, 700, 800, 900),
        _placed(403, 0, 800, 700, plane=("South", "overlay")),
        _placed(403, 0, 800, 700, plane=("North", "inset")),
    ],
    ids=["only its corner touches", "another wall", "another plane"],
)
def test_what_does_not_face(other: Placed) -> None:
    """Spans that only touch don't overlap; other walls and planes are not looked at."""
    assert facing([_placed(0, 0, 400, 700), other]) == [{}, {}]


def test_of_many_at_the_same_distance_twenty_are_named() -> None:
    """More is a kitchen typed over itself: 25 strips beside a door, or 25 fronts in one place."""
    strips = [_placed(403, 10 * place, 500, 10 * place + 10) for place in range(25)]
    same = [_placed(0, 0, 100, 200)] * 25

    assert facing([_placed(0, 0, 400, 700), *strips])[0]["right"].fronts == tuple(range(1, 21))
    assert facing(same)[0]["right"] == Facing(Fraction(-100), tuple(range(1, 21)))


def test_touching_fronts_have_no_gap() -> None:
    """Zero is a gap, and far under any least gap."""
    assert facing([_placed(0, 0, 10, 10), _placed(10, 0, 20, 10)])[0]["right"].gap == 0


def test_overlapping_fronts_have_a_gap_below_zero() -> None:
    """Across the direction in which they overlap least."""
    found = facing([_placed(0, 0, 100, 100), _placed(98, 10, 200, 90)])

    assert found[0]["right"] == Facing(Fraction(-2), (1,))
    assert found[1]["left"] == Facing(Fraction(-2), (0,))


def test_overlapping_by_the_same_both_ways_counts_as_side_by_side() -> None:
    """Corner on corner: left and right, not above and below."""
    found = facing([_placed(0, 0, 100, 100), _placed(98, 98, 200, 200)])

    assert found[0] == {"right": Facing(Fraction(-2), (1,))}
    assert found[1] == {"left": Facing(Fraction(-2), (0,))}
