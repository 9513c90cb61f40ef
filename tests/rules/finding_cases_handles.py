"""Cases of findings about knobs, glass, low frames, what is lifted up, and what is bought."""

from dataclasses import replace
from fractions import Fraction

from fronts.rules.items import HandleItem, Hardware, LiftItem
from fronts.rules.kitchen import FrontFacts, HandlePlace, Kitchen
from tests.rules.finding_cases import Case, one, two
from tests.rules.small_kitchens import HALF_LAP, cabinet, inch, opening

A, BOTH = ("B1.a",), ("B1.a", "B2.a")
KNOB = HandleItem("K-1")


def _with_handle(code: str) -> Kitchen:
    return one(opening(front=FrontFacts(handle=code)), hardware=Hardware(handles=(KNOB,)))


def _at(x: str, *, glass: bool = False) -> FrontFacts:
    """A five-piece front with its knob so far from its left, 14 in up."""
    place = HandlePlace(inch(x), inch("14"))
    return FrontFacts(build="five-piece", glass=glass, handles=(place,))


def _beside(up: str) -> Kitchen:
    """A door whose knob is 3 in from its top, and one beside it whose knob is so high."""
    stated = FrontFacts(handles=(HandlePlace(inch("2"), inch(up)),))
    return two(cabinet(opening()), openings=(opening(front=stated),))


def _low(height: str) -> Kitchen:
    """A five-piece drawer front, 1 in higher than its opening."""
    return one(opening("drawer", height=inch(height), front=FrontFacts(build="five-piece")))


def _lifted(most: str) -> Kitchen:
    """A front that lifts up, 16 × 28 1/2 in, in a shop with one lift."""
    lift = LiftItem("L-1", Fraction(0), Fraction(most))
    return replace(one(opening("lift-up")), hardware=Hardware(lifts=(lift,)))


def _bought(style: str | None) -> Kitchen:
    """A five-piece door that is bought, of this style."""
    said = replace(HALF_LAP, door_style=style)
    return one(opening(front=FrontFacts(build="five-piece", made_by="bought")), said)


CASES = [
    Case("a pull that is in no list", "handle-unknown", "check", A,
         _with_handle("K-2"), _with_handle("K-1")),
    Case("just past the stile", "knob-in-thin-panel", "check", A,
         one(opening(front=_at("2 5/16"))), one(opening(front=_at("2 1/4")))),
    Case("over the glass", "knob-in-thin-panel", "check", A,
         one(opening(front=_at("2 5/16", glass=True))),
         one(opening(front=_at("2 1/4", glass=True)))),
    Case("a sixteenth off", "knobs-out-of-line", "note", BOTH,
         _beside("25 7/16"), _beside("25 1/2")),
    Case("narrow rails leave 15/16 in", "too-little-panel", "check", A,
         _low("2 15/16"), _low("3")),
    Case("bought, of no style", "no-door-style", "check", A,
         _bought(None), _bought("plain frame")),
    Case("3.043 kg·m on one lift", "lift-does-not-serve", "stop", A,
         _lifted("3.04"), _lifted("3.05")),
]  # fmt: skip
