"""What a box that nobody measured is likely to be: common practice, no source."""

import pytest

from fronts.rules.likely_box import likely_rise, likely_width
from tests.rules.small_kitchens import SIXTEENTH, inch

WIDTHS = [("12", "15", "14", "11"), ("15", "15", "14", "14"), ("1", "15", "14", None),
          ("1 1/128", "15", "14", "1/128")]  # fmt: skip


@pytest.mark.parametrize(("opening", "before", "box", "width"), WIDTHS)
def test_a_box_leaves_as_much_as_the_last(
    opening: str, before: str, box: str, width: str | None
) -> None:
    """A box of 14 in an opening of 15 leaves an inch, so the next one does."""
    assert likely_width(inch(opening), inch(before), inch(box)) == (width and inch(width))


RISES = [
    ("one front higher", 1, {2: "1/2"}, "9 1/2"),
    ("two fronts higher", 0, {2: "1/2"}, "18 1/2"),
    ("from the nearest that was measured", 0, {2: "1/2", 1: "10"}, "19"),
    ("one front lower", 2, {1: "9 1/2"}, "1/2"),
    ("from the nearer above", 2, {0: "18 1/2", 1: "10"}, "1"),
    ("none was measured", 1, {}, None),
    ("below the opening", 2, {1: "8 1/2"}, None),
    ("above the opening", 0, {2: "9"}, None),
    ("on its bottom", 2, {1: "9"}, "0"),
]


@pytest.mark.parametrize(
    ("index", "measured", "rise"), [row[1:] for row in RISES], ids=[row[0] for row in RISES]
)
def test_a_box_hangs_a_fronts_share_apart(
    index: int, measured: dict[int, str], rise: str | None
) -> None:
    """Three even fronts in an opening 27 in high are 9 in apart."""
    rises = {place: inch(each) for place, each in measured.items()}

    found = likely_rise(inch("27"), 3, index, rises, SIXTEENTH)

    assert found == (None if rise is None else inch(rise))


def test_a_rise_comes_out_to_the_step() -> None:
    """A third of 20 in is 6 2/3; what is offered stands on the shop's rule."""
    assert likely_rise(inch("20"), 3, 1, {2: inch("1/2")}, SIXTEENTH) == inch("7 1/8")
