"""Where a box's slides lie."""

from dataclasses import replace

import pytest

from fronts.rules.kinds import SlideKind
from fronts.rules.slides import SlideOutline, slide_outlines
from tests.rules.small_kitchens import BOX, inch, inches

OUTLINES: list[tuple[SlideKind, list[tuple[str, str, str, str]]]] = [
    ("bottom", [("6 1/8", "-1/2", "7 7/8", "0")]),
    ("under", [("0", "-1/2", "1 3/4", "0"), ("12 1/4", "-1/2", "14", "0")]),
    ("side", [("-1 3/4", "11 3/4", "0", "12 1/4"), ("14", "11 3/4", "15 3/4", "12 1/4")]),
]
SLIDING = replace(BOX, slide="side", slide_width=inch("1 3/4"), slide_height=inch("1/2"))


@pytest.mark.parametrize(("slide", "outlines"), OUTLINES, ids=[kind for kind, _ in OUTLINES])
def test_where_a_slide_lies(slide: SlideKind, outlines: list[tuple[str, str, str, str]]) -> None:
    """A box 14 × 24 in: in the middle below it, below its edges, or halfway up its sides."""
    assert slide_outlines(replace(SLIDING, slide=slide)) == tuple(
        SlideOutline(*inches(*each)) for each in outlines
    )


@pytest.mark.parametrize("unknown", ["slide", "slide_width", "slide_height"])
def test_a_slide_that_nobody_measured_lies_nowhere(unknown: str) -> None:
    """Kind, width and height are all needed."""
    box = replace(SLIDING, **{unknown: None})  # type: ignore[arg-type]

    assert slide_outlines(box) == ()
