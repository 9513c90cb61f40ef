"""Where hinge cups and plates go, worked by hand from the rule."""

from fractions import Fraction

import pytest

from fronts.rules.hinge_drilling import (
    PLATE_PITCH,
    PLATE_ROW,
    cup_centre,
    hinges_upright,
    plate_centres,
)
from fronts.rules.kinds import Hinged, Mount
from fronts.rules.kitchen import Point
from fronts.rules.practice import PRACTICE
from fronts.rules.standard_keys import Standard
from tests.rules.small_kitchens import cabinet, inch, inches, kitchen, only_front, opening

# A door 16 × 28 1/2 in; cups 22.5 mm in from its edge (practice, memory).
CUPS: list[tuple[Hinged, str, str]] = [
    ("left", "22.5 mm", "3 1/2"),
    ("right", "383.9 mm", "3 1/2"),
    ("bottom", "3 1/2", "22.5 mm"),
    ("top", "3 1/2", "701.4 mm"),
]


@pytest.mark.parametrize(("hinged", "x", "y"), CUPS, ids=[hinged for hinged, *_ in CUPS])
def test_a_cup_lies_in_from_its_hinge_side(hinged: Hinged, x: str, y: str) -> None:
    """In from the edge that hinges, and as far along it as the hinge."""
    door = only_front(kitchen(cabinet(opening(hinged=hinged))))

    assert cup_centre(door, inch("3 1/2"), PRACTICE.cup_from_edge) == Point(inch(x), inch(y))
    assert hinges_upright(door) == (hinged in ("left", "right"))


PLATES: list[tuple[Mount, Hinged, tuple[str, ...]]] = [
    ("overlay", "left", ("3", "24 1/2")),
    ("inset", "left", ("3 19/32", "23 29/32")),
    ("overlay", "top", ("3", "12")),
]


@pytest.mark.parametrize(
    ("mount", "hinged", "plates"), PLATES, ids=[f"{mount}, {hinged}" for mount, hinged, _ in PLATES]
)
def test_a_plate_stands_level_with_its_cup(
    mount: Mount, hinged: Hinged, plates: tuple[str, ...]
) -> None:
    """A centre 3 1/2 up a door that laps 1/2 is 3 up in the opening; inset, 3 1/2 and 3/32."""
    door = only_front(kitchen(cabinet(opening(hinged=hinged, standard=Standard(mount=mount)))))

    assert plate_centres(door) == inches(*plates)


def test_without_hinges_there_are_no_plates() -> None:
    """A fixed front has nothing to swing on."""
    assert plate_centres(only_front(kitchen(cabinet(opening("fixed"))))) == ()


def test_plates_stand_in_the_usual_rows() -> None:
    """37 mm from the cabinet's front edge, 32 mm apart (common practice, no source)."""
    assert (Fraction(37), Fraction(32)) == (PLATE_ROW, PLATE_PITCH)
