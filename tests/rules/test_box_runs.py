"""Whether found boxes run, at their limits. Figures: common practice, no source."""

from dataclasses import replace

import pytest

from fronts.rules.schedule import schedule
from tests.rules.finding_cases_boxes import SIDE, UNDER, with_slides
from tests.rules.small_kitchens import BOX, cabinet, codes_of, inch, kitchen, opening

# Side slides in 15 in: 14 in, and 1/16 in less; where it was measured, 1/2 + 1/32 in a side.
SIDES = [
    ("as wide as the table", "14", None, True),
    ("a hair wider", "14 1/128", None, False),
    ("1/16 in narrower", "13 15/16", None, True),
    ("more", "13 119/128", None, False),
    ("narrower, in the middle", "13 15/16", "17/32", True),
    ("and off by a hair", "13 15/16", "67/128", False),
]


@pytest.mark.parametrize(
    ("width", "left", "runs"), [row[1:] for row in SIDES], ids=[row[0] for row in SIDES]
)
def test_on_side_slides(width: str, left: str | None, runs: bool) -> None:
    """Not wider, and not narrower by more than the tolerance, nor by half of it at a side."""
    box = replace(
        BOX, slide="side", width=inch(width), side_clearance=None if left is None else inch(left)
    )
    of = with_slides(kitchen(cabinet(opening("pull-out", boxes=(box,)))))

    assert ("box-does-not-run" not in codes_of(of)) is runs


def test_another_slide_of_the_list_may_take_it() -> None:
    """A box 13 1/2 in wide runs on slides of 3/4 in, which are then the ones to order."""
    wide = replace(SIDE, code="S-W", clearance=inch("3/4"))
    box = replace(BOX, slide="side", width=inch("13 1/2"))
    of = with_slides(kitchen(cabinet(opening("pull-out", boxes=(box,)))), SIDE, wide)

    assert "box-does-not-run" not in codes_of(of)
    assert schedule(of).boxes[0].slide == "S-W"


def test_under_slides_are_as_long_as_their_box() -> None:
    """18 in of box take 18 in of slide, though 21 would go in; an unknown length the longest."""

    def length(depth: str | None) -> object:
        box = replace(BOX, slide="under", depth=None if depth is None else inch(depth))
        return (
            schedule(with_slides(kitchen(cabinet(opening("pull-out", boxes=(box,)))), UNDER))
            .boxes[0]
            .slide_length
        )

    assert [length("18"), length("17"), length(None)] == [inch("18"), None, inch("21")]
