"""What an item of hardware leaves out, and what a shop without a list hangs doors on."""

from dataclasses import replace

import pytest

from fronts.rules.hinge_choice import DoorToHang, choose_hinge
from fronts.rules.items import Adjustment, HingeItem, Span
from fronts.rules.kinds import CabinetBuild
from fronts.rules.practice import PRACTICE
from fronts.rules.usual_hinges import hinges_of, settled_hinge
from tests.rules.hinge_items import listed, mm, on_plate
from tests.rules.small_kitchens import inch

# Up to 1 1/2 in of overlay and 1/4 in of inset gap: common practice, from memory.
MADE: list[tuple[str, CabinetBuild, str | None]] = [
    ("1/2", "face-frame", "H-LAP"), ("0", "face-frame", "H-LAP"), ("1 1/2", "face-frame", "H-LAP"),
    ("1 9/16", "face-frame", None), ("-3/32", "face-frame", "H-INSET"),
    ("-1/4", "frameless", "H-INSET"), ("-5/16", "face-frame", None),
    ("11/16", "frameless", "H-SIDE"), ("5 mm", "frameless", "H-SIDE"),
    ("4 mm", "frameless", "H-LAP"), ("1 1/2", "frameless", "H-LAP"), ("1 9/16", "frameless", None),
]  # fmt: skip


@pytest.mark.parametrize(
    ("overlay", "build", "code"), MADE, ids=[f"{overlay}, {build}" for overlay, build, _ in MADE]
)
def test_what_the_invented_hinges_make(overlay: str, build: CabinetBuild, code: str | None) -> None:
    """All that the shop's numbers say; frameless cabinets have one on a plate."""
    found = choose_hinge(
        DoorToHang(inch(overlay), build, inch("3/4")), hinges_of((), PRACTICE)
    )  # fmt: skip

    assert (found and found.hinge.item.code) == code


def test_the_shops_own_numbers_hold_for_them() -> None:
    """A cup of 40 mm, its middle 26 mm from the edge: B is 6."""
    own = replace(
        PRACTICE, cup_diameter=mm("40"), cup_from_edge=mm("26"), hinge_adjust_side=mm("3"),
        hinge_adjust_height=mm("4"), hinge_screws=mm("6"), hinge_overlay_most=mm("12"),
    )  # fmt: skip
    hinges = hinges_of((), own)

    assert {(h.item.cup_diameter, h.usual_bore, h.side, h.height, h.screws) for h in hinges} == {
        (mm("40"), mm("6"), mm("3"), mm("4"), 6)
    }
    assert choose_hinge(DoorToHang(mm("14"), "face-frame", mm("19")), hinges) is None


def test_a_shop_with_a_list_has_no_others() -> None:
    """Its own, in its order."""
    items = (listed(), on_plate())

    assert tuple(hinge.item for hinge in hinges_of(items, PRACTICE)) == items


BARE = HingeItem("BARE", "overlay", fixed_distance=mm("11"))


def test_what_an_item_leaves_out_is_as_the_shop_says() -> None:
    """Plate 0, the usual B and no other, 2 mm of adjustment, four screws."""
    hinge = settled_hinge(BARE, PRACTICE)

    assert (hinge.plates, hinge.usual_bore, hinge.bore) == (
        (mm("0"),), mm("5"), Span(mm("5"), mm("5")),
    )  # fmt: skip
    assert (hinge.side, hinge.height, hinge.screws) == (mm("2"), mm("2"), 4)


@pytest.mark.parametrize(
    ("least", "most", "usual"), [("3", "8", "5"), ("6", "8", "6"), ("2", "4", "4")]
)
def test_a_usual_bore_left_out_lies_within_the_limits(least: str, most: str, usual: str) -> None:
    """The shop's 5 mm, or what is nearest to it."""
    hinge = settled_hinge(replace(BARE, bore=Span(mm(least), mm(most))), PRACTICE)

    assert hinge.usual_bore == mm(usual)


def test_what_an_item_says_holds() -> None:
    """Nothing of it is left to the shop's numbers, a zero neither."""
    own = replace(
        BARE, screws=0, adjust=Adjustment(mm("0"), mm("1.5")), usual_bore=mm("4"), bore=None
    )
    hinge = settled_hinge(own, PRACTICE)

    assert (hinge.side, hinge.height, hinge.screws) == (mm("0"), mm("1.5"), 0)
    assert hinge.usual_bore == mm("4")
