"""What is learned, in words: signs, marks of a rule, and what to change."""

from dataclasses import replace
from typing import get_args

import pytest

from fronts.figures.learned import GroupLine, LearnedShown, SampleLine, learned_shown
from fronts.rules.fits import Gaps
from fronts.rules.hanging_method import HangingMethod
from fronts.rules.kinds import Unit
from fronts.rules.learned import Fitted, what_is_learned
from fronts.rules.lengths import Mm
from fronts.rules.practice import PRACTICE
from tests.rules.test_learned import askew, fitted

USUAL = PRACTICE


def shown(fronts: list[Fitted], unit: Unit = "in") -> LearnedShown:
    """What is said of these fronts by the usual numbers."""
    return learned_shown(what_is_learned(fronts), USUAL, unit)


def test_an_average_has_its_sign_and_a_spread_is_rounded_up() -> None:
    """Twenty of 2 and 4 64ths: mean 3; s = √(20/19) = 1.026, up to 2; 3 s = 3.08, up to 4."""
    sideways, *_ = shown(askew(*[2, 4] * 10)).errors
    left, right, *_ = shown(askew(*[2, 4] * 10)).sides

    assert sideways == SampleLine(
        "Place, sideways (+ to the right)", 20, "+3/64", "1/32", "1/16", "1/64"
    )
    assert (left.what, left.average) == ("Gap at the left", "+3/64")
    assert (right.what, right.average) == ("Gap at the right", "−3/64")


def test_a_size_stands_against_measuring_and_cutting() -> None:
    """√2/64, up to 2/64."""
    *_, width, height = shown([fitted(1, 1), fitted(-1, -1)]).errors

    assert [line.assumed for line in (width, height)] == ["1/32", "1/32"]
    assert (height.average, height.spread) == ("0", "0")


def test_groups_say_where_it_is_too_early() -> None:
    """Nineteen with the jig; one that was changed since, which has no spread."""
    found = shown([*askew(*[2] * 19), *askew(1, method=None)])  # type: ignore[arg-type]

    jig, unknown = found.methods
    assert jig == GroupLine(
        "Front on a box, with the jig", 19, ("+1/32 ± 0", "0 ± 0", "0 ± 0", "0 ± 0"), True
    )
    assert unknown == GroupLine("Changed since, or longer ago", 1, ("+1/64", "0", "0", "0"), True)
    (ines,) = found.people
    assert (ines.name, ines.fronts, ines.is_early) == ("Ines", 20, False)


@pytest.mark.parametrize("method", get_args(HangingMethod))
def test_every_way_of_hanging_has_words(method: HangingMethod) -> None:
    """A way that comes new has them too."""
    (line,) = shown([fitted(1, method=method)]).methods

    assert line.name[0].isupper()


def test_suggestions_in_words() -> None:
    """Each says over how many fronts; a number that is another leads to its field."""
    place = shown(askew(*[1, -1] * 10)).suggestions
    assert [(each.words, each.number) for each in place] == [(
        "Setting is assumed to be off by 1/64 in at most; seen over 20 fronts: nearly all within "
        "1/16 in. Use 1/16 in?",
        "setting_error",
    )]  # fmt: skip

    size = shown([fitted(*each) for each in [(1, 1), (-1, -1)] * 10]).suggestions
    assert [(each.words, each.number) for each in size] == [(
        "Measuring and cutting together are assumed to be off by 1/32 in at most; seen over 20 "
        "fronts: nearly all within 7/64 in. Use 7/64 in for cutting, or a larger number for "
        "measuring?",
        "cutting_error",
    )]  # fmt: skip


OFF_EACH_TIME = [
    ({"left": 2, "right": -2}, "hang 1/32 in to the right"),
    ({"left": -2, "right": 2}, "hang 1/32 in to the left"),
    ({"bottom": 2, "top": -2}, "hang 1/32 in high"),
    ({"bottom": -2, "top": 2}, "hang 1/32 in low"),
    ({"left": -1, "right": -1}, "come out 1/32 in too wide"),
    ({"left": 1, "right": 1}, "come out 1/32 in too narrow"),
    ({"top": -1, "bottom": -1}, "come out 1/32 in too high"),
    ({"top": 1, "bottom": 1}, "come out 1/32 in too low"),
]


@pytest.mark.parametrize(("errors", "words"), OFF_EACH_TIME, ids=[row[1] for row in OFF_EACH_TIME])
def test_which_way_they_are_off(errors: dict[str, int], words: str) -> None:
    """A gap that is wider at the left lets a front hang to the right; narrower ones: too large."""
    (said,) = shown([fitted(**errors)] * 20).suggestions  # type: ignore[arg-type]

    assert said.words.startswith(f"Over 20 fronts they {words} on average. Look at the ")
    assert said.number == ""


def test_whose_they_are() -> None:
    """Those with the jig and Otto's to the right, the doors of somebody unnamed to the left."""
    said = shown([
        *askew(*[3] * 20, by="Otto"), *askew(*[-3] * 20, by="", method="hinges"),
    ]).suggestions  # fmt: skip

    starts = [each.words.partition(" they ")[0] for each in said]
    assert starts[:4] == [
        "Over 20 fronts (front on a box, with the jig)",
        "Over 20 fronts (hinged door)",
        "Over 20 fronts hung by Otto",
        "Over 20 fronts hung by nobody named",
    ]


def test_millimetres() -> None:
    """Gaps of 2 and 2.4 mm where 2 were planned; a mean of 0.2 mm, to the nearest tenth."""
    planned = Gaps(left=Mm(2), right=Mm(2))
    wider = replace(planned, left=Mm(24, 10))
    found = shown([Fitted("Ines", "jig", each, planned) for each in (planned, wider)], "mm")

    left, right = found.sides
    assert (left.average, left.spread, left.within) == ("+0.2", "0.3", "0.9")
    assert (right.average, right.spread) == ("0", "0")
    assert found.missing == 18
    assert found.suggestions == ()
