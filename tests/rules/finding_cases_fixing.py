"""Cases of findings about boxes, screws, holes and slides."""

from dataclasses import replace

from fronts.rules.kitchen import FrontFacts, Kitchen, KnobHole, ShelfPins
from tests.rules.finding_cases import Case, boxed, one
from tests.rules.small_kitchens import BOX, STOCK, cabinet, door, inch, inches, kitchen, opening

A = ("B1.a",)
PIN = ShelfPins(inch("7"), inch("20 1/4"), inch("1"), 1, inch("1/4"))
SLIDE_WIDTH = inch("1 3/4")


def _stocked(**stock: object) -> Kitchen:
    of = opening("pull-out", boxes=(BOX,))
    return one(of, stock=replace(STOCK, **stock))  # type: ignore[arg-type]


def _pinned(across: str) -> Kitchen:
    return boxed(height=inch("21"), shelf_pins=(replace(PIN, x=inch(across)),))


def _deep(depth: str) -> Kitchen:
    of = opening("pull-out", boxes=(replace(BOX, depth=None),))
    return kitchen(cabinet(of, depth=inch(depth)))


def _wide(width: str) -> Kitchen:
    box = replace(BOX, width=inch(width), depth=None, height=inch("4"))
    of = opening("drawer", width=inch("90"), height=inch("6"), boxes=(box,))
    return kitchen(cabinet(of, width=inch("93")))


def _sliding(height: str | None) -> Kitchen:
    tall = None if height is None else inch(height)
    return boxed(slide="bottom", slide_width=SLIDE_WIDTH, slide_height=tall)


def _stacked(rise: str) -> Kitchen:
    lower = replace(BOX, height=inch("8"))
    of = opening("drawers", count=2, boxes=(replace(lower, rise=inch(rise)), lower))
    return one(of)


def _knobbed(across: str) -> Kitchen:
    """A pull-out made from a door 16 in wide."""
    old = door(width="16", knob_hole=KnobHole(inch(across), inch("20"), inch("3/16")))
    of = opening("pull-out", front=FrontFacts(door_on_hand="D1"), boxes=(BOX,))
    return one(of, doors=[old])


CASES = [
    Case("boxes typed over each other", "boxes-overlap", "stop", ("B1.a.1", "B1.a.2"),
         _stacked("8 7/16"), _stacked("8 1/2")),
    Case("an old knob hole to one side", "knob-off-centre", "note", A,
         _knobbed("14 1/2"), _knobbed("8 1/4")),
    Case("only 1 in screws for 3/4 + 3/4", "no-screw-fits", "stop", A,
         _stocked(screw_lengths=inches("1", "1 1/2")), _stocked(screw_lengths=inches("1 1/4"))),
    Case("neither through both nor in a recess", "no-knob-screw-fits", "stop", A,
         _stocked(knob_screw_lengths=inches("1 1/2")), _stocked(knob_screw_lengths=inches("1"))),
    Case("the knob's hole by a shelf pin", "hole-hits-shelf-pin", "note", A,
         _pinned("7"), _pinned("7 13/32")),
    Case("a box 1 1/8 in high", "no-place-for-hole", "stop", A,
         boxed(height=inch("1 1/8")), boxed(height=inch("1 3/16"))),
    Case("no slide under 12 in", "no-slide-fits", "stop", A, _deep("12 7/16"), _deep("12 1/2")),
    Case("a box of over 200 lb", "too-heavy", "stop", A, _wide("88"), _wide("66")),
    Case("a bottom slide of unknown height", "slide-not-measured", "check", A,
         _sliding(None), _sliding("1/2")),
    Case("a slot as deep as the jig", "slot-cuts-jig", "check", A,
         _sliding("15/16"), _sliding("7/8")),
    Case("a box wider than its opening", "box-does-not-fit", "stop", A,
         boxed(width=inch("15 1/16")), boxed(width=inch("15"))),
    Case("a box off to the right", "box-does-not-fit", "stop", A,
         boxed(side_clearance=inch("1 1/16")), boxed(side_clearance=inch("1"))),
    Case("a box higher than its opening", "box-does-not-fit", "stop", A,
         boxed(height=inch("27 1/16")), boxed(height=inch("27"))),
    Case("a box deeper than its cabinet", "box-does-not-fit", "stop", A,
         boxed(depth=inch("24 1/16")), boxed(depth=inch("24"))),
    Case("no box measured", "box-missing", "check", A,
         one(opening("pull-out")), boxed()),
]  # fmt: skip
