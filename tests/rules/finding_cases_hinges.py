"""Cases of findings about a door's hinges, its old bores and how it is trimmed."""

from dataclasses import replace
from typing import Any

from fronts.rules.items import Hardware, HingeItem
from fronts.rules.kinds import Hinged
from fronts.rules.kitchen import DoorOnHand, FrontFacts, Kitchen, Point
from fronts.rules.standard_keys import Standard
from tests.rules.finding_cases import Case, lapping, one
from tests.rules.hinge_items import inset, listed, mm, on_plate
from tests.rules.small_kitchens import all_round, cabinet, door, inch, kitchen, opening

A = ("B1.a",)
INSET = Standard(mount="inset", inset_gap=all_round("3/32"))


def lapping_by(overlay: str, *items: HingeItem, hinge: str | None = None) -> Kitchen:
    """A door that laps so on its hinge side, in a shop with these hinges."""
    of = opening(front=FrontFacts(hinge=hinge), standard=lapping(overlay, "1/2", "1/2", "1/2"))
    return replace(one(of), hardware=Hardware(hinges=items))


def inset_by(gap: str) -> Kitchen:
    """An inset door with this gap all round."""
    return one(opening(standard=replace(INSET, inset_gap=all_round(gap))))


def from_door(old: DoorOnHand, hinged: Hinged = "left", choice: str = "D1") -> Kitchen:
    """A door on hand on the small opening, whose own front would be 16 × 28 1/2 in."""
    return one(opening(front=FrontFacts(door_on_hand=choice), hinged=hinged), doors=[old])


def bored(*places: tuple[str, str], width: str = "16", **changes: Any) -> DoorOnHand:
    """A door with bores of 35 mm, their middles in millimetres."""
    bores = tuple(Point(mm(x), mm(y)) for x, y in places)
    return door(width=width, hinge_bores=bores, **changes)


def _low(height: str) -> Kitchen:
    """A door 16 in wide, hinged at its left; 1 in higher than its opening."""
    return one(opening(height=inch(height)))


def _in_a_row(apart: int) -> Kitchen:
    """Bores 50 mm in that serve no hinge, so far apart over the whole height of the door."""
    places = [("50", str(at)) for at in range(20, 720, apart)]
    return from_door(bored(*places))


def _shallow(height: str) -> Kitchen:
    return kitchen(cabinet(opening(height=inch(height)), height=inch("110"), kind="tall"))


def _framed(width: str) -> DoorOnHand:
    """A five-piece door with bores 7/8 in from its left."""
    places = (("22.225", "90"), ("22.225", "600"))
    return bored(*places, width=width, build="five-piece", stile=inch("3"), rail=inch("3"))


CASES = [
    Case("overlay past the hinges", "no-hinge-makes-overlay", "stop", A,
         one(opening(standard=lapping("1 9/16", "1/2", "1/2", "1/2"))),
         one(opening(standard=lapping("1 1/2", "1/2", "1/2", "1/2")))),
    Case("inset past the hinges", "no-hinge-makes-overlay", "stop", A,
         inset_by("5/16"), inset_by("1/4")),
    Case("1/16 in, for which the shop has none", "no-hinge-makes-overlay", "stop", A,
         lapping_by("1/16", listed()), lapping_by("1/4", listed())),
    Case("0.6 mm off", "hinge-adjusted", "check", A,
         lapping_by("1/2", listed(overlays=(mm("13.3"),))),
         lapping_by("1/2", listed(overlays=(mm("13.2"),)))),
    Case("a hinge for inset doors was chosen", "hinge-does-not-suit", "check", A,
         lapping_by("1/2", listed(), inset(), hinge="INSET"),
         lapping_by("1/2", on_plate(), listed(), hinge="LIST")),
    Case("a hinge that is in no list was chosen", "hinge-does-not-suit", "check", A,
         lapping_by("1/2", listed(), hinge="GONE"), lapping_by("1/2", listed())),
    Case("13 × 16 in at its left", "hinges-close-for-width", "check", A,
         _low("22"), _low("22 1/16")),
    Case("a door 4 15/16 in high", "no-place-for-hinge", "check", A,
         _shallow("3 15/16"), _shallow("4")),
    Case("old bores all along", "bores-clash", "stop", A, _in_a_row(71), _in_a_row(72)),
    Case("two old bores of three", "bores-to-plug", "note", A,
         from_door(bored(("22.5", "90"), ("22.5", "600"), ("30", "350"))),
         from_door(bored(("22.5", "90"), ("22.5", "600")))),
    Case("bores near both edges", "trim-cuts-bore", "stop", A,
         from_door(bored(("20", "90"), ("390", "90"), width="16 1/4"), choice="choose"),
         from_door(bored(("20", "90"), ("390", "90"), width="16"), choice="choose")),
    Case("a bore in the way of half each", "stiles-differ", "check", A,
         from_door(_framed("16 1/4"), "top", "choose"),
         from_door(_framed("16 1/8"), "top", "choose")),
]  # fmt: skip
