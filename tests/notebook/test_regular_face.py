"""The face that a cabinet's openings are, in the fewest sizes that make them so."""

from dataclasses import replace

import pytest

from fronts.notebook import face_words, regular_face
from fronts.rules.lengths import INCH
from tests.notebook.reading import STEPS, cabinet

SAID = [
    # what was written; what its openings are said as
    ("pair 27 1/2 high", "pair"),
    ("door left 15 wide", "door left"),
    ("fixed 6 over pair", "fixed 6 over pair"),
    ("fixed over pair 20", "fixed 6 over pair"),
    ("drawer 13 over drawer 13", "drawer over drawer"),
    ("drawer 5 over drawer 8 over open", "drawer 5 over drawer 8 over open"),
    ("3 drawers beside open 6 over pair", "3 drawers beside open 6 over pair"),
    ("open 4 wide beside door top", "open 4 wide beside door top"),
    ("open beside door top 4 wide", "open 9 1/2 wide beside door top"),
    ("3 drawers beside open 4 wide", "3 drawers beside open 4 wide"),
    ("3 drawers 5, , 7 over pair 10", "3 drawers 5, , 7 over pair 10"),
]


@pytest.mark.parametrize(("written", "said"), SAID, ids=[written for written, _ in SAID])
def test_openings_are_said_as_a_face(written: str, said: str) -> None:
    """Sizes that sharing makes are left unsaid; a stack leaves them to what stands beside it."""
    found = regular_face(cabinet(f"B1 18 {written}"), "in", STEPS["in"])

    assert found is not None
    assert (face_words(found.face, "in"), found.member) == (said, INCH * 3 / 2)


def test_openings_that_no_words_say_have_no_face() -> None:
    """One out of line, one that closes as no word says, two stacks that differ, or none at all."""
    plain = cabinet("B1 18 fixed 6 over pair")
    upper, lower = plain.openings
    moved = replace(upper, x=upper.x + INCH, width=upper.width - INCH)
    panel = replace(upper, closed_by="appliance-panel")
    stacks = cabinet("B1 18 open 6 over open").openings
    uneven = tuple(replace(one, closed_by="drawers", fronts=()) for one in stacks)

    for openings in ((moved, lower), (panel, lower), (lower,), uneven, ()):
        assert regular_face(replace(plain, openings=openings), "in", STEPS["in"]) is None
