"""A tight slab of solid wood over the year.

Movement: Wood Handbook eq. 13-2 and Table 13-5; how it is shared between the sides: common
practice, no source.
"""

from dataclasses import replace
from fractions import Fraction

import pytest

from fronts.rules.kinds import ClosedBy
from fronts.rules.kitchen import FrontFacts, Kitchen, Opening
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


def _beside_each_other(first: Opening, second: Opening, lap: str) -> list[Mm | None]:
    """The least gaps of two pull-out or drawer fronts in cabinets next to each other."""
    left = cabinet(first)
    of = kitchen(left, beside(left, openings=(second,)), standard=Standard(overlay=all_round(lap)))
    moves = [front.movement for front in schedule(of).fronts]
    return [None if move is None else move.least_gap for move in moves]


def test_slabs_as_far_apart_as_the_eye_sees_are_not_tight() -> None:
    """1/4 in apart nothing is told of a gap; 3/16 in is a gap that closes."""
    front = opening("pull-out", front=CHERRY)

    assert _beside_each_other(front, front, "1 3/8") == [None, None]
    assert None not in _beside_each_other(front, front, "1 13/32")


NEXT_TO_IT: list[tuple[str, Opening]] = [
    ("a board", opening("pull-out")),
    ("a slab with level grain", opening("drawer", front=CHERRY)),
]


@pytest.mark.parametrize("other", [row[1] for row in NEXT_TO_IT], ids=[r[0] for r in NEXT_TO_IT])
def test_what_does_not_grow_sideways_leaves_its_neighbour_the_gap(other: Opening) -> None:
    """A pull-out's cherry slab grows by half towards the 1/8 in between; the other by nothing."""
    slab = opening("pull-out", front=CHERRY)
    grows = _grown(inch("17 7/8"), PRACTICE.humidity_high)

    first, _ = _beside_each_other(slab, other, "1 7/16")

    assert first == inch("1/8") - grows / 2


@pytest.mark.parametrize("place", [0, 1])
def test_of_several_neighbours_the_one_that_grows_most_counts(place: int) -> None:
    """A cherry slab beside a door over a door of another cabinet: one of MDF, one of cherry."""
    slab = cabinet(opening("pull-out", front=CHERRY))
    woods = ["cherry", "MDF"] if place else ["MDF", "cherry"]
    doors = [
        opening(
            "pull-out", label=label, y=inch(up), height=inch("12"), front=FrontFacts(material=wood)
        )
        for label, up, wood in zip("ab", ("1 1/2", "17"), woods, strict=True)
    ]
    standard = Standard(overlay=all_round("1 7/16"))
    of = kitchen(slab, beside(slab, openings=tuple(doors)), standard=standard)
    first = schedule(of).fronts[0]

    assert first.movement is not None
    assert first.movement.least_gap == inch("1/8") - _grown(first.width, PRACTICE.humidity_high)


def test_stop_where_the_gap_closes() -> None:
    """A wide beech door with 1/16 in at a damp site."""
    damp = replace(PRACTICE, humidity_high=Fraction(75))
    tight = Standard(mount="inset", inset_gap=all_round("1/16"))
    wide = opening(width=inch("23"), front=FrontFacts(material="beech"))
    of = kitchen(cabinet(wide, width=inch("26")), standard=tight, practice=damp)

    (finding,) = findings_of(of, "gap-closes")

    assert (finding.level, finding.where) == ("stop", ("B1.a",))


@pytest.mark.parametrize(("left", "told"), [("0", 1), ("1/128", 0)])
def test_a_gap_of_which_nothing_is_left_closes(left: str, told: int) -> None:
    """A cherry front 14 in wide whose gaps are what it grows by, or a hair more."""
    grows = _grown(inch("14"), PRACTICE.humidity_high)
    wish = FrontFacts(width=inch("14"), height=inch("27"), material="cherry")
    tight = opening(width=inch("14") + 2 * (grows + inch(left)), front=wish)

    assert len(findings_of(kitchen(cabinet(tight)), "gap-closes")) == told


def test_it_never_grows_where_the_site_is_drier_than_the_shop() -> None:
    """Growth and shrinkage are both at least nothing."""
    dry = replace(PRACTICE, humidity_low=Fraction(5), humidity_high=Fraction(10))
    front = only_front(replace(_inset(), practice=dry))

    assert front.movement is not None
    assert front.movement.grows == 0
    assert front.movement.shrinks > 0
    assert front.movement.least_gap == inch("1/8")
