"""Where foam tape may hold a front: common practice, no source."""

import pytest

from fronts.rules.findings import FindingWriter
from fronts.rules.foam_tape import foam_tape
from fronts.rules.kitchen import Measured
from tests.rules.small_kitchens import inch, opening

NOTHING_TAKEN = Measured()
WIDER = Measured(width_top=inch("15"), width_bottom=inch("15 1/8"))
HIGHER = Measured(height_left=inch("27 1/2"), height_right=inch("27 5/8"))
CASES = [
    ("true", NOTHING_TAKEN, None, True),
    ("1/8 wider below", WIDER, None, True),
    ("1/8 higher at the right", HIGHER, None, True),
    ("1/8 wider, and leaning a hair", WIDER, "1/64", False),
    ("1/8 higher, and leaning a hair", HIGHER, "1/64", False),
    ("leaning 1/8", NOTHING_TAKEN, "1/8", True),
    ("leaning 1/8 the other way", NOTHING_TAKEN, "-1/8", True),
    ("leaning 9/64", NOTHING_TAKEN, "9/64", False),
    ("leaning 9/64 the other way", NOTHING_TAKEN, "-9/64", False),
]


@pytest.mark.parametrize(
    ("measured", "lean", "suggested"), [row[1:] for row in CASES], ids=[row[0] for row in CASES]
)
def test_only_where_the_opening_is_true(
    measured: Measured, lean: str | None, suggested: bool
) -> None:
    """Half of what it is out by may come to the least gap, 1/16 in, and no more."""
    leaning = None if lean is None else inch(lean)

    tape = foam_tape(opening(measured=measured), leaning, inch("1/16"), FindingWriter("in"))

    assert tape.suggested is suggested
    assert ("1/16 in" in tape.why) is not suggested
