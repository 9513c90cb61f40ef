"""Which measured sizes are asked about: common practice, no source."""

from dataclasses import replace

import pytest

from fronts.rules.kitchen import Measured
from fronts.rules.practice import PRACTICE
from fronts.rules.size_questions import question_words, size_question
from tests.rules.small_kitchens import SIXTEENTH, inch, opening

WIDE = inch("15 9/16")
CASES = [
    # 15 × 27 1/2 planned; asked where more than 1/2 off the plan, 1/4 off its pair
    ("as planned", Measured(), "width_top", "15", ""),
    ("half an inch more", Measured(), "width_top", "15 1/2", ""),
    (
        "more than that",
        Measured(),
        "width_top",
        "15 9/16",
        "9/16 more than planned (15): is it 15 9/16?",
    ),
    (
        "two digits changed",
        Measured(),
        "height_left",
        "72 1/2",
        "45 more than planned (27 1/2): is it 72 1/2?",
    ),
    (
        "an inch off its pair",
        Measured(width_top=inch("15")),
        "width_bottom",
        "14",
        "1 less than at the top (15): is it 14?",
    ),
    ("a quarter off its pair", Measured(width_top=inch("15")), "width_bottom", "15 1/4", ""),
    ("off the plan like its pair", Measured(width_bottom=WIDE), "width_top", "15 9/16", ""),
    ("measured so before", Measured(width_top=WIDE), "width_top", "15 5/8", ""),
    (
        "not as before",
        Measured(width_top=WIDE),
        "width_top",
        "16",
        "1 more than planned (15): is it 16?",
    ),
    (
        "far from the other diagonal",
        Measured(diagonal_1=inch("31"), diagonal_2=inch("31")),
        "diagonal_2",
        "31 1/2",
        "1/2 more than the other diagonal (31): is it 31 1/2?",
    ),
]


@pytest.mark.parametrize(
    ("measured", "name", "typed", "asked"),
    [row[1:] for row in CASES],
    ids=[row[0] for row in CASES],
)
def test_a_size_far_from_the_plan_or_its_pair_is_asked_about(
    measured: Measured, name: str, typed: str, asked: str
) -> None:
    """In the words in which a person is asked."""
    of, length = opening(measured=measured), inch(typed)

    question = size_question(of, name, length, None, PRACTICE, SIXTEENTH)

    assert (question_words(question, length, "in") if question else "") == asked


@pytest.mark.parametrize(("typed", "is_asked"), [("20", False), ("20 1/2", False), ("21", True)])
def test_a_diagonal_goes_by_width_and_height(typed: str, is_asked: bool) -> None:
    """3-4-5: an opening that measured 12 × 16 has diagonals of 20, whatever was planned."""
    taken = Measured(width_top=inch("12"), height_right=inch("16"))

    question = size_question(
        opening(measured=taken), "diagonal_1", inch(typed), None, PRACTICE, SIXTEENTH
    )

    assert (question is not None) == is_asked
    assert question is None or inch(typed) - question.by == inch("20")


def test_the_other_diagonal_counts_though_it_is_not_kept_yet() -> None:
    """The first was taken just before."""
    question = size_question(
        opening(), "diagonal_2", inch("31 3/8"), inch("30"), PRACTICE, SIXTEENTH
    )

    assert question is not None
    assert question.by == inch("1 3/8")


def test_the_shop_says_how_far_is_far() -> None:
    """With its own numbers, 3 in off the plan is nothing to ask about."""
    easy = replace(PRACTICE, asked_off_plan=inch("3"))

    assert size_question(opening(), "width_top", inch("18"), None, easy, SIXTEENTH) is None
