"""Cases of findings about panels of machines, fronts that tip out, and fronts that open upwards.

A panel's limits are its machine's own; a tray is 2 1/2 in deep, and a front that opens upwards
comes up by its height at most (common practice, no source).
"""

from dataclasses import replace
from fractions import Fraction

from fronts.rules.items import Hardware, LiftItem
from fronts.rules.kitchen import FrontFacts, Kitchen
from fronts.rules.machine_facts import Machine
from fronts.rules.schedule import schedule
from fronts.rules.wall_facts import Thing
from tests.rules.finding_cases import Case, one
from tests.rules.small_kitchens import cabinet, inch, kitchen, opening

A = ("B1.a",)


def panel(machine: Machine) -> Kitchen:
    """A panel 16 × 28 1/2 in on a machine that takes this."""
    return one(opening("appliance-panel", front=FrontFacts(machine=machine)))


WEIGHT = schedule(panel(Machine())).fronts[0].weight_kg
HAIR = Fraction(1, 1000)


def tipping(depth: str = "24", room: str | None = None) -> Kitchen:
    """A front that tips out before a sink, in a cabinet so deep."""
    measured = None if room is None else inch(room)
    of = opening("tip-out", front=FrontFacts(room_behind=measured))
    return kitchen(cabinet(of, depth=inch(depth)))


def lifting(up: str, rise: str | None = None, depth: str = "24") -> Kitchen:
    """A front from 5 to 33 1/2 in above the floor, and a door above it whose cabinet is so high.

    That door's lower edge is an inch above its cabinet's.
    """
    first = cabinet(opening("lift-up"))
    upper = cabinet(opening(), label="W1", kind="wall", y=inch(up), depth=inch(depth))
    lift = LiftItem("L-1", Fraction(0), Fraction(50), rise=None if rise is None else Fraction(rise))
    return replace(kitchen(first, upper), hardware=Hardware(lifts=(lift,)))


def under(up: str, depth: str | None = "30") -> Kitchen:
    """The same front with a thing so high above the floor, so deep."""
    hood = Thing(
        "H1", "appliance", "North", inch("30"), x=inch("0"), y=inch(up), height=inch("10"),
        depth=None if depth is None else inch(depth), run="upper",
    )  # fmt: skip
    return kitchen(cabinet(opening("lift-up")), others=(hood,))


CASES = [
    Case("nobody read the booklet", "machine-unknown", "check", A,
         panel(Machine()), panel(Machine(least_width=inch("10")))),
    Case("narrower than the least", "panel-past-machine", "stop", A,
         panel(Machine(least_width=inch("16 1/16"))), panel(Machine(least_width=inch("16")))),
    Case("wider than the most", "panel-past-machine", "stop", A,
         panel(Machine(most_width=inch("15 15/16"))), panel(Machine(most_width=inch("16")))),
    Case("lower than the least", "panel-past-machine", "stop", A,
         panel(Machine(least_height=inch("28 9/16"))), panel(Machine(least_height=inch("28 1/2")))),
    Case("higher than the most", "panel-past-machine", "stop", A,
         panel(Machine(most_height=inch("28 7/16"))), panel(Machine(most_height=inch("28 1/2")))),
    Case("a gram too heavy", "panel-too-heavy", "stop", A,
         panel(Machine(most_kg=WEIGHT - HAIR)), panel(Machine(most_kg=WEIGHT))),
    Case("a cabinet shallower than the tray", "no-room-for-tray", "stop", A,
         tipping("2 11/16"), tipping("2 3/4")),
    Case("the sink is near", "no-room-for-tray", "check", A,
         tipping(room="2 7/16"), tipping(room="2 1/2")),
    Case("a door hangs in its swing", "blocked-above", "check", A,
         lifting("60 15/16"), lifting("61")),
    Case("half its height, as its lift says", "blocked-above", "check", A,
         lifting("46 11/16", "50"), lifting("46 3/4", "50")),
    Case("a door farther back than its face", "blocked-above", "check", A,
         lifting("50", depth="23 1/4"), lifting("50", depth="23 3/16")),
    Case("a hood in its swing", "blocked-above", "check", A, under("61 15/16"), under("62")),
    Case("a hood that stands out as far", "blocked-above", "check", A,
         under("50", "24 1/16"), under("50", "24")),
    Case("a hood of unknown depth", "blocked-above", "check", A,
         under("50", None), under("62", None)),
    Case("the ceiling is nowhere in the job", "room-above", "note", A,
         one(opening("lift-up")), one(opening("door", hinged="left"))),
]  # fmt: skip
