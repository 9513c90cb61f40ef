"""Fronts that open across the next wall, past an inside corner."""

from dataclasses import replace
from fractions import Fraction

import pytest

from fronts.rules.corners import Corner, inside_corners
from fronts.rules.items import HandleItem, Hardware
from fronts.rules.kitchen import FrontFacts, Kitchen
from fronts.rules.standard_keys import Standard
from fronts.rules.thing_kinds import ThingKind
from fronts.rules.wall_facts import Thing, Wall, WallEnd
from tests.rules.finding_cases_runs import cornered
from tests.rules.small_kitchens import all_round, closed, findings_of, inch, replace_opening

# 1/4 in to pass, a handle of 1 in, fillers of 3 in: common practice, no source.


def _blocked(of: Kitchen) -> list[str]:
    return [each.where[0] for each in findings_of(of, "corner-blocks")]


def _north(of: Kitchen, **changes: object) -> Kitchen:
    """The cabinet that stands before the corner changed."""
    first, *rest = of.cabinets
    return replace(of, cabinets=(replace(first, **changes), *rest))  # type: ignore[arg-type]


def _handles(of: Kitchen, *items: HandleItem) -> Kitchen:
    return replace(of, hardware=Hardware(handles=items))


def test_either_wall_may_tell_of_a_corner() -> None:
    """One wall's right end is the next one's left: once, as long as the first is."""
    north, east = Wall("North", inch("120")), Wall("East")
    at_right = replace(north, right=WallEnd("inside", "East"))
    at_left = replace(east, left=WallEnd("inside", "North"))
    expected = [Corner("North", "East", inch("120"), Fraction(90))]

    assert inside_corners((at_right, east)) == expected
    assert inside_corners((north, at_left)) == expected
    assert inside_corners((at_right, at_left)) == expected
    outside = replace(north, right=WallEnd("outside", "East"))
    assert inside_corners((outside, east)) == []
    assert inside_corners((replace(north, right=WallEnd("inside")), east)) == []


def test_the_filler_that_would_do_is_said() -> None:
    """Without one the drawer lies 3/4 in before the handle: an inch of filler."""
    (found,) = findings_of(cornered("drawer", None, "0"), "corner-blocks")

    assert found.message == (
        "E1.a does not open: B1.a is in its way round the corner. A filler of 1 in more beside it "
        "would do; 3 in at each side of an inside corner is usual."
    )


def test_the_wall_before_the_corner_is_looked_at_too() -> None:
    """Its cabinet close to the east run: the drawer there comes out past E1's door."""
    of = _north(cornered("door", "right", "3"), x=inch("78"))
    drawer = replace_opening(of, "B1", lambda hole: closed(hole, closed_by="drawer"))

    assert _blocked(drawer) == ["B1.a"]
    unknown = (Wall("North", None, right=WallEnd("inside", "East")), Wall("East"))
    assert _blocked(replace(drawer, walls=unknown)) == []


@pytest.mark.parametrize(
    ("changes", "free"),
    [
        ({"depth": inch("12")}, True),
        ({"y": inch("54")}, True),
        ({"x": inch("0")}, True),
        ({"x": inch("78.5")}, False),
    ],
    ids=["shallow", "hung above", "out of reach", "nearer the corner"],
)
def test_what_stands_out_is_in_the_way_where_the_front_comes(
    changes: dict[str, object], free: bool
) -> None:
    """As deep as it is, at the front's height, as far along as the drawer comes out."""
    of = _north(cornered("drawer", None, "0"), **changes)

    assert ("E1.a" not in _blocked(of)) is free


def test_without_a_handle_less_is_wanted() -> None:
    """A fixed front has no knob; an inset one is flush: 24 3/4 and 24 in, and a 1/4 to pass."""
    of = cornered("drawer", None, "0")
    fixed = replace_opening(of, "B1", lambda hole: replace(hole, closed_by="fixed"))

    assert _blocked(of) == ["E1.a"]
    assert _blocked(fixed) == []


def test_the_handle_that_was_chosen_counts() -> None:
    """By its projection: the chosen one's, else that of the shop's first, else an inch."""
    of = cornered("drawer", None, "1")
    low, high = HandleItem("K1"), HandleItem("P1", projection=inch("1 1/16"))

    assert _blocked(_handles(of, low, high)) == []
    assert _blocked(_handles(of, high, low)) == ["E1.a"]
    chosen = replace_opening(
        _handles(of, low, high), "B1", lambda hole: closed(hole, front=FrontFacts(handle="P1"))
    )
    assert _blocked(chosen) == ["E1.a"]


@pytest.mark.parametrize(("kind", "free"), [("appliance", False), ("gap", True)])
def test_things_of_the_other_run_are_in_the_way(kind: ThingKind, free: bool) -> None:
    """An appliance 27 in deep at the corner is passed like a cabinet; a gap is nothing."""
    of = cornered("drawer", None, "2")
    machine = Thing(
        "A1", kind, "North", inch("24"), x=inch("70"), depth=inch("27"), height=inch("34")
    )  # fmt: skip
    alone = replace(of, cabinets=of.cabinets[1:], others=(machine,))

    assert (_blocked(alone) == []) is free


def test_a_fixed_front_opens_nowhere() -> None:
    """It need not pass anything."""
    of = replace_opening(
        cornered("drawer", None, "0"), "E1", lambda hole: replace(hole, closed_by="fixed")
    )

    assert _blocked(of) == []


def test_a_wider_corner_needs_less() -> None:
    """At 135 degrees what is pulled out draws away from the other wall; at 60 it draws nearer.

    25 3/4 in out, at 135 degrees: 25 3/4 / sin 45 - 24 in, and a 1/4: 12 2/3 in from the corner.
    """
    of = cornered("drawer", None, "0")
    walls = {
        angle: (Wall("North", inch("120"), right=WallEnd("inside", "East", Fraction(angle))),)
        for angle in (60, 90, 135)
    }

    assert {angle: bool(_blocked(replace(of, walls=one))) for angle, one in walls.items()} == {
        60: True, 90: True, 135: False,
    }  # fmt: skip


def test_an_inset_run_stands_out_less() -> None:
    """Flush with its cabinet, with a knob of an inch: 25 in and a 1/4 to pass."""
    inset = Standard(mount="inset", inset_gap=all_round("3/32"))
    of = replace(cornered("drawer", None, "0"), standard=inset)

    assert _blocked(of) == []
