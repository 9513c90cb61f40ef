"""Where the next opening of a cabinet goes: common practice, no source."""

import pytest

from fronts.rules.kitchen import Opening
from fronts.rules.next_opening import NextOpening, next_opening
from tests.rules.small_kitchens import cabinet, inch, opening

MEMBER = inch("1 1/2")


def test_the_first_takes_the_whole_face() -> None:
    """18 × 30 1/2 less a member all round."""
    assert next_opening(cabinet(), MEMBER) == NextOpening(
        "a", "door", x=MEMBER, y=MEMBER, width=inch("15"), height=inch("27 1/2")
    )


FACES = [
    ("as wide as two members", {"width": "3"}, None),
    ("a hair wider", {"width": "3 1/128"}, ("1/128", "27 1/2")),
    ("as high as two members", {"height": "3"}, None),
    ("a hair higher", {"height": "3 1/128"}, ("15", "1/128")),
]


@pytest.mark.parametrize(
    ("size", "room"), [row[1:] for row in FACES], ids=[row[0] for row in FACES]
)
def test_nothing_is_offered_where_the_members_leave_nothing(
    size: dict[str, str], room: tuple[str, str] | None
) -> None:
    """However little they leave, it is an opening's room."""
    found = next_opening(cabinet(**{name: inch(text) for name, text in size.items()}), MEMBER)

    left = None if room is None else tuple(inch(text) for text in room)
    assert found == (
        NextOpening("a") if left is None else NextOpening("a", "door", MEMBER, MEMBER, *left)
    )


LOW, HIGH = opening(height=inch("10")), opening("drawer", y=inch("19"), height=inch("10"))
PLACES = [
    ("under the others", HIGH, ("1 1/2", "1 1/2", "15", "16")),
    ("over the others", LOW, ("1 1/2", "13", "15", "16")),
    ("beside them, where the height is taken", opening(), (None, "1 1/2", None, "27 1/2")),
]


@pytest.mark.parametrize(
    ("there", "place"), [row[1:] for row in PLACES], ids=[p[0] for p in PLACES]
)
def test_the_next_goes_where_there_is_room(there: Opening, place: tuple[str | None, ...]) -> None:
    """Members as wide as the one at the side of the others are left round it."""
    found = next_opening(cabinet(there), MEMBER)

    assert (found.label, found.closed_by) == ("b", there.closed_by)
    assert (found.x, found.y, found.width, found.height) == tuple(
        None if size is None else inch(size) for size in place
    )


def test_a_space_as_high_as_a_member_is_one() -> None:
    """Three members' height under the lowest: two members would leave a third between them."""
    high = opening(y=inch("4 1/2"), height=inch("24 1/2"))

    assert next_opening(cabinet(high), MEMBER).y == high.y


def test_labels_go_through_the_letters_and_begin_again() -> None:
    """A letter that is free is taken; after `z` comes `a2`."""
    letters = "abcdefghijklmnopqrstuvwxyz"
    full = cabinet(*(opening(label=letter) for letter in letters))

    assert next_opening(cabinet(opening(label="b")), MEMBER).label == "a"
    assert next_opening(full, MEMBER).label == "a2"
