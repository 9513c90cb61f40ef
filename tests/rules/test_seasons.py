"""A tight slab of solid wood over the year.

Movement: Wood Handbook eq. 13-2 and Table 13-5; how it is shared between the sides: common
practice, no source.
"""

from dataclasses import replace
from fractions import Fraction

import pytest

from fronts.rules.kinds import ClosedBy
from fronts.rules.kitchen import FrontFacts, Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.materials import Wood, material_of
from fronts.rules.movement import change, resting_moisture
from fronts.rules.practice import PRACTICE
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Standard
from tests.rules.small_kitchens import (
    all_round,
    beside,
    cabinet,
    findings_of,
    inch,
    kitchen,
    only_front,
    opening,
)

INSET = Standard(mount="inset", inset_gap=all_round("1/8"))
CHERRY = FrontFacts(material="cherry")


def _grown(size: Mm, humidity: Fraction, name: str = "cherry") -> Mm:
    wood = material_of(name)
    assert isinstance(wood, Wood)
    moisture = resting_moisture(PRACTICE.site_celsius, humidity)
    return change(size, wood, PRACTICE.made_at, moisture)


def _inset(closed_by: ClosedBy = "door", wish: FrontFacts = CHERRY) -> Kitchen:
    of = opening(closed_by, front=wish)
    return kitchen(cabinet(of), standard=INSET)


def test_a_door_grows_from_its_hinges() -> None:
    """All of it towards the free edge: the gap there loses the whole growth."""
    front = only_front(_inset())
    grows = _grown(front.width, PRACTICE.humidity_high)

    assert front.movement is not None
    assert front.movement.across == "width"
    assert front.movement.grows == grows
    assert front.movement.least_gap == inch("1/8") - grows
    assert front.movement.shrinks == -_grown(front.width, PRACTICE.humidity_low)


@pytest.mark.parametrize(
    ("closed_by", "across"), [("pull-out", "width"), ("drawer", "height"), ("fixed", "height")]
)
def test_what_is_not_hinged_grows_half_each_way(closed_by: ClosedBy, across: str) -> None:
    """Upright grain moves in width, level grain in height."""
    front = only_front(_inset(closed_by))
    grows = _grown(front.width if across == "width" else front.height, PRACTICE.humidity_high)

    assert front.movement is not None
    assert front.movement.across == across
    assert front.movement.least_gap == inch("1/8") - grows / 2


def test_a_pair_grows_towards_its_middle_from_both_sides() -> None:
    """Both leaves take from the gap between them."""
    leaves = schedule(_inset("pair")).fronts
    grows = _grown(leaves[0].width, PRACTICE.humidity_high)

    assert all(leaf.movement is not None for leaf in leaves)
    assert [leaf.movement.least_gap for leaf in leaves if leaf.movement] == [
        leaves[0].edges.right.gap - 2 * grows  # type: ignore[operator]
    ] * 2


@pytest.mark.parametrize(
    "wish",
    [
        FrontFacts(material="MDF"),
        FrontFacts(material="cherry plywood"),
        FrontFacts(material="cherry", build="five-piece"),
    ],
    ids=["MDF", "plywood", "five-piece"],
)
def test_what_does_not_move(wish: FrontFacts) -> None:
    """Board goods, and frames whose panels float."""
    assert only_front(_inset(wish=wish)).movement is None


def test_an_overlay_slab_with_room_about_it() -> None:
    """Nothing near: nothing to close."""
    assert only_front(kitchen(cabinet(opening(front=CHERRY)))).movement is None


def test_overlay_slabs_close_together() -> None:
    """Two pull-outs 1/8 in apart each grow by half towards the other."""
    lap = Standard(overlay=all_round("1 7/16"))
    first = cabinet(opening("pull-out", front=CHERRY))
    fronts = schedule(kitchen(first, beside(first), standard=lap)).fronts
    grows = _grown(fronts[0].width, PRACTICE.humidity_high)

    assert fronts[0].edges.right.gap == inch("1/8")
    assert [each.movement.least_gap for each in fronts if each.movement] == [
        inch("1/8") - grows
    ] * 2


def test_stop_where_the_gap_closes() -> None:
    """A wide beech door with 1/16 in at a damp site."""
    damp = replace(PRACTICE, humidity_high=Fraction(75))
    tight = Standard(mount="inset", inset_gap=all_round("1/16"))
    wide = opening(width=inch("23"), front=FrontFacts(material="beech"))
    of = kitchen(cabinet(wide, width=inch("26")), standard=tight, practice=damp)

    (finding,) = findings_of(of, "gap-closes")

    assert (finding.level, finding.where) == ("stop", ("B1.a",))


def test_it_never_grows_where_the_site_is_drier_than_the_shop() -> None:
    """Growth and shrinkage are both at least nothing."""
    dry = replace(PRACTICE, humidity_low=Fraction(5), humidity_high=Fraction(10))
    front = only_front(replace(_inset(), practice=dry))

    assert front.movement is not None
    assert front.movement.grows == 0
    assert front.movement.shrinks > 0
    assert front.movement.least_gap == inch("1/8")
