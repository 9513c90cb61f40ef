"""Old hinge bores: used again where they serve, else kept clear of, worked by hand.

45 mm from a new cup to an old one is common practice, no source.
"""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.hinge_choice import HingeSetting, OldBore
from fronts.rules.kinds import Hinged
from fronts.rules.kitchen import DoorOnHand, Point
from fronts.rules.lengths import Mm
from fronts.rules.old_bores import CLEAR, Reused, at_hinge_side, plugged, reused, too_near
from tests.rules.hinge_items import listed, mm, settled
from tests.rules.laws import LAW

(HINGE,) = settled(listed())


def _door(*bores: tuple[str, str], diameter: str = "35") -> DoorOnHand:
    return DoorOnHand(
        "D1", mm("400"), mm("700"), hinge_bores=tuple(Point(mm(x), mm(y)) for x, y in bores),
        bore_diameter=mm(diameter),
    )  # fmt: skip


def _any(old: OldBore) -> HingeSetting | None:
    """A hinge that takes 35 mm bores up to 8 mm from the edge."""
    fits = old.diameter == 35 and old.from_edge <= 8
    return HingeSetting(HINGE, None, old.from_edge, mm("0")) if fits else None


SIDES_OF: list[tuple[Hinged, tuple[tuple[str, str], ...], tuple[str, ...]]] = [
    ("left", (("22.5", "90"), ("22.5", "610")), ("90", "610")),
    ("right", (("377.5", "610"), ("377.5", "90")), ("90", "610")),
    ("bottom", (("90", "22.5"), ("310", "22.5")), ("90", "310")),
    ("top", (("90", "677.5"), ("310", "677.5")), ("90", "310")),
]


@pytest.mark.parametrize(("hinged", "bores", "centres"), SIDES_OF, ids=[row[0] for row in SIDES_OF])
def test_bores_become_hinge_centres(
    hinged: Hinged, bores: tuple[tuple[str, str], ...], centres: tuple[str, ...]
) -> None:
    """22.5 mm in from the hinge side: B is 5 mm."""
    found = reused(_door(*bores), hinged, 2, _any)

    assert found is not None
    assert (found.setting.bore, found.centres) == (mm("5"), tuple(mm(at) for at in centres))


NOT_AGAIN: list[tuple[str, DoorOnHand, Hinged, int]] = [
    ("one too few", _door(("22.5", "90"), ("22.5", "610")), "left", 3),
    ("on the other side", _door(("22.5", "90"), ("22.5", "610")), "right", 2),
    ("two distances", _door(("22.5", "90"), ("24.5", "610")), "left", 2),
    ("no hinge for them", _door(("27", "90"), ("27", "610")), "left", 2),
    ("of another cup", _door(("18", "90"), ("18", "610"), diameter="26"), "left", 2),
    ("one twice", _door(("22.5", "90"), ("22.5", "90")), "left", 2),
    ("in the very middle", _door(("200", "90"), ("200", "610")), "left", 2),
]


@pytest.mark.parametrize(
    ("door", "hinged", "count"), [row[1:] for row in NOT_AGAIN], ids=[row[0] for row in NOT_AGAIN]
)
def test_bores_that_do_not_serve(door: DoorOnHand, hinged: Hinged, count: int) -> None:
    """All at one distance, as many as are needed, with a hinge for them."""
    assert reused(door, hinged, count, _any) is None


def test_a_stray_bore_does_not_spoil_the_others() -> None:
    """It is plugged; those that serve are not, nor is any where none is left over."""
    good, stray = (("22.5", "90"), ("22.5", "610")), ("30", "350")
    door = _door(*good, stray)
    found = reused(door, "left", 2, _any)

    assert found is not None
    assert plugged(door, "left", found) == [Point(mm("30"), mm("350"))]
    assert plugged(_door(*good), "left", found) == []


def test_a_bore_as_far_from_the_other_side_is_plugged() -> None:
    """It lies as far in as those that serve, but from where no hinge is."""
    door = _door(("22.5", "90"), ("22.5", "610"), ("377.5", "90"))
    again = Reused(HingeSetting(HINGE, None, mm("5"), mm("0")), (mm("90"), mm("610")))

    assert plugged(door, "left", again) == [Point(mm("377.5"), mm("90"))]


def test_all_are_plugged_where_none_serves() -> None:
    """Every one of them."""
    door = _door(("22.5", "90"))

    assert plugged(door, "left", None) == list(door.hinge_bores)


NEAR = [
    ("at its own distance: 45 mm either way", "22.5", [("55", "145")]),
    ("27 mm aside: 36 mm (3-4-5 triangle)", "49.5", [("64", "136")]),
    ("45 mm aside is clear", "67.5", []),
]


@pytest.mark.parametrize(
    ("inward", "near"), [row[1:] for row in NEAR], ids=[row[0] for row in NEAR]
)
def test_how_near_a_new_cup_may_come(inward: str, near: list[tuple[str, str]]) -> None:
    """From middle to middle, in a straight line."""
    found = too_near(_door(("22.5", "100")), "left", mm(inward))

    assert found == [(mm(low), mm(high)) for low, high in near]


@LAW
@given(st.integers(0, 449).map(lambda n: Mm(n) / 10))
def test_no_fraction_is_a_hair_too_near(aside: Mm) -> None:
    """What it says keeps 45 mm, and not a micrometre too much."""
    ((low, high),) = too_near(_door(("22.5", "300")), "left", mm("22.5") + aside)
    half = (high - low) / 2

    assert half**2 + aside**2 >= CLEAR**2 > (half - Mm(1) / 1000) ** 2 + aside**2


def test_the_half_that_hinges() -> None:
    """A place is on the hinge side up to the door's middle, but not in it."""
    door = replace(_door(), width=mm("400"))

    assert at_hinge_side(Point(mm("199"), mm("1")), door, "left")
    assert not at_hinge_side(Point(mm("200"), mm("1")), door, "left")
    assert not at_hinge_side(Point(mm("200"), mm("1")), door, "right")
    assert at_hinge_side(Point(mm("201"), mm("1")), door, "right")
