"""Will it go? Errors stacked both ways, against the play, worked by hand beside each row."""

import math
from dataclasses import replace
from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.jobfile import read
from fronts.rules.error_results import Errors, ErrorToExpect, OneWay
from fronts.rules.items import Adjustment, Hardware, HingeItem
from fronts.rules.kinds import ClosedBy
from fronts.rules.kitchen import CHOOSE, FrontFacts, Kitchen, Measured
from fronts.rules.lengths import INCH, Mm
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Standard
from fronts.rules.standards import EMPTY
from tests.kitchen_files import SAMPLES
from tests.rules.laws import KITCHEN_LAW, LAW
from tests.rules.small_kitchens import (
    BOX,
    all_round,
    cabinet,
    door,
    findings_of,
    inch,
    kitchen,
    opening,
)
from tests.strategies import kitchens

CODE = "may-not-come-true"
INSET = Standard(mount="inset", inset_gap=all_round("1/8"))
FIXTURES = Path(__file__).parents[2] / "fixtures"
ORDINARY = [*SAMPLES, *sorted(FIXTURES.glob("*.job.json"))]
MICRON = Fraction(1, 1000)
thousandths = st.integers(0, 5000).map(lambda number: Fraction(number, 1000))


def closing(closed_by: ClosedBy, standard: Standard = EMPTY, **said: Any) -> Kitchen:
    """A cabinet with one opening closed so."""
    boxes = [BOX] if closed_by == "pull-out" else []
    return kitchen(cabinet(opening(closed_by, standard=standard, boxes=boxes, **said)))


def works(of: Kitchen, **numbers: str) -> Kitchen:
    """The kitchen of a shop with these numbers, in inches."""
    own: dict[str, Any] = {name: inch(number) for name, number in numbers.items()}
    return replace(of, practice=replace(of.practice, **own))


def only_error(of: Kitchen) -> ErrorToExpect:
    """What is to be expected of the kitchen's only front."""
    (found,) = schedule(of).errors
    return found


def test_both_stacks_of_three_tolerances() -> None:
    """F. Scholz, Tolerance Stack Analysis Methods (1995): T₁ + T₂ + T₃, and √(T₁² + T₂² + T₃²).

    Of 1, 2 and 2 tenths these are 5 and 3 tenths: 1 + 4 + 4 = 9.
    """
    way = OneWay(Errors(Mm(1, 10), Mm(2, 10), Mm(2, 10)), Mm(0), Mm(3, 10))

    assert way.worst == Mm(1, 2)
    assert way.expected(MICRON) == Mm(3, 10)
    assert (way.goes_at_worst, way.goes_as_expected) == (False, True)


def test_a_known_shift_is_added_as_it_is() -> None:
    """Scholz stacks shifts of the mean arithmetically on both: 5 + 4 and 3 + 4 tenths."""
    way = OneWay(Errors(Mm(1, 10), Mm(2, 10), Mm(2, 10)), Mm(4, 10), Mm(7, 10))

    assert (way.worst, way.expected(MICRON)) == (Mm(9, 10), Mm(7, 10))
    assert way.goes_as_expected
    assert not replace(way, play=Mm(7, 10) - Mm(1, 10**12)).goes_as_expected
    assert replace(way, play=Mm(9, 10)).goes_at_worst
    assert not replace(way, play=Mm(9, 10) - Mm(1, 10**12)).goes_at_worst


@LAW
@given(thousandths, thousandths, thousandths, thousandths, thousandths)
def test_the_comparison_is_that_of_python_s_hypot(
    one: Mm, two: Mm, three: Mm, known: Mm, play: Mm
) -> None:
    """`math.hypot` to a billionth; and neither figure ever says less than there is."""
    way = OneWay(Errors(one, two, three), known, play)
    root = math.hypot(*map(float, (one, two, three))) + float(known)

    if abs(root - float(play)) > 1e-9:
        assert way.goes_as_expected == (root < play)
    assert way.expected(MICRON) >= root - 1e-9
    assert way.expected(MICRON) <= root + 1e-9 + float(MICRON)
    assert way.goes_as_expected or not way.goes_at_worst


# A #8 screw in a hole of 1/4 in moves (0.250 − 0.164)/2 = 0.043 in each way; a hinge 2 mm.
OUTLOOKS: list[tuple[str, ClosedBy, dict[str, str], str]] = [
    # 1/64 three times: √3/64 = 0.0271, 3/64 = 0.0469.
    ("a pull-out as is usual", "pull-out", {}, "should-go"),
    # 2 mm = 0.0787 in.
    ("a door as is usual", "door", {}, "goes"),
    # √(1 + 1 + 1/4)/64 = 0.0234, 2.5/64 = 0.0391.
    ("set closer", "pull-out", {"setting_error": "1/128"}, "goes"),
    # √(4 + 1 + 1)/64 = 0.0383.
    ("measured to 1/32", "pull-out", {"measuring_error": "1/32"}, "should-go"),
    # √(4 + 4 + 1)/64 = 0.0469.
    ("measured and set to 1/32", "pull-out",
     {"measuring_error": "1/32", "setting_error": "1/32"}, "may-not-come-true"),
    # √(9 + 9 + 9)/64 = 0.0812.
    ("a door, all to 3/64", "door",
     dict.fromkeys(("measuring_error", "cutting_error", "setting_error"), "3/64"),
     "may-not-come-true"),
    ("a fixed front", "fixed", {"setting_error": "1"}, "set-by-hand"),
    ("a panel of an appliance", "appliance-panel", {"setting_error": "1"}, "on-machine"),
    ("a drawer whose box nobody measured", "drawer", {"setting_error": "1"}, "no-box-yet"),
    ("a door that lifts up", "lift-up", {}, "goes"),
]  # fmt: skip


@pytest.mark.parametrize(
    ("closed_by", "errors", "outlook"),
    [row[1:] for row in OUTLOOKS], ids=[row[0] for row in OUTLOOKS],
)  # fmt: skip
def test_what_moves_it(closed_by: ClosedBy, errors: dict[str, str], outlook: str) -> None:
    of = works(closing(closed_by), **errors)

    assert only_error(of).outlook == outlook
    assert len(findings_of(of, CODE)) == (outlook == "may-not-come-true")


def test_larger_holes_help() -> None:
    """A hole of 5/16 in: (0.3125 − 0.164)/2 = 0.074 in, more than 3/64 = 0.0469 in."""
    errors = {"measuring_error": "1/32", "setting_error": "1/32"}
    of = works(closing("pull-out"), **errors, hole_diameter="5/16")

    assert only_error(of).outlook == "should-go"


def test_a_front_that_keeps_its_size_is_not_cut() -> None:
    """A door on hand as large as the opening takes: only measuring and setting are left."""
    chosen = closing("pull-out", front=FrontFacts(door_on_hand=CHOOSE))
    as_it_is, sawn = (
        only_error(replace(chosen, doors_on_hand=(door(width=width),))).ways[0].errors
        for width in ("16", "16 1/2")
    )

    assert as_it_is == Errors(inch("1/64"), Mm(0), inch("1/64"))
    assert sawn == Errors(*[inch("1/64")] * 3)


def test_what_a_hinge_takes_up_already_is_gone() -> None:
    """A lap of 1/2 in on a hinge that makes 12 mm: 0.7 mm of its 2 mm, upright untouched."""
    item = HingeItem("H-1", "overlay", overlays=(Mm(12),), adjust=Adjustment(Mm(2), Mm(3)))
    of = replace(closing("door"), hardware=Hardware(hinges=(item,)))

    sideways, upright = only_error(of).ways
    assert sideways.play == 2 - (INCH / 2 - 12)
    assert upright.play == 3


# Of an opening 15 × 27 1/2 whose front of 14 3/4 × 27 1/4 lies inside: what lean and taper ask
# for is half of what a side's ends differ by, over 27 1/4 in of 27 1/2 (14 3/4 of 15).
OUT_OF_TRUE: list[tuple[str, Measured, Fraction, Fraction]] = [
    ("true", Measured(), Fraction(0), Fraction(0)),
    # Ends differ by 1/16 of the 1/8 in, no more than what is seen.
    ("a taper that nobody sees", Measured(width_top=inch("15 1/8"), width_bottom=inch("15")),
     Fraction(0), Fraction(0)),
    # 1/8 in from end to end of a side, 1/16 of it either way.
    ("a taper in width", Measured(width_top=inch("15 1/4"), width_bottom=inch("15")),
     Fraction(1, 16) * Fraction(109, 110), Fraction(0)),
    # Over 109 of 110 parts of the height just what is not seen yet.
    ("a taper at the limit", Measured(width_top=inch("15") + Fraction(110, 8 * 109) * INCH,
     width_bottom=inch("15")), Fraction(0), Fraction(0)),
    ("a taper both ways", Measured(width_top=inch("15"), width_bottom=inch("15 1/4"),
     height_left=inch("27 3/4"), height_right=inch("27 1/2")),
     Fraction(1, 16) * Fraction(109, 110), Fraction(1, 16) * Fraction(59, 60)),
    ("a taper in height", Measured(height_left=inch("27 1/2"), height_right=inch("27 3/4")),
     Fraction(0), Fraction(1, 16) * Fraction(59, 60)),
]  # fmt: skip


@pytest.mark.parametrize(
    ("measured", "aside", "up"),
    [row[1:] for row in OUT_OF_TRUE], ids=[row[0] for row in OUT_OF_TRUE],
)  # fmt: skip
def test_an_opening_out_of_true(measured: Measured, aside: Fraction, up: Fraction) -> None:
    """Only where the front lies in it: what laps hides it."""
    inside = only_error(closing("door", INSET, measured=measured))
    lapping = only_error(closing("door", measured=measured))

    assert [way.known for way in inside.ways] == [aside * INCH, up * INCH]
    assert [way.known for way in lapping.ways] == [0, 0]


def _leaning(by: Mm, closed_by: ClosedBy = "pull-out") -> Kitchen:
    """Diagonals near 31 5/16 in: their squares differ by four widths times the lean."""
    longer = Mm(796)
    shorter = Mm(round(math.sqrt(longer**2 - 4 * inch("15") * by) * 10**4), 10**4)
    taken = Measured(diagonal_1=longer, diagonal_2=shorter)
    return closing(closed_by, INSET, measured=taken)


def test_a_lean_that_the_screws_cannot_follow() -> None:
    """2.4 mm over its height: 1.2 mm of it either way, and 1.09 mm of play. Of 1.5: not seen."""
    (told,) = findings_of(_leaning(Mm(24, 10)), CODE)

    assert told.where == ("B1.a",)
    assert "as the opening leans or tapers" in told.message
    assert findings_of(_leaning(Mm(15, 10)), CODE) == []
    assert findings_of(_leaning(Mm(24, 10), "door"), CODE) == []


def test_an_opening_that_is_told_of_is_not_told_of_again() -> None:
    """A taper of 1/4 in has a finding of its own, with both ways out; the figures stay."""
    taken = Measured(height_left=inch("27 1/2"), height_right=inch("27 3/4"))
    of = closing("pull-out", INSET, measured=taken)

    assert only_error(of).outlook == "may-not-come-true"
    assert [each.where for each in findings_of(of, "opening-tapers")] == [("B1.a",)]
    assert findings_of(of, CODE) == []

    careless = works(of, setting_error="1/16")
    assert [each.where for each in findings_of(careless, CODE)] == [("B1.a",)]


def test_alike_fronts_are_told_of_together() -> None:
    """Six drawers, four of them by name; all of them are where it is."""
    boxes = [replace(BOX, height=inch("3"))] * 6
    of = opening("drawers", count=6, boxes=boxes)

    (told,) = findings_of(works(kitchen(cabinet(of)), setting_error="1/16"), CODE)

    assert told.level == "check"
    assert told.where == tuple(f"B1.a.{number}" for number in range(1, 7))
    # √(1 + 1 + 16)/64 = 0.0663, up to 5/64; 1/64 + 1/64 + 1/16 = 3/32.
    assert told.message == (
        "B1.a.1, B1.a.2, B1.a.3, B1.a.4 and 2 more may not come true: expect 5/64 in off, at "
        "worst 3/32 in, and the screws in their holes move a front by ≈3/64 in. What helps: "
        "larger mounting holes in the box, cutting closer, or measuring again at both ends."
    )


@pytest.mark.parametrize("file", ORDINARY, ids=lambda file: file.name)
def test_ordinary_kitchens_go(file: Path) -> None:
    """By the usual numbers no front of theirs is in doubt that is not told of as it is."""
    found = schedule(read(file.read_text(encoding="utf-8")))

    assert found.fronts
    assert [each for each in found.findings if each.code == CODE] == []
    assert {each.front for each in found.errors} == {each.label for each in found.fronts}


@KITCHEN_LAW
@given(kitchens())
def test_every_front_has_its_errors(of: Kitchen) -> None:
    """In order; a finding names only fronts that may not come true, and each at most once."""
    found = schedule(of)
    doubtful = {each.front for each in found.errors if each.outlook == "may-not-come-true"}
    named = [label for each in found.findings if each.code == CODE for label in each.where]

    assert [each.front for each in found.errors] == [each.label for each in found.fronts]
    assert set(named) <= doubtful
    assert len(set(named)) == len(named)
