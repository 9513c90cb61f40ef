"""A door on its hinges: which, where, and what is told; worked by hand from the rules."""

from dataclasses import replace

import pytest

from fronts.rules.differences import differences
from fronts.rules.hinge_drilling import cup_centre
from fronts.rules.items import Adjustment, Hardware, HingeItem
from fronts.rules.kinds import SIDES, ClosedBy, Hinged
from fronts.rules.kitchen import FrontFacts, Kitchen, Point
from fronts.rules.lengths import Mm
from fronts.rules.practice import PRACTICE
from fronts.rules.results import Front
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Sides, Standard
from fronts.rules.truing import play_of
from tests.rules.finding_cases_hinges import bored, from_door, lapping_by
from tests.rules.hinge_items import inset, listed, mm, on_plate, ranging
from tests.rules.small_kitchens import (
    beside,
    cabinet,
    codes_of,
    findings_of,
    inch,
    inches,
    kitchen,
    only_front,
    opening,
)


def _hinge(front: Front) -> tuple[str, Mm | None, Mm, Mm]:
    assert front.hinge is not None
    return front.hinge.code, front.hinge.plate, front.hinge.bore_from_edge, front.hinge.shift


def _with(*items: HingeItem, of: Kitchen | None = None) -> Kitchen:
    made = kitchen(cabinet(opening())) if of is None else of
    return replace(made, hardware=Hardware(hinges=items))


def test_a_door_takes_the_first_hinge_that_makes_its_overlay() -> None:
    """1/2 in is 12.7 mm: 11 + 4.5 - 3 makes 12.5."""
    front = only_front(_with(on_plate(), listed()))

    assert _hinge(front) == ("PLATE", mm("3"), mm("4.5"), mm("0.2"))
    assert front.hinge is not None
    assert front.hinge.reason == (
        "the shop's first that makes an overlay of 1/2 in: plate 3 mm, B 4.5 mm"
    )


def test_the_cups_middle_is_half_its_diameter_past_b() -> None:
    """B 4.5 and a cup of 40 mm: 24.5 mm in from the edge."""
    front = only_front(_with(on_plate(cup_diameter=mm("40"), cup_depth=mm("11"))))

    assert front.hinge is not None
    assert (front.hinge.cup_from_edge, front.hinge.cup_depth) == (mm("24.5"), mm("11"))
    assert cup_centre(front, inch("3 1/2"), front.hinge.cup_from_edge) == Point(
        mm("24.5"), inch("3 1/2")
    )


@pytest.mark.parametrize("hinged", ["left", "right", "top", "bottom"])
def test_the_overlay_of_the_side_that_it_hinges_at_decides(hinged: Hinged) -> None:
    """1/4 in at that side, 1/2 in at the others."""
    sides = {side: inch("1/4" if side == hinged else "1/2") for side in SIDES}
    lap = Standard(overlay=Sides(**sides))
    front = only_front(_with(listed(), of=kitchen(cabinet(opening(hinged=hinged, standard=lap)))))

    assert front.edges[hinged].overlay == inch("1/4")
    assert _hinge(front) == ("LIST", None, mm("3"), mm("0"))


def test_where_none_serves_there_is_no_hinge_and_a_stop_says_what_would() -> None:
    """The door has its centres all the same."""
    of = lapping_by("1/16", listed(), on_plate(plates=(mm("0"),)))
    front = only_front(of)
    (found,) = findings_of(of, "no-hinge-makes-overlay")

    assert front.hinge is None
    assert front.hinge_centres
    assert found.message == (
        "B1.a: none of the shop's hinges makes an overlay of 1/16 in on the hinge side. One for "
        "face-frame cabinets and doors 3/4 in thick that does would serve."
    )


CHOSEN: list[tuple[str, tuple[HingeItem, ...], str, str]] = [
    ("it fits", (listed(), ranging()), "RANGE", ""),
    ("of another mount", (listed(), inset()), "INSET",
     "it is for inset doors and what it makes is 9/16 in off an overlay of 1/2 in"),
    ("for other cabinets", (listed(), ranging(frame="frameless")), "RANGE",
     "it is not for face-frame cabinets"),
    ("for thinner doors", (listed(), ranging(most_door_thickness=inch("5/8"))), "RANGE",
     "the door is 3/4 in thick, too thick for it"),
    ("too far off", (listed(), listed("OFF", overlays=(inch("1/4"),))), "OFF",
     "what it makes is 1/4 in off an overlay of 1/2 in"),
]  # fmt: skip


@pytest.mark.parametrize(
    ("items", "code", "why"), [row[1:] for row in CHOSEN], ids=[row[0] for row in CHOSEN]
)
def test_a_hinge_that_somebody_chose_is_taken_and_told(
    items: tuple[HingeItem, ...], code: str, why: str
) -> None:
    """Whatever does not fit is said in one check."""
    of = lapping_by("1/2", *items, hinge=code)
    hinge = only_front(of).hinge
    told = [each.message for each in findings_of(of, "hinge-does-not-suit")]

    assert hinge is not None
    assert hinge.code == code
    assert hinge.reason.startswith("chosen for this door: ")
    assert told == ([f"B1.a: hinge {code} was chosen, but {why}."] if why else [])


def test_a_chosen_hinge_that_its_side_screw_brings_there_is_to_be_adjusted() -> None:
    """0.6 mm of the 1 mm that half of 2 mm gives."""
    of = lapping_by("1/2", ranging(), listed(overlays=(mm("13.3"),)), hinge="LIST")

    assert "hinge-adjusted" in codes_of(of)
    assert "hinge-does-not-suit" not in codes_of(of)


def test_a_chosen_hinge_that_is_gone_leaves_it_to_the_rule() -> None:
    """It is told, and the shop's first that serves is taken."""
    of = lapping_by("1/2", listed(), hinge="GONE")

    assert _hinge(only_front(of))[0] == "LIST"
    assert findings_of(of, "hinge-does-not-suit")[0].message == (
        "B1.a: hinge GONE was chosen, but it is not in the shop's list."
    )


def test_a_door_hangs_in_its_old_bores_again() -> None:
    """22.5 mm in, 90 and 600 up: B 5 mm is the usual one of the shop's invented hinges."""
    front = only_front(from_door(bored(("22.5", "90"), ("22.5", "600"))))

    assert (front.hinge_centres, front.hinges) == ((mm("90"), mm("600")), 2)
    assert _hinge(front) == ("H-LAP", None, mm("5"), mm("0"))
    assert front.hinge is not None
    assert front.hinge.in_old_bores
    assert front.plugged == ()


def test_three_old_bores_carry_a_door_that_two_would() -> None:
    """None of them is plugged: the hinge centres are the bores."""
    front = only_front(from_door(bored(("22.5", "90"), ("22.5", "350"), ("22.5", "600"))))

    assert (front.hinges, len(front.hinge_centres)) == (3, 3)


def test_a_chosen_hinge_decides_about_old_bores() -> None:
    """One whose usual B is 3 mm does not take bores at 5 mm; they are plugged."""
    of = from_door(bored(("22.5", "150"), ("22.5", "600")))
    listed_too = _with(ranging("FITS", usual_bore=mm("5")), listed(), of=of)
    opened = listed_too.cabinets[0].openings[0]
    named = replace(opened, fronts=(replace(opened.fronts[0], hinge="LIST"),))
    chosen = replace(
        listed_too, cabinets=(replace(listed_too.cabinets[0], openings=(named,)),)
    )  # fmt: skip

    assert only_front(listed_too).plugged == ()
    assert len(only_front(chosen).plugged) == 2


def test_new_cups_keep_clear_of_old_bores() -> None:
    """Bores of another cup 22.5 mm in: 45 mm from 100 and 600, nearest to 88.9 and 635."""
    old = bored(("22.5", "100"), ("22.5", "600"), bore_diameter=mm("26"))
    front = only_front(from_door(old))

    assert front.hinge_centres == (mm("55"), mm("645"))
    assert front.plugged == front.bores


def test_all_are_plugged_on_a_front_that_hangs_on_no_hinges() -> None:
    """And a front that no door on hand makes has none."""
    old = bored(("22.5", "100"), ("22.5", "600"))
    drawer = opening("drawer", front=FrontFacts(door_on_hand="D1"))
    front = only_front(kitchen(cabinet(drawer), doors=[old]))

    assert front.plugged == front.bores != ()
    assert only_front(kitchen(cabinet(opening()))).plugged == ()


def test_a_reused_bore_behind_a_rail_is_told() -> None:
    """A bore 20 mm up a door that laps 12.7: its plate would sit on the rail."""
    of = from_door(bored(("22.5", "20"), ("22.5", "600")))

    assert only_front(of).hinge_centres == (mm("20"), mm("600"))
    assert "no-place-for-hinge" in codes_of(of)


def test_a_five_piece_door_keeps_the_edge_that_its_bores_are_measured_from() -> None:
    """1/2 in comes off the right, since the bores at the left hang it again."""
    old = bored(
        ("22.5", "90"), ("22.5", "600"), width="16 1/2", build="five-piece", stile=inch("3"),
        rail=inch("3"),
    )  # fmt: skip
    front = only_front(from_door(old, choice="choose"))

    assert (front.trim.left, front.trim.right) == (Mm(0), inch("1/2"))
    assert front.hinge is not None
    assert front.hinge.in_old_bores
    assert front.hinge.bore_from_edge == mm("5")


def test_b_is_reckoned_from_the_new_edge() -> None:
    """A slab with holes on both sides loses 1/8 in each; 25.675 mm in leaves B 5."""
    old = bored(("25.675", "90"), ("25.675", "600"), ("380", "300"), width="16 1/4")
    front = only_front(from_door(old, choice="choose"))

    assert front.trim.left == inch("1/8")
    assert _hinge(front)[2] == mm("5")
    assert front.plugged == (Point(mm("376.825"), mm("300")),)


HUNG: list[tuple[ClosedBy, bool]] = [
    ("door", True), ("lift-up", True), ("tip-out", False), ("fixed", False),
    ("appliance-panel", False),
]  # fmt: skip


@pytest.mark.parametrize(("closed_by", "cups"), HUNG, ids=[row[0] for row in HUNG])
def test_what_hangs_on_hinges_with_cups(closed_by: ClosedBy, cups: bool) -> None:
    """A tip-out has hinges of its own, without cups."""
    of = kitchen(cabinet(replace(opening("fixed"), closed_by=closed_by)))
    front = only_front(of)

    assert bool(front.hinge) is cups
    assert bool(front.hinges) is cups


def test_a_lift_up_hangs_by_its_width() -> None:
    """Two hinges at least along its top, 3 1/2 in from the ends of 16 in."""
    of = kitchen(cabinet(replace(opening("fixed"), closed_by="lift-up")))

    assert only_front(of).hinge_centres == inches("3 1/2", "12 1/2")


def test_each_hinge_is_its_own_line_of_hardware() -> None:
    """With its plates and its screws; the code stands beside the item."""
    first = cabinet(opening())
    second = beside(first, openings=(opening(front=FrontFacts(hinge="LIST")),))
    of = _with(on_plate(name="clip"), listed(screws=2), of=kitchen(first, second))
    lines = {
        each.item: (each.code, each.need) for each in schedule(of).hardware if "hinge" in each.item
    }

    assert lines == {
        "hinge PLATE, clip": ("PLATE", 2),
        "hinge plate 3 mm for PLATE": (None, 2),
        "hinge LIST": ("LIST", 2),
        "hinge screw": (None, 2 * 4 + 2 * 2),
    }


def test_another_hinge_is_a_difference() -> None:
    """The same door on a hinge from another list: which it was, and which it is."""
    was, now = schedule(_with(listed())), schedule(_with(on_plate()))
    (front,) = differences(was, now).fronts

    assert [(fact.name, fact.was, fact.now) for fact in front.facts] == [
        ("hinge_words", "LIST, B 3 mm", "PLATE, plate 3 mm, B 4.5 mm"),
    ]


def test_a_door_moves_as_far_as_its_hinge_does() -> None:
    """Its own screws, 1.5 mm to the side and 3 in height, not the shop's usual 2."""
    own = Adjustment(side=mm("1.5"), height=mm("3"))
    front = only_front(_with(listed(adjust=own)))

    assert play_of(front, None, PRACTICE) == (mm("1.5"), mm("3"))
