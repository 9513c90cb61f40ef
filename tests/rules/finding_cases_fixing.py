"""Cases of findings about screws, holes, knobs and jigs."""

from dataclasses import replace

from fronts.rules.box_facts import ShelfPins
from fronts.rules.kitchen import FrontFacts, Kitchen, KnobHole
from fronts.rules.practice import PRACTICE
from tests.rules.finding_cases import Case, boxed, one
from tests.rules.small_kitchens import BOX, STOCK, door, inch, inches, opening

A = ("B1.a",)
PIN = ShelfPins(inch("7"), inch("20 1/4"), inch("1"), 1, inch("1/4"))
SLIDE_WIDTH = inch("1 3/4")


def _stocked(**stock: object) -> Kitchen:
    of = opening("pull-out", boxes=(BOX,))
    return one(of, stock=replace(STOCK, **stock))  # type: ignore[arg-type]


def _pinned(across: str) -> Kitchen:
    return boxed(height=inch("21"), shelf_pins=(replace(PIN, x=inch(across)),))


def _sliding(height: str | None) -> Kitchen:
    tall = None if height is None else inch(height)
    return boxed(slide="bottom", slide_width=SLIDE_WIDTH, slide_height=tall)


def _knobbed(across: str) -> Kitchen:
    """A pull-out made from a door 16 in wide."""
    old = door(width="16", knob_hole=KnobHole(inch(across), inch("20"), inch("3/16")))
    of = opening("pull-out", front=FrontFacts(door_on_hand="D1"), boxes=(BOX,))
    return one(of, doors=[old])


def _careless(setting: str) -> Kitchen:
    """A #8 screw in its hole has 0.043 in; √(2 + n²)/64 in is to be expected, n 64ths set off."""
    rough = replace(PRACTICE, setting_error=inch(setting))
    return one(opening("pull-out", boxes=(BOX,)), practice=rough)


CASES = [
    Case("an old knob hole to one side", "knob-off-centre", "note", A,
         _knobbed("8 5/16"), _knobbed("8 1/4")),
    Case("only 1 in screws for 3/4 + 3/4", "no-screw-fits", "stop", A,
         _stocked(screw_lengths=inches("1", "1 1/2")), _stocked(screw_lengths=inches("1 1/4"))),
    Case("neither through both nor in a recess", "no-knob-screw-fits", "stop", A,
         _stocked(knob_screw_lengths=inches("1 1/2")), _stocked(knob_screw_lengths=inches("1"))),
    Case("the knob's hole by a shelf pin", "hole-hits-shelf-pin", "note", A,
         _pinned("7"), _pinned("7 13/32")),
    Case("a box 1 1/16 in high", "no-place-for-hole", "stop", A,
         boxed(height=inch("1 1/16")), boxed(height=inch("1 1/8"))),
    Case("a box 1 13/16 in high", "two-mounting-holes", "note", A,
         boxed(height=inch("1 13/16")), boxed(height=inch("1 7/8"))),
    Case("a bottom slide of unknown height", "slide-not-measured", "check", A,
         _sliding(None), _sliding("1/2")),
    Case("a slot as deep as the jig", "slot-cuts-jig", "check", A,
         _sliding("15/16"), _sliding("7/8")),
    Case("set off by up to 3/64", "may-not-come-true", "check", A,
         _careless("3/64"), _careless("1/32")),
]  # fmt: skip
