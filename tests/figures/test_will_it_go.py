"""Will it go? In words: alike fronts together, the worst first, errors never said too small."""

from dataclasses import replace
from fractions import Fraction

import pytest

from fronts.figures.will_it_go import OutlookLine, will_it_go
from fronts.rules.kitchen import Kitchen
from fronts.rules.practice import PRACTICE
from fronts.rules.schedule import schedule
from tests.drawings.kitchens import demo
from tests.rules.small_kitchens import BOX, beside, cabinet, inch, kitchen, opening

PULL_OUT = cabinet(opening("pull-out", boxes=(BOX,)))


def lines(of: Kitchen) -> tuple[OutlookLine, ...]:
    """What is said of the kitchen's fronts."""
    return will_it_go(schedule(of)).lines


def test_a_pull_out_and_a_door_as_is_usual() -> None:
    """√3/64 = 0.0271 in, up to 2/64; 3/64 at worst; (0.250 − 0.164)/2 = 0.043 in of play.

    The door's hinge moves 2 mm = 0.0787 in. 0.0469 − 0.043 = 0.0039 in, up to 1/64.
    """
    pull_out, door = lines(kitchen(PULL_OUT, beside(cabinet(opening()))))

    assert pull_out == OutlookLine(
        fronts=("B1.a",), moved_by="screws", expected="1/32", worst="3/64", play="≈3/64",
        answer="should go; at worst 1/64 too far", doubtful=False,
    )  # fmt: skip
    assert door == replace(
        pull_out, fronts=("B2.a",), moved_by="hinges", play="≈5/64", answer="goes"
    )


def test_millimetres_are_rounded_up_to_a_tenth() -> None:
    """√3 · 0.5 = 0.866 mm, and 1.5; (6 − 4)/2 = 1 mm of play."""
    half = Fraction(1, 2)
    metric = replace(
        PRACTICE, hole_diameter=Fraction(6), screw_diameter=Fraction(4), measuring_error=half,
        cutting_error=half, setting_error=half,
    )  # fmt: skip

    (line,) = lines(kitchen(PULL_OUT, practice=metric, unit="mm"))

    assert (line.expected, line.worst, line.play) == ("0.9", "1.5", "1")
    assert line.answer == "should go; at worst 0.5 too far"


@pytest.mark.parametrize(
    ("height", "play"),
    [("2 mm", "≈5/64"), ("1.5 mm", "≈1/16 up and down"), ("3 mm", "≈5/64 sideways")],
)  # fmt: skip
def test_the_tighter_way_is_said(height: str, play: str) -> None:
    """A hinge that moves a door 2 mm sideways, and more or less in height."""
    practice = replace(PRACTICE, hinge_adjust_height=inch(height))

    (line,) = lines(kitchen(cabinet(opening()), practice=practice))

    assert line.play == play


def test_what_needs_no_play_says_so() -> None:
    """A fixed front, a panel of an appliance, and a drawer whose box nobody measured."""
    found = [
        lines(kitchen(cabinet(opening(closed_by))))[0]
        for closed_by in ("fixed", "appliance-panel", "drawer")
    ]

    assert [line.answer for line in found] == [
        "set by hand before it is screwed: needs no play",
        "its machine’s own feet and rails set it",
        "not known before its box is",
    ]
    assert {line.play for line in found} == {""}


def test_the_worst_comes_first_and_is_counted() -> None:
    """Every front of the demo, in one line each; the one that leans is told of."""
    planned = schedule(demo()[0])
    found = will_it_go(planned)

    assert sorted(label for line in found.lines for label in line.fronts) == sorted(
        each.label for each in planned.fronts
    )
    assert found.lines[0].doubtful
    assert found.lines[0].answer.endswith("of it as the opening leans or tapers")
    assert found.summary.startswith("1 may not come true, ")
    counts = [int(each.split()[0]) for each in found.summary.split(", ")]
    assert sum(counts) == len(planned.fronts)
    assert found.doubtful


def test_a_kitchen_without_fronts() -> None:
    """Nothing is said of nothing."""
    found = will_it_go(schedule(kitchen()))

    assert (found.lines, found.summary, found.doubtful) == ((), "", False)
