"""Where a new front's edges lie: by amount, by reveal, inset; shares of a span; lean."""

from math import isqrt

from fronts.rules.lengths import Mm
from fronts.rules.overlay import members, rule_overlays
from fronts.rules.rect import Rect
from fronts.rules.standard_keys import Reveal, Settled, Sides, Standard
from fronts.rules.standards import settled
from tests.rules.small_kitchens import all_round, inch

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


def _root(square: int) -> Mm:
    return Mm(isqrt(square * 10**18), 10**9)
