"""Screws: diameters against the standards, lengths against the check values of the trade."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.face import Face
from fronts.rules.lengths import INCH, Mm
from fronts.rules.practice import PRACTICE
from fronts.rules.screws import (
    KnobChoice,
    diameter_of_number,
    knob_screw,
    machine_screw,
    mounting_screw,
    play,
    screw_name,
    thread_diameter,
)
from tests.rules.laws import LAW
from tests.rules.small_kitchens import all_round, inch, inches

NUMBERED = [
    # number, in, mm
    (4, "0.112", "2.845"), (5, "0.125", "3.175"), (6, "0.138", "3.505"), (7, "0.151", "3.835"),
    (8, "0.164", "4.166"), (9, "0.177", "4.496"), (10, "0.190", "4.826"), (12, "0.216", "5.486"),
    (14, "0.242", "6.147"),
]  # fmt: skip


@pytest.mark.parametrize(("number", "inches_", "mm"), NUMBERED, ids=[f"#{n[0]}" for n in NUMBERED])
def test_numbered_diameters(number: int, inches_: str, mm: str) -> None:
    """Source: ASME B18.6.1 wood screws, nominal size 0.060 + 0.013·N in."""
    assert diameter_of_number(number) == Fraction(inches_) * INCH
    assert round(float(diameter_of_number(number)), 3) == float(mm)


THREADS = [
    ("8-32", "4.1656", "ASME B1.1: 0.1640 in"),
    ("#8-32", "4.1656", "ASME B1.1, said with its mark"),
    ("10-24", "4.826", "ASME B1.1: 0.1900 in"),
    ("6-32", "3.5052", "ASME B1.1: 0.1380 in"),
    ("1/4-20", "6.35", "ASME B1.1"),
    ("M4", "4", "ISO 261 coarse, from memory"),
    ("m 4", "4", "ISO 261, said loosely"),
    ("M3.5", "3.5", "ISO 261, from memory"),
]


@pytest.mark.parametrize(
    ("thread", "mm", "source"), THREADS, ids=[f"{t}: {s}" for t, _, s in THREADS]
)
def test_thread_diameters(thread: str, mm: str, source: str) -> None:
    """Major diameters as the thread is said."""
    assert source
    assert thread_diameter(thread) == Fraction(mm)


@pytest.mark.parametrize("thread", ["", "wood", "M", "M0", "1/0-20", "-32", "0/4-20", "#"])
def test_what_is_no_thread(thread: str) -> None:
    """It has no diameter, and nothing fails."""
    assert thread_diameter(thread) is None


STOCKED = inches("3/4", "1", "1 1/4", "1 1/2")
SKIN, BITE = inch("1/8"), inch("3/8")
MOUNTING = [
    # Check value 3/4 + 3/4 -> 1 1/4: common practice, no source; the rest by hand from the rule.
    ("3/4", "3/4", "1 1/4"),
    ("5/8", "3/4", "1 1/4"),
    ("5/8", "1/2", "1"),
    ("1/2", "3/4", "1"),
    ("1/2", "5/8", "1"),
    ("3/4", "7/8", "1 1/2"),
    ("3/4", "1/2", None),
    ("3/4", "1/4", None),
    ("1 1/4", "3/4", None),
]


@pytest.mark.parametrize(
    ("box", "front", "length"), MOUNTING, ids=[f"{b} box, {f} front" for b, f, _ in MOUNTING]
)
def test_mounting_screw(box: str, front: str, length: str | None) -> None:
    """The longest stocked that leaves the skin, if it bites."""
    found = mounting_screw(STOCKED, inch(box), inch(front), SKIN, BITE)

    assert found == (None if length is None else inch(length))


KNOB = [("3/4", "1"), ("7/8", "1 1/16"), ("13/16", "1"), ("1", "1 1/4"), ("1 5/16", None)]


@pytest.mark.parametrize(("stack", "length"), KNOB, ids=[f"a stack of {s}" for s, _ in KNOB])
def test_the_shortest_screw_that_engages_a_knob(stack: str, length: str | None) -> None:
    """An 8-32 engages 0.164 in and goes 1/2 in deep; 1, 1 1/16 and 1 1/4 in are stocked."""
    stocked = inches("1 1/4", "1", "1 1/16")

    found = machine_screw(stocked, inch(stack), inch("0.164"), inch("1/2"))

    assert found == (None if length is None else inch(length))


thickness = st.integers(8, 32).map(lambda n: n * INCH / 32)
stock = st.lists(st.integers(8, 64).map(lambda n: n * INCH / 16), max_size=6).map(tuple)


@LAW
@given(stock, thickness, thickness)
def test_no_longer_screw_would_do(stocked: tuple[Mm, ...], box: Mm, front: Mm) -> None:
    """It never comes through, always bites, and no longer stocked one would do."""
    found = mounting_screw(stocked, box, front, SKIN, BITE)
    right = [each for each in stocked if box + BITE <= each <= box + front - SKIN]

    assert found == (max(right) if right else None)


KNOB_STOCK = inches("1", "1 3/4")
D_8_32, DEPTH = Fraction("4.1656"), inch("1/2")
KNOBS = [
    ("3/4", None, KnobChoice(inch("1"), through_box=False, recess=False)),
    ("3/4", "3/4", KnobChoice(inch("1 3/4"), through_box=True, recess=False)),
    ("3/4", "1/2", KnobChoice(inch("1 3/4"), through_box=True, recess=False)),
    ("3/4", "1", KnobChoice(inch("1"), through_box=False, recess=True)),
    ("13/16", "1", KnobChoice(inch("1"), through_box=False, recess=True)),
    ("7/8", "1", None),
]


@pytest.mark.parametrize(
    ("front", "box", "choice"),
    KNOBS,
    ids=["front alone", "3/4 + 3/4", "3/4 + 1/2", "recess", "recess, 13/16", "neither"],
)
def test_knob_screw(front: str, box: str | None, choice: KnobChoice | None) -> None:
    """Through both where it can; else the recess; engagement of one diameter.

    Source of the engagement: 1.0 × D in steel and hard brass, an equipment specification's
    fastener clause; 8-32: 0.164 in. The rest: common practice, no source.
    """
    behind = None if box is None else inch(box)

    assert knob_screw(KNOB_STOCK, slab(front), "slab", behind, D_8_32, DEPTH, PRACTICE) == choice


def slab(thickness: str) -> Face:
    """A slab front of this thickness."""
    return Face(inch("16"), inch("6"), inch(thickness))


def test_through_a_panel_the_screw_crosses_the_void_behind_it() -> None:
    """1/4 in of panel in a front of 3/4 in stands 1/4 in back: 1/4 + 1/4 + 1/2 in to the knob.

    A panel in the middle of its frame's thickness: common practice, no source.
    """
    face = Face(inch("16"), inch("20"), inch("3/4"), True, all_round("2"), inch("1/4"))

    stacks = [
        (through, face.stack(through, box))
        for through in ("stile", "panel")
        for box in (None, inch("1/2"))
    ]
    assert tuple(stack for _, stack in stacks) == inches("3/4", "1 1/4", "1/4", "1")


def test_no_recess_in_a_thin_box_front() -> None:
    """A recess of 1/4 in wants 1/8 in behind it: 3/8 in will do, 11/32 in will not."""
    short = inches("1")

    thick = knob_screw(short, slab("3/4"), "slab", inch("3/8"), D_8_32, DEPTH, PRACTICE)
    thin = knob_screw(short, slab("3/4"), "slab", inch("11/32"), D_8_32, DEPTH, PRACTICE)

    assert thick == KnobChoice(inch("1"), through_box=False, recess=True)
    assert thin is None


def test_engaged_by_one_diameter_at_least() -> None:
    """An 8-32 in 0.164 in of thread is 5.25 turns; a hair less is not taken (arithmetic)."""
    stack = inch("1") - D_8_32

    assert machine_screw(inches("1"), stack, D_8_32, DEPTH) == inch("1")
    assert machine_screw(inches("1"), stack + Fraction(1, 1000), D_8_32, DEPTH) is None
    assert Fraction("5.248") == D_8_32 / (INCH / 32)


def test_does_not_bottom_in_the_knob() -> None:
    """Longer than the stack and the knob's thread together is too long."""
    assert machine_screw(inches("1 3/4"), inch("1 1/4"), D_8_32, DEPTH) == inch("1 3/4")
    assert machine_screw(inches("1 3/4"), inch("1 3/16"), D_8_32, DEPTH) is None


def test_play_of_a_number_8_in_a_quarter_inch_hole() -> None:
    """(0.250 - 0.164)/2 = 0.043 in: common practice, no source; #8 by ASME B18.6.1."""
    assert play(inch("1/4"), diameter_of_number(8)) == Fraction("0.043") * INCH
    assert PRACTICE.screw_diameter == diameter_of_number(8)


@pytest.mark.parametrize(
    ("diameter", "name"),
    [
        (Fraction(164, 1000) * INCH, "#8"),  # ASME B18.6.1: 0.060 + 0.013 × 8 in
        (Fraction(138, 1000) * INCH, "#6"),  # ASME B18.6.1
        (Mm(4), "M4"),  # as ISO 261 writes it
        (Mm("3.5"), "M3.5"),
        (Mm("4.2"), "⌀ 4.2 mm"),
    ],
)
def test_a_mounting_screw_is_called_by_its_own_size(diameter: Mm, name: str) -> None:
    """By number, in millimetres, or as it measures."""
    assert screw_name(diameter) == name
