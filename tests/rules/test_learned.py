"""What is learned of fronts that fitted, and what a shop might change: by hand beside each."""

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.fits import Gaps
from fronts.rules.hanging_method import HangingMethod
from fronts.rules.learned import ENOUGH, Fitted, WhatIsLearned, what_is_learned
from fronts.rules.learned_suggestions import (
    AnotherNumber,
    OffEachTime,
    assumed_squares,
    suggestions,
)
from fronts.rules.lengths import Mm
from fronts.rules.practice import PRACTICE
from tests.rules.laws import LAW
from tests.rules.small_kitchens import inch

MARK = inch("1/64")
PLANNED = Gaps(*[inch("1/8")] * 4)


def fitted(
    left: int = 0,
    right: int = 0,
    top: int = 0,
    bottom: int = 0,
    by: str = "Ines",
    method: HangingMethod | None = "jig",
) -> Fitted:
    """A front whose gaps of 1/8 in came out so many 64ths wider."""
    errors = {"left": left, "right": right, "top": top, "bottom": bottom}
    gaps = {side: inch("1/8") + error * MARK for side, error in errors.items()}
    return Fitted(by, method, Gaps(**gaps), PLANNED)


def askew(*shifts: int, **said: str) -> list[Fitted]:
    """Fronts as large as planned that hang so many 64ths to the right."""
    return [fitted(shift, -shift, **said) for shift in shifts]  # type: ignore[arg-type]


def said_of(fronts: list[Fitted], **numbers: str) -> list[object]:
    """What is suggested to a shop with these numbers, in inches."""
    practice = replace(PRACTICE, **{name: inch(text) for name, text in numbers.items()})  # type: ignore[arg-type]
    return list(suggestions(what_is_learned(fronts), practice, MARK))


def test_sides_place_and_size() -> None:
    """Errors of 2 and −2, of 4 and 0 64ths: shifts 2 and 2, sizes 0 and −4 64ths.

    Means 2 and −2; of 0 and −4 the variance is (2² + 2²)/1 = 8.
    """
    found = what_is_learned([fitted(2, -2), fitted(4, 0)]).together

    left, right = found.sides["left"], found.sides["right"]
    assert (left.count, left.mean, left.variance) == (2, 3 * MARK, 2 * MARK**2)
    assert (right.mean, right.variance) == (-MARK, 2 * MARK**2)
    assert found.sideways is not None
    assert found.sideways.mean == 2 * MARK
    assert found.sideways.variance == 0
    assert found.width is not None
    assert (found.width.mean, found.width.variance) == (-2 * MARK, 8 * MARK**2)
    assert found.upright is not None
    assert found.upright.mean == 0
    assert found.fronts == 2


def test_only_what_was_measured_beside_what_was_planned_counts() -> None:
    """A front without either says nothing; one side says a gap and no place."""
    bare = Fitted("Ines", "jig", Gaps(), PLANNED)
    unplanned = Fitted("Ines", "jig", PLANNED, Gaps())
    one_side = Fitted("Ines", "jig", Gaps(left=inch("3/16")), PLANNED)
    found = what_is_learned([bare, unplanned, one_side]).together

    assert found.fronts == 1
    assert list(found.sides) == ["left"]
    assert (found.sideways, found.upright, found.width, found.height) == (None,) * 4


def test_a_side_at_both_its_ends_is_one_figure() -> None:
    """1/64 more at the top, 3/64 at the bottom: 2/64."""
    ends = Gaps(left_top=inch("9/64"), left_bottom=inch("11/64"), right=inch("1/8"))
    (left,) = [
        found.sides["left"]
        for found in [what_is_learned([Fitted("Ines", "jig", ends, PLANNED)]).together]
    ]

    assert (left.count, left.mean) == (1, 2 * MARK)


def test_apart_by_way_and_by_person() -> None:
    """Most fronts first; together they are all of them."""
    fronts = [*askew(1, 1), *askew(3, by="Otto", method="hinges"), *askew(0, 0, by="Ada")]
    found = what_is_learned([*fronts, *askew(5, method=None)])  # type: ignore[arg-type]

    assert [(name, group.fronts) for name, group in found.by_method] == [
        ("jig", 4), ("hinges", 1), (None, 1),
    ]  # fmt: skip
    assert [(name, group.fronts) for name, group in found.by_person] == [
        ("Ines", 3), ("Ada", 2), ("Otto", 1),
    ]  # fmt: skip


def test_with_few_fronts_nothing_is_said() -> None:
    """However far off they are."""
    assert said_of(askew(*[9, 7] * (ENOUGH // 2))[1:]) == []
    assert said_of(askew(*[9, 7] * (ENOUGH // 2)))
    assert said_of([]) == []


# Twenty fronts; what is said of them. With n = 20 of ±d, s² = 20 d²/19.
SAID: list[tuple[str, list[Fitted], dict[str, str], list[object]]] = [
    # Nothing varies: gaps were taken as they were planned.
    ("all as planned", askew(*[0] * 20), {}, []),
    # s = 1.026/64, 3 s = 3.08/64, up to 4/64: more than the 1/64 assumed.
    ("set closer than it comes out", askew(*[1, -1] * 10), {},
     [AnotherNumber("place", 20, inch("1/64"), inch("1/16"), "setting_error", inch("1/16"))]),
    ("the number fits", askew(*[1, -1] * 10), {"setting_error": "1/16"}, []),
    # 4/64 is no more than half of 8/64.
    ("closer than is said", askew(*[1, -1] * 10), {"setting_error": "1/8"},
     [AnotherNumber("place", 20, inch("1/8"), inch("1/16"), "setting_error", inch("1/16"))]),
    ("not yet half", askew(*[1, -1] * 10), {"setting_error": "7/64"}, []),
    # The mean of 2 and 4 is 3, 3·√20/1.026 = 13 standard errors; 3 s fits 1/16.
    ("to the right each time", askew(*[2, 4] * 10), {"setting_error": "1/16"},
     [OffEachTime("sideways", 20, inch("3/64"))]),
    # As little as a rule shows.
    ("a mark to the right each time", askew(*[1] * 20), {},
     [OffEachTime("sideways", 20, inch("1/64"))]),
    # The mean of 6 and −1 is 5/2, s = 3.5·1.026 = 3.59: 3.1 standard errors; of 5 and −1, 2.9.
    ("hardly by chance", askew(*[6, -1] * 10), {"setting_error": "11/64"},
     [OffEachTime("sideways", 20, inch("5/128"))]),
    ("perhaps by chance", askew(*[5, -1] * 10), {"setting_error": "10/64"}, []),
    # Widths of −2·(±1) about −2: errors of −1 ± 1 both sides; 2/64 too wide is +2.
    ("too wide each time", [fitted(*each) for each in [(0, -1), (-1, -2)] * 10],
     {"cutting_error": "3/64", "setting_error": "1/128", "measuring_error": "1/64"},
     [OffEachTime("width", 20, inch("1/32"))]),
    # Sizes of ±2: s = 2.052/64, 3 s = 6.156/64, up to 7/64; √(6.156² − 1) = 6.07, up to 7/64.
    ("sizes vary", [fitted(*each) for each in [(1, 1), (-1, -1)] * 10], {},
     [AnotherNumber("size", 20, inch("1/32"), inch("7/64"), "cutting_error", inch("7/64"))]),
    # Of 6.156 are 4 measured: √(37.9 − 16) = 4.68, up to 5/64; √(16 + 1) = 4.12.
    ("sizes vary as they are cut", [fitted(*each) for each in [(1, 1), (-1, -1)] * 10],
     {"measuring_error": "4/64"},
     [AnotherNumber("size", 20, inch("5/64"), inch("7/64"), "cutting_error", inch("5/64"))]),
    # √(12² + 12²) = 16.97; 7/64 is no more than half.
    ("sizes vary less than is said", [fitted(*each) for each in [(1, 1), (-1, -1)] * 10],
     {"measuring_error": "12/64", "cutting_error": "12/64"},
     [AnotherNumber("size", 20, inch("17/64"), inch("7/64"))]),
]  # fmt: skip


@pytest.mark.parametrize(
    ("fronts", "numbers", "said"), [row[1:] for row in SAID], ids=[row[0] for row in SAID]
)
def test_what_is_suggested(
    fronts: list[Fitted], numbers: dict[str, str], said: list[object]
) -> None:
    assert said_of(fronts, **numbers) == said


def test_what_some_do_is_told_where_all_do_not() -> None:
    """Twenty by jig and Otto hang 3/64 right, twenty on hinges by Ines left: none together."""
    right = askew(*[2, 4] * 10, by="Otto", method="jig")
    left = askew(*[-2, -4] * 10, by="Ines", method="hinges")

    assert said_of([*right, *left], setting_error="1/4") == [
        OffEachTime("sideways", 20, inch("3/64"), method="jig"),
        OffEachTime("sideways", 20, inch("-3/64"), method="hinges"),
        OffEachTime("sideways", 20, inch("3/64"), by="Otto"),
        OffEachTime("sideways", 20, inch("-3/64"), by="Ines"),
    ]


def test_what_the_shop_assumes() -> None:
    """A place: the error of setting; a size: measuring and cutting, 3 and 4 make 5."""
    practice = replace(PRACTICE, setting_error=Mm(2), measuring_error=Mm(3), cutting_error=Mm(4))

    assert assumed_squares(practice) == {
        "sideways": 4, "upright": 4, "width": 25, "height": 25,
    }  # fmt: skip


marks = st.integers(-8, 8)
some_fronts = st.lists(st.builds(fitted, marks, marks, marks, marks), min_size=20, max_size=40)


@LAW
@given(some_fronts)
def test_a_number_that_is_taken_is_not_asked_about_again(fronts: list[Fitted]) -> None:
    """Whoever takes what is suggested for setting and cutting has said enough of both."""
    learned: WhatIsLearned = what_is_learned(fronts)
    practice = PRACTICE
    for each in suggestions(learned, practice, MARK):
        if isinstance(each, AnotherNumber) and each.use is not None:
            assert each.use > 0
            assert each.use % MARK == 0
            practice = replace(practice, **{each.name: Fraction(each.use)})  # type: ignore[arg-type]

    again = suggestions(learned, practice, MARK)
    assert not [each for each in again if isinstance(each, AnotherNumber) and each.use is not None]
