"""An opening lies in its cabinet's face."""

import pytest

from fronts.rules.past_cabinet import ends_past
from fronts.rules.rect import Rect
from tests.rules.small_kitchens import inch

CASES = [
    ("within", ("1 1/2", "1 1/2", "15", "27 1/2"), {}),
    ("up to its edges", ("3", "3", "15", "27 1/2"), {}),
    ("past its right", ("3 1/8", "3", "15", "27 1/2"), {"width": "1/8"}),
    ("a hair past it", ("3 1/128", "3", "15", "27 1/2"), {"width": "1/128"}),
    ("past its top", ("3", "4", "15", "27 1/2"), {"height": "1"}),
    ("past both", ("4", "4", "15", "27 1/2"), {"width": "1", "height": "1"}),
]


@pytest.mark.parametrize(
    ("place", "past"), [row[1:] for row in CASES], ids=[row[0] for row in CASES]
)
def test_how_far_it_ends_past(place: tuple[str, ...], past: dict[str, str]) -> None:
    """In a cabinet 18 in wide and 30 1/2 in high."""
    opening = Rect(*(inch(each) for each in place))

    found = ends_past(opening, Rect(inch("0"), inch("0"), inch("18"), inch("30 1/2")))

    assert found == {size: inch(by) for size, by in past.items()}
