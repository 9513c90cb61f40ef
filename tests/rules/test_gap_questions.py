"""Which gaps are asked about: far from the plan, or under the least; worked by hand."""

import pytest

from fronts.rules.fits import Gaps
from fronts.rules.gap_questions import gap_question_words, gap_questions
from fronts.rules.practice import PRACTICE
from tests.rules.small_kitchens import inch

LEAST = inch("1/16")
# Common practice, no source: 1/2 in off the plan is asked about, and so is less than 1/16 in.
ASKED = [
    ("as planned", "1/8", "1/8", None),
    ("a little wide", "5/8", "1/8", None),
    ("a slip of the finger", "125", "1/8", "left 125, far from planned, 1/8"),
    ("just past half an inch", "21/32", "1/8", "left 21/32, far from planned, 1/8"),
    ("at the least", "1/16", "1/8", None),
    ("touching", "0", "1/8", "left 0, under the least gap, 1/16"),
    ("planned under the least", "1/32", "1/32", None),
    ("nothing planned, as wide as a filler", "3", None, None),
    ("nothing planned, wider", "3 1/16", None, "left 3 1/16, wider than a gap, 3"),
]


@pytest.mark.parametrize(
    ("found", "planned", "words"), [row[1:] for row in ASKED], ids=[row[0] for row in ASKED]
)
def test_what_is_asked(found: str, planned: str | None, words: str | None) -> None:
    """Once a side, with what it is beside."""
    was = Gaps(left=None if planned is None else inch(planned))

    asked = list(gap_questions(Gaps(left=inch(found)), was, LEAST, PRACTICE))

    said = [gap_question_words(question, "in") for question in asked]
    assert said == ([] if words is None else [words])


def test_a_side_is_asked_about_once_and_each_side_by_itself() -> None:
    """Both ends of the left are far off; the bottom touches."""
    planned = Gaps(left=inch("1/8"), bottom=inch("1/8"))
    found = Gaps(left_top=inch("12"), left_bottom=inch("13"), bottom=inch("0"))

    asked = gap_questions(found, planned, LEAST, PRACTICE)

    assert [(one.side, one.found) for one in asked] == [("left", inch("12")), ("bottom", inch("0"))]
