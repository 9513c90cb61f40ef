"""Blocking behind stiles; a cabinet's sides 3/4 in or 18 mm thick: common practice, no source."""

from dataclasses import replace

import pytest

from fronts.rules.schedule import schedule
from tests.rules.finding_cases_boxes import with_slides
from tests.rules.small_kitchens import BOX, cabinet, inch, kitchen, opening

SLIDING = replace(BOX, slide="side")
STILES = [
    ("1 1/2 in at both sides", "1 1/2", "15", "3/4 in at the left and 3/4 in at the right"),
    ("wider at the left", "2", "14 1/2", "1 1/4 in at the left and 3/4 in at the right"),
    ("flush with the side at the left", "3/4", "15 3/4", "3/4 in at the right"),
]


@pytest.mark.parametrize(
    ("x", "width", "where"), [row[1:] for row in STILES], ids=[row[0] for row in STILES]
)
def test_as_thick_as_the_stile_stands_out(x: str, width: str, where: str) -> None:
    """In a cabinet 18 in wide."""
    box = replace(SLIDING, width=inch(width) - inch("1"))
    of = opening("pull-out", x=inch(x), width=inch(width), boxes=(box,))

    (finding,) = [
        each for each in schedule(with_slides(kitchen(cabinet(of)))).findings
        if each.code == "stile-wants-blocking"
    ]  # fmt: skip

    assert where in finding.message


def test_of_a_stile_that_two_openings_share_nothing_is_said() -> None:
    """Nobody knows what stands behind it."""
    left = opening("pull-out", x=inch("3/4"), width=inch("15"), boxes=(SLIDING,))
    right = replace(left, label="b", x=inch("17 1/4"))
    of = with_slides(kitchen(cabinet(left, right, width=inch("33"))))

    assert "stile-wants-blocking" not in [each.code for each in schedule(of).findings]
