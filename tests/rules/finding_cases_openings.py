"""Cases of findings about an opening, its front, and what closes it."""

from dataclasses import replace
from fractions import Fraction

from fronts.rules.kitchen import FrontFacts, Kitchen, Measured, Point
from fronts.rules.practice import PRACTICE
from fronts.rules.standard_keys import Standard
from tests.rules.finding_cases import Case, above, lapping, one, two, with_door
from tests.rules.small_kitchens import STOCK, all_round, cabinet, door, inch, kitchen, opening

INSET = Standard(mount="inset", inset_gap=all_round("3/32"))
A = ("B1.a",)


def _leaning(first: str, second: str, standard: Standard | None = None) -> Kitchen:
    taken = Measured(diagonal_1=inch(first), diagonal_2=inch(second))
    return one(opening(measured=taken), standard, step=inch("1/32"))


def _stack(top: str) -> Kitchen:
    return one(opening("drawers", count=2, heights=(inch(top), None)))


def _fixed(*heights: str) -> Kitchen:
    """Two drawer fronts where the rule leaves 28 in, less the gap between them."""
    fixed = tuple(inch(each) for each in heights)
    return one(opening("drawers", count=2, heights=fixed, height=inch("27")))


def _wide(width: str, **wish: object) -> Kitchen:
    return one(opening(width=inch(width), front=FrontFacts(**wish)))  # type: ignore[arg-type]


def _wished(**wish: object) -> Kitchen:
    return one(opening(front=FrontFacts(**wish)))  # type: ignore[arg-type]


def _high(height: str, **wish: object) -> Kitchen:
    of = opening(height=inch(height), front=FrontFacts(**wish))  # type: ignore[arg-type]
    return kitchen(cabinet(of, height=inch("110"), kind="tall"))


def _beech(humidity: int) -> Kitchen:
    of = opening(width=inch("23"), front=FrontFacts(material="beech"))
    return kitchen(
        cabinet(of, width=inch("26")),
        standard=Standard(mount="inset", inset_gap=all_round("1/16")),
        practice=replace(PRACTICE, humidity_high=Fraction(humidity)),
    )


def _named(*labels: str) -> Kitchen:
    first = cabinet(opening(front=FrontFacts(door_on_hand=labels[0])))
    other = opening(front=FrontFacts(door_on_hand=labels[1]))
    return replace(two(first, openings=(other,)), doors_on_hand=(door("D1"), door("D2")))


def _chosen(width: str) -> Kitchen:
    of = opening(front=FrontFacts(door_on_hand="choose"))
    return one(of, doors=[door(width=width)])


def _bored(hinged: str) -> Kitchen:
    old = door(hinge_bores=(Point(inch("7/8"), inch("3 1/2")),))
    of = opening(front=FrontFacts(door_on_hand="D1"), hinged=hinged)
    return one(of, doors=[old])


def _laps_up(by: str) -> Kitchen:
    lower = opening("fixed", standard=lapping("1/2", "1/2", by, "1/2"))
    return above(lower, "1 1/2", standard=INSET)


CASES = [
    Case("laps across, falls in upwards", "mixed-overlay-and-inset", "stop", A,
         one(with_door("15 1/2", "27")), one(with_door("15 1/2", "27 1/2"))),
    Case("1/32 inside", "gap-too-small", "stop", A,
         one(with_door("14 15/16", "27")), one(with_door("14 7/8", "27"))),
    Case("inset and racked by over 1/16", "opening-out-of-square", "stop", A,
         _leaning("31 3/8", "31 5/16", INSET), _leaning("31 11/32", "31 5/16", INSET)),
    Case("a little racked", "opening-leans", "note", A,
         _leaning("31 11/32", "31 5/16", INSET), _leaning("31 5/16", "31 5/16", INSET)),
    Case("racked by more than the lap hides", "lap-runs-out", "check", A,
         _leaning("31 27/32", "30 7/8"), _leaning("31 13/16", "30 7/8")),
    Case("diagonals longer than the sides allow", "measure-again", "check", A,
         _leaning("31 19/32", "31 19/32"), _leaning("31 9/16", "31 9/16")),
    Case("nobody said how far", "no-overlay-rule", "stop", A,
         one(opening(), Standard()), one(opening(), INSET)),
    Case("nothing left to share", "no-room-for-front", "stop", A,
         _stack("28 3/8"), _stack("28 5/16")),
    Case("laps over an inset opening", "laps-next-opening", "stop", ("B1.a", "B1.b"),
         _laps_up("1 9/16"), _laps_up("1 1/2")),
    Case("two openings in one place", "openings-overlap", "stop", ("B1.a", "B1.b"),
         above(opening(), "-1/16"), above(opening(), "0")),
    Case("an old bore on the free side", "bore-shows", "check", A,
         _bored("right"), _bored("left")),
    Case("a slab of 61.8 lb", "too-heavy", "stop", A,
         _wished(material="glass", thickness=inch("1 1/2")),
         _wished(material="glass", thickness=inch("1 7/16"))),
    Case("100 1/16 in high", "too-tall", "stop", A, _high("99 1/16"), _high("99")),
    Case("1/16 too narrow", "no-door-serves", "check", A, _chosen("15 15/16"), _chosen("16")),
    Case("one door, two fronts", "door-used-twice", "stop", ("B1.a", "B2.a"),
         _named("D1", "D1"), _named("D1", "D2")),
    Case("beech at 40 % humidity", "gap-closes", "stop", A, _beech(40), _beech(39)),
    Case("a wood nobody knows", "material-unknown", "check", A,
         _wished(material="purpleheart"), _wished(material="cherry")),
    # Architectural Woodwork Standards, 1st ed. 2009: over 60 in
    Case("60 1/16 in high", "middle-rail", "note", A,
         _high("59 1/16", build="five-piece"), _high("59", build="five-piece")),
    Case("a frame with no room for its panel", "no-room-for-panel", "stop", A,
         _wide("3 1/2", build="five-piece"), _wide("3 9/16", build="five-piece")),
    Case("fixed heights past the rule", "heights-past-rule", "stop", A,
         _fixed("14", "13 15/16"), _fixed("14", "13 7/8")),
    Case("not a thread", "thread-unknown", "check", (),
         one(opening(), stock=replace(STOCK, knob_thread="coarse")), one(opening())),
    Case("no knob screw for a door", "knob-screw-to-order", "check", A,
         one(opening(), stock=replace(STOCK, knob_screw_lengths=(inch("7/8"),))),
         one(opening(), stock=replace(STOCK, knob_screw_lengths=(inch("15/16"),)))),
]  # fmt: skip
