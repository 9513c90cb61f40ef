"""Cases of findings about runs and their walls, corners, appliances, and openings that taper."""

from dataclasses import replace
from typing import Any

from fronts.rules.kinds import ClosedBy
from fronts.rules.kitchen import Cabinet, Kitchen, Measured
from fronts.rules.standard_keys import Standard
from fronts.rules.thing_kinds import ThingKind
from fronts.rules.wall_facts import Thing, Wall, WallEnd
from tests.rules.finding_cases import Case, lapping, one, two
from tests.rules.small_kitchens import BOX, cabinet, inch, kitchen, opening

A = ("B1.a",)


def tapering(bottom: str, **changes: Any) -> Kitchen:
    """A door over an opening 15 in wide at the top."""
    taken = Measured(width_top=inch("15"), width_bottom=inch(bottom))
    return one(opening(measured=taken, **changes))


def standing(kind: ThingKind, width: str, **changes: Any) -> Thing:
    """A thing after the small cabinet."""
    plain = Thing(label="T1", kind=kind, wall="North", width=inch(width), after="B1")
    return replace(plain, **changes)


def _wall(length: str) -> Kitchen:
    """Two cabinets of 18 in and a filler of 3 in along a wall."""
    of = two(cabinet(opening()), x=None)
    filler = standing("filler", "3", after="B2")
    return replace(of, walls=(Wall("North", inch(length)),), others=(filler,))


def _overlap(x: str) -> Kitchen:
    fridge = standing("appliance", "30", x=inch(x), height=inch("70"))
    return kitchen(cabinet(opening("fixed")), others=(fridge,))


def _edge(kind: ThingKind, away: str = "18") -> Kitchen:
    """A fixed front 1/16 in past its cabinet, and a thing beside that."""
    of = cabinet(opening("fixed", standard=lapping("1/2", "1 9/16", "1/2", "1/2")))
    return kitchen(of, others=(standing(kind, "3", x=inch(away)),))


def fridge_beside(
    closed_by: ClosedBy, hinged: Any, away: str, depth: str = "30", width: str = "18"
) -> Kitchen:
    """A front so far from its cabinet's edge, and an appliance that stands out close to that."""
    boxes = () if closed_by == "door" else (BOX,)
    lap = lapping("1/2", "0", "1/2", "1/2").overlay
    assert lap is not None
    lapped = Standard(overlay=replace(lap, right=inch("1 1/2") - inch(away)))
    of = opening(
        closed_by, hinged=hinged, boxes=boxes, standard=lapped, width=inch(width) - inch("3")
    )
    fridge = standing("appliance", "30", height=inch("70"), depth=inch(depth))
    return kitchen(cabinet(of, width=inch(width)), others=(fridge,))


def cornered(closed_by: ClosedBy, hinged: Any, filler: str, **changes: Any) -> Kitchen:
    """A cabinet on the east wall, so far from the corner past what stands out on the north.

    That one's door lies 3/4 in before its face 24 in from the wall, with a knob 1 in before it:
    25 3/4 in. The east cabinet begins 24 in from the corner and a filler more; its front another
    inch on.
    """
    boxes = () if closed_by == "door" else (BOX,)
    east = cabinet(
        opening(closed_by, hinged=hinged, boxes=boxes),
        label="E1", wall="East", x=inch("24") + inch(filler),
    )  # fmt: skip
    north: Cabinet = cabinet(opening("door"), x=inch("70"))
    walls = (Wall("North", inch("120"), right=WallEnd("inside", "East")), Wall("East"))
    return kitchen(replace(north, **changes), east, walls=walls)


E = ("E1.a",)
CASES = [
    # 1/16 in through taper, half of what the widths differ: common practice, no source.
    Case("9/128 in a side", "opening-tapers", "check", A, tapering("15 9/64"), tapering("15 1/8")),
    Case("1/64 in past the wall", "run-past-wall", "stop", ("North",),
         _wall("38 63/64"), _wall("39")),
    Case("an appliance where a cabinet is", "cabinets-overlap", "check", ("B1", "T1"),
         _overlap("17 15/16"), _overlap("18")),
    Case("past the edge at an appliance", "past-cabinet-edge", "stop", A,
         _edge("appliance"), _edge("filler")),
    Case("past the edge, an end panel too far", "past-cabinet-edge", "stop", A,
         _edge("end-panel", "21 1/16"), _edge("end-panel", "21")),
    Case("past the edge where nothing is", "past-cabinet-edge", "stop", A,
         _edge("gap"), _edge("end-panel")),
    # A front passes what stands out with 1/4 in: common practice, no source.
    Case("a drawer round the corner", "corner-blocks", "stop", E,
         cornered("drawer", None, "15/16"), cornered("drawer", None, "1")),
    Case("a pull-out round the corner", "corner-blocks", "stop", E,
         cornered("pull-out", None, "15/16"), cornered("pull-out", None, "1")),
    Case("a door with its knob against a knob", "corner-blocks", "stop", E,
         cornered("door", "left", "1 11/16"), cornered("door", "left", "1 3/4"), eased="check"),
    Case("a door that opens to 90 degrees", "corner-blocks", "check", E,
         cornered("door", "left", "1 15/16"), cornered("door", "left", "2")),
    Case("a door that swings away, against a knob", "corner-blocks", "stop", E,
         cornered("door", "right", "11/16"), cornered("door", "right", "3/4")),
    Case("a drawer 3/16 in from a fridge's side", "appliance-blocks", "stop", A,
         fridge_beside("drawer", None, "3/16"), fridge_beside("drawer", None, "1/4")),
    Case("a fridge that stands out past the front", "appliance-blocks", "stop", A,
         fridge_beside("drawer", None, "3/16", "24 13/16"),
         fridge_beside("drawer", None, "3/16", "24 3/4")),
    Case("a door that a fridge's side stops at 90 degrees", "appliance-blocks", "check", A,
         fridge_beside("door", "right", "3/16"), fridge_beside("door", "right", "1/4")),
    # The knob of a narrow door meets a fridge that stands out 5 1/4 in.
    Case("a knob against a fridge", "appliance-blocks", "stop", A,
         fridge_beside("door", "right", "15/16", width="8"),
         fridge_beside("door", "right", "1", width="8"), eased="check"),
    Case("a door that swings away from a fridge", "appliance-blocks", "check", A,
         fridge_beside("door", "right", "0"), fridge_beside("door", "left", "0")),
]  # fmt: skip
