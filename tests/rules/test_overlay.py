"""Where a new front's edges lie: by amount, by reveal, inset; shares of a span; lean."""

from math import isqrt

import pytest

from fronts.rules.kinds import Side
from fronts.rules.lengths import Mm
from fronts.rules.overlay import members, rule_overlays
from fronts.rules.rect import Rect
from fronts.rules.standard_keys import Reveal, Settled, Sides, Standard
from fronts.rules.standards import settled
from tests.rules.small_kitchens import all_round, inch, inches

STEP = inch("1/16")
# Two openings side by side, 2 in apart, in a cabinet 36 × 30 in with 1 1/2 in stiles.
OUTER = Rect(Mm(0), Mm(0), inch("36"), inch("30"))
LEFT = Rect(inch("1 1/2"), inch("1 1/2"), inch("15 1/2"), inch("27"))
RIGHT = Rect(inch("19"), inch("1 1/2"), inch("15 1/2"), inch("27"))
REVEAL = Reveal(inch("1/8"), Sides(inch("1/4"), inch("3/8"), inch("1/2"), inch("0")))
# Every value here is worked by hand from the trade rule; the rules are common practice, no source.


def _overlays(rect: Rect, other: Rect, standard: Settled) -> Sides[Mm]:
    found = rule_overlays(rect, [other], OUTER, standard)
    assert found is not None
    return found


def test_overlay_by_amount() -> None:
    """The edge lies the amount outside the opening, on each side its own."""
    own = Sides(inch("1/2"), inch("3/8"), inch("1/4"), inch("5/8"))

    assert _overlays(LEFT, RIGHT, settled(Standard(overlay=own))) == own


def test_overlay_by_reveal_across_a_shared_member() -> None:
    """Two fronts share a 2 in stile and leave 1/8 in between: 15/16 in each."""
    standard = settled(Standard(reveal=REVEAL))

    assert _overlays(LEFT, RIGHT, standard).right == inch("15/16")
    assert _overlays(RIGHT, LEFT, standard).left == inch("15/16")


def test_overlay_by_reveal_at_the_cabinets_end() -> None:
    """A member that ends at the cabinet's edge keeps the end's reveal, per side."""
    overlays = _overlays(LEFT, RIGHT, settled(Standard(reveal=REVEAL)))

    assert overlays.left == inch("1 1/4")
    assert overlays.top == inch("1")
    assert overlays.bottom == inch("1 1/2")
    assert _overlays(RIGHT, LEFT, settled(Standard(reveal=REVEAL))).right == inch("1 1/8")


def test_inset_lies_its_gap_inside() -> None:
    """The gap is taken off every side, per side."""
    gaps = Sides(inch("3/32"), inch("1/16"), inch("1/8"), inch("0"))

    found = _overlays(LEFT, RIGHT, settled(Standard(mount="inset", inset_gap=gaps)))

    assert found == Sides(inch("-3/32"), inch("-1/16"), inch("-1/8"), inch("0"))


def test_inset_holds_where_a_farther_level_gives_an_overlay() -> None:
    """A mount of inset leaves an overlay that was said elsewhere unused."""
    standard = settled(Standard(mount="inset"), Standard(overlay=all_round("1/2")))

    assert _overlays(LEFT, RIGHT, standard).left == inch("-3/32")


def test_nobody_said_how_far() -> None:
    """Overlay without an amount or a reveal gives no edges at all."""
    assert rule_overlays(LEFT, [RIGHT], OUTER, settled(Standard())) is None


def test_a_member_is_shared_only_with_what_stands_across_it() -> None:
    """An opening diagonally above shares no member; the cabinet's end counts."""
    above_right = Rect(inch("19"), inch("28 1/2"), inch("15 1/2"), inch("1"))

    assert members(LEFT, [above_right], OUTER)["right"] == (inch("19"), False)
    assert members(LEFT, [RIGHT], OUTER)["right"] == (inch("2"), True)


ACROSS: list[tuple[str, Rect, Side, str, bool]] = [
    ("to the right, up to its bottom", Rect(*inches("19", "1", "5", "1/2")), "right", "19", False),
    ("to the right, a hair over its bottom", Rect(*inches("19", "1", "5", "65/128")), "right", "2",
     True),
    ("above, from its right end on", Rect(*inches("17", "29", "1", "1/2")), "top", "1 1/2", False),
    ("above, up to its left end", Rect(*inches("1", "29", "1/2", "1/2")), "top", "1 1/2", False),
    ("above, over its left end", Rect(*inches("1", "29", "1", "1/2")), "top", "1/2", True),
    ("below it", Rect(*inches("2", "0", "5", "1")), "bottom", "1/2", True),
    ("to the left of it", Rect(*inches("0", "2", "1", "5")), "left", "1/2", True),
    ("close to its right", Rect(*inches("17", "2", "5", "5")), "right", "0", True),
    ("reaching into it", Rect(*inches("16 127/128", "2", "5", "5")), "right", "19", False),
]  # fmt: skip


@pytest.mark.parametrize(
    ("other", "side", "width", "shared"), [row[1:] for row in ACROSS], ids=[r[0] for r in ACROSS]
)
def test_which_member_is_shared(other: Rect, side: Side, width: str, shared: bool) -> None:
    """The first opening lies from 1 1/2 to 17 in across and from 1 1/2 to 28 1/2 in up."""
    assert members(LEFT, [other], OUTER)[side] == (inch(width), shared)


def test_the_nearest_opening_shares_the_member() -> None:
    """A farther one behind it is no matter."""
    far = Rect(inch("30"), inch("1 1/2"), inch("4"), inch("27"))

    assert members(LEFT, [far, RIGHT], OUTER)["right"] == (inch("2"), True)


def _root(square: int) -> Mm:
    return Mm(isqrt(square * 10**18), 10**9)
