"""A cabinet's plain face: its openings and members together are the cabinet."""

from itertools import pairwise
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.kinds import ClosedBy
from fronts.rules.lengths import Mm
from fronts.rules.plain_face import PLAIN_FACES, FaceError, PlainFace, face_openings
from tests.rules.laws import LAW
from tests.rules.small_kitchens import inch

WIDTH, HEIGHT = inch("18"), inch("30 1/2")


def face(*closed_by: ClosedBy, **changes: Any) -> PlainFace:
    """A face with members an inch and a half wide."""
    members = dict.fromkeys(("sides", "above", "below", "between"), inch("1 1/2"))
    return PlainFace(closed_by=closed_by, **(members | changes))


def test_one_opening_fills_the_face() -> None:
    """A door's opening is what the members leave."""
    (opening,) = face_openings(face("door", hinged="right"), WIDTH, HEIGHT)

    assert (opening.x, opening.y) == (inch("1 1/2"), inch("1 1/2"))
    assert (opening.width, opening.height) == (inch("15"), inch("27 1/2"))
    assert (opening.closed_by, opening.fronts[0].hinged) == ("door", "right")


def test_a_drawer_stands_over_the_rest() -> None:
    """30 1/2 less three members and a drawer of 5 leaves 21 for the doors."""
    drawer, pair = face_openings(face("drawer", "pair", drawer_height=inch("5")), WIDTH, HEIGHT)

    assert (drawer.label, drawer.closed_by, drawer.height) == ("a", "drawer", inch("5"))
    assert (pair.label, pair.closed_by, pair.height) == ("b", "pair", inch("21"))
    assert drawer.y == inch("24")
    assert [front.hinged for front in pair.fronts] == [None, None]


def test_a_stack_is_one_opening_with_its_drawers() -> None:
    """How many drawers there are is a stack's own."""
    (stack,) = face_openings(face("drawers", count=4), WIDTH, HEIGHT)
    (drawer,) = face_openings(face("drawer", count=4), WIDTH, HEIGHT)

    assert (len(stack.fronts), len(drawer.fronts)) == (4, 1)


TOO_WIDE = [
    ({"sides": inch("9")}, ["sides"]),
    ({"below": inch("30")}, ["below"]),
    ({"above": inch("29")}, ["below"]),
    ({"drawer_height": inch("26")}, ["drawer_height"]),
    ({"sides": inch("12"), "between": inch("22 1/2")}, ["sides", "drawer_height"]),
]


@pytest.mark.parametrize(
    ("changes", "members"), TOO_WIDE, ids=[" and ".join(changes) for changes, _ in TOO_WIDE]
)
def test_members_that_leave_nothing_are_named(changes: dict[str, Mm], members: list[str]) -> None:
    """Each fault stands at the member that is too wide."""
    wrong = face("drawer", "door", **({"drawer_height": inch("5")} | changes))

    with pytest.raises(FaceError) as refused:
        face_openings(wrong, WIDTH, HEIGHT)

    assert list(refused.value.faults) == members


ROOM = [
    ("across", face("door", sides=inch("9") - inch("1/256")), "width"),
    ("upwards", face("door", above=inch("29") - inch("1/128")), "height"),
    ("under a drawer", face("drawer", "door", drawer_height=inch("26") - inch("1/128")), "height"),
]


@pytest.mark.parametrize(("of", "size"), [row[1:] for row in ROOM], ids=[row[0] for row in ROOM])
def test_however_little_the_members_leave_is_an_opening(of: PlainFace, size: str) -> None:
    """Here 1/128 in."""
    assert getattr(face_openings(of, WIDTH, HEIGHT)[-1], size) == inch("1/128")


def test_members_that_leave_a_hair_for_both_leave_too_little_for_the_drawer() -> None:
    """The drawer's height is what is wrong, as long as there is anything to share."""
    tight = face("drawer", "door", above=inch("29") - inch("1/128"), drawer_height=inch("5"))

    with pytest.raises(FaceError) as refused:
        face_openings(tight, WIDTH, HEIGHT)

    assert list(refused.value.faults) == ["drawer_height"]


@LAW
@given(
    st.sampled_from(list(PLAIN_FACES)),
    st.lists(st.fractions(min_value=0, max_value=80), min_size=5, max_size=5),
)
def test_members_and_openings_are_the_cabinet(
    closed_by: tuple[ClosedBy, ...], sizes: list[Mm]
) -> None:
    """Across and upwards nothing is left over and nothing overlaps."""
    sides, above, below, between, drawer = sizes
    of = face(
        *closed_by, sides=sides, above=above, below=below, between=between,
        drawer_height=drawer + 1,
    )  # fmt: skip

    openings = face_openings(of, WIDTH, HEIGHT)

    assert all(2 * sides + each.width == WIDTH for each in openings)
    assert openings[-1].y == below
    assert openings[0].y + openings[0].height + above == HEIGHT
    for upper, lower in pairwise(openings):
        assert upper.y == lower.y + lower.height + between
