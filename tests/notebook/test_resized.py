"""Openings follow their cabinet when it is resized."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.notebook import Around, openings_of, openings_resized, read_face, regular_face
from fronts.rules.kitchen import Cabinet
from fronts.rules.practice import inches

STEP, MEMBER = inches(1, 16), inches(3, 2)


def faced(face: str, width: int, height: str = "30 1/2") -> Cabinet:
    """A base cabinet with this face."""
    whole, _, part = height.partition(" ")
    over = inches(int(whole)) + (inches(1, 2) if part else 0)
    around = Around(inches(width), over, MEMBER, "in", STEP)
    openings = openings_of(read_face(face, "in"), around)
    return Cabinet(
        label="B1", kind="base", build="face-frame", wall="A", x=None, y=inches(4),
        width=inches(width), height=over, depth=inches(24), openings=openings,
    )  # fmt: skip


def sizes(cabinet: Cabinet, width: int, height: str = "30 1/2") -> list[tuple[str, ...]]:
    """Widths and heights of the openings in a new size, in inches."""
    new = faced("open", width, height)
    moved = openings_resized(cabinet, new.width, new.height, "in", STEP)
    return [(str(one.width / inches(1)), str(one.height / inches(1))) for one in moved]


@pytest.mark.parametrize(
    ("face", "height", "after"),
    [
        ("fixed 6 over pair", "30 1/2", [("30", "6"), ("30", "20")]),
        ("fixed 6 over pair", "34", [("30", "6"), ("30", "47/2")]),
        ("drawer 6 beside drawer over pair", "30 1/2",
         [("57/4", "6"), ("57/4", "6"), ("30", "20")]),
        ("door left 12 wide beside pair", "30 1/2", [("12", "55/2"), ("33/2", "55/2")]),
    ],
)  # fmt: skip
def test_from_36_to_33(face: str, height: str, after: list[tuple[str, str]]) -> None:
    """What was given stays as given; what was shared is shared again."""
    assert sizes(faced(face, 36), 33, height) == after


def test_what_has_no_room_stays() -> None:
    """An opening that was given 20 in cannot stand in a cabinet of 18."""
    narrow = faced("door left 20 wide beside pair", 36)

    assert openings_resized(narrow, inches(18), narrow.height, "in", STEP) == narrow.openings


@given(
    st.sampled_from(["door left", "pair", "drawer 6 over pair", "3 drawers", "open over pair"]),
    st.integers(12, 48),
    st.integers(12, 48),
)
def test_there_and_back_is_as_it_was(face: str, first: int, second: int) -> None:
    """Resized and resized back, a face is what it was; its words stay the same on the way."""
    cabinet = faced(face, first)
    there = faced(face, second)

    moved = openings_resized(cabinet, there.width, there.height, "in", STEP)

    assert [(o.x, o.y, o.width, o.height) for o in moved] == [
        (o.x, o.y, o.width, o.height) for o in there.openings
    ]
    known = regular_face(there, "in", STEP)
    assert known is not None
    assert known.face == getattr(regular_face(cabinet, "in", STEP), "face", None)
