"""The order in which an opening is measured on site: common practice, no source."""

import pytest

from fronts.rules.facts import facts_of
from fronts.rules.kitchen import Measured
from fronts.rules.site_sizes import NAMES, SITE_SIZES, following, missing, with_size
from tests.rules.small_kitchens import inch

ALL = Measured(*[inch(text) for text in ("15", "15", "27", "27", "31", "31")])
TOP_AND_LEFT = Measured(width_top=inch("15"), height_left=inch("27"))


def test_every_size_of_an_opening_is_taken() -> None:
    """None is forgotten, and each is the pair of its pair."""
    assert [fact.name for fact in facts_of(Measured)] == list(NAMES)
    assert [SITE_SIZES[SITE_SIZES[name].pair].pair for name in NAMES] == list(NAMES)


@pytest.mark.parametrize(
    ("measured", "here", "then"),
    [
        (Measured(), "width_top", "width_bottom"),
        (Measured(), "diagonal_2", None),
        (TOP_AND_LEFT, "width_bottom", "height_right"),
        (TOP_AND_LEFT, "width_top", "width_bottom"),
        (TOP_AND_LEFT, "height_left", "height_right"),
        (ALL, "width_top", "width_bottom"),
        (ALL, "diagonal_2", None),
    ],
)
def test_one_goes_on_to_what_is_missing_or_through_all_of_them_again(
    measured: Measured, here: str, then: str | None
) -> None:
    """A size that is there is passed by, unless one is measuring again."""
    after = following(measured, here)

    assert (after and after.name) == then


def test_what_is_missing_is_told_in_order() -> None:
    """Of an opening of which the top and the left were taken."""
    assert [size.says for size in missing(TOP_AND_LEFT)] == [
        "width at the bottom", "height at the right",
        "diagonal, bottom left to top right", "diagonal, top left to bottom right",
    ]  # fmt: skip
    assert missing(ALL) == ()


def test_a_diagonal_comes_and_goes_with_the_other() -> None:
    """One says nothing by itself; a width does."""
    both = with_size(Measured(), "diagonal_2", inch("31"), inch("30"))
    assert (both.diagonal_1, both.diagonal_2) == (inch("30"), inch("31"))
    assert with_size(both, "diagonal_1", None, None) == Measured()

    again = with_size(both, "diagonal_1", inch("31"), inch("29"))
    assert (again.diagonal_1, again.diagonal_2) == (inch("31"), inch("31"))
    assert with_size(TOP_AND_LEFT, "width_top", None, None).height_left == inch("27")
