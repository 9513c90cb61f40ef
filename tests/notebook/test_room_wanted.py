"""Which size of a cabinet is too small for its openings, and what would do."""

from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.notebook import NoRoom, openings_resized, room_wanted
from fronts.rules.kitchen import Cabinet
from fronts.rules.past_cabinet import ends_past
from fronts.rules.practice import inches
from tests.notebook.test_resized import STEP, faced

FACES = [
    "door left", "pair", "drawer 6 over pair", "3 drawers", "open over pair",
    "door left 12 wide beside pair", "drawer 6 beside drawer 5 wide over pair", "fixed 3 over open",
]  # fmt: skip


def wanted(cabinet: Cabinet, width: Fraction, height: Fraction) -> dict[str, NoRoom]:
    """What is said of new sizes, with its keys as plain text."""
    return {str(size): one for size, one in room_wanted(cabinet, width, height, "in", STEP).items()}


@pytest.mark.parametrize(
    ("face", "width", "height", "size", "opening", "leaves", "would_do"),
    [
        ("door left 20 wide beside pair", "25", "30", "width", "b", "1/2", "51/2"),
        ("drawer 6 beside drawer over pair", "6", "30", "width", "a", "3/4", "13/2"),
        ("drawer 6 over pair", "36", "11", "height", "b", "1/2", "23/2"),
        ("3 drawers", "36", "2", "height", "a", "-1", "4"),
    ],
)
def test_openings_that_follow(
    face: str, width: str, height: str, size: str, opening: str, leaves: str, would_do: str
) -> None:
    """Those without a size of their own share what is left; each wants an inch at least."""
    sizes = Fraction(width) * inches(1), Fraction(height) * inches(1)
    found = wanted(faced(face, 36), *sizes)

    assert found == {
        size: NoRoom(
            opening,
            Fraction(leaves) * inches(1),
            inches(1),
            Fraction(would_do) * inches(1),
            follows=True,
        )
    }


def test_openings_that_stay() -> None:
    """No words say a face that stands askew: its opening wants all that it has."""
    cabinet = faced("door left", 36)
    askew = tuple(replace(opening, x=inches(2)) for opening in cabinet.openings)
    cabinet = replace(cabinet, openings=askew)

    found = wanted(cabinet, inches(33), cabinet.height)

    assert found == {"width": NoRoom("a", inches(31), inches(33), inches(35), follows=False)}


@given(st.sampled_from(FACES), st.integers(1, 40 * 16), st.integers(1, 40 * 16))
def test_what_would_do_does_and_a_step_less_does_not(face: str, wide: int, high: int) -> None:
    """Whatever is refused says at which size, and the sizes that it says have room."""
    cabinet = faced(face, 36)
    width, height = inches(wide, 16), inches(high, 16)
    small = replace(cabinet, width=width, height=height)
    placed = openings_resized(cabinet, width, height, "in", STEP)
    found = wanted(cabinet, width, height)

    if any(ends_past(opening, small) for opening in placed):
        assert found
    enough = {size: one.would_do for size, one in found.items()}
    sizes = {"width": width, "height": height, **enough}
    assert wanted(cabinet, **sizes) == {}
    moved = openings_resized(cabinet, sizes["width"], sizes["height"], "in", STEP)
    there = replace(cabinet, width=sizes["width"], height=sizes["height"])
    assert not any(ends_past(opening, there) for opening in moved)
    for size in found:
        assert size in wanted(cabinet, **{**sizes, size: sizes[size] - STEP})
