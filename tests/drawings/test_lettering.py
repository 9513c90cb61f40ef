"""Estimated text widths, against the fonts that the sheets are set in."""

import string
from functools import cache

import pytest
from fontTools.ttLib import TTFont  # type: ignore[import-untyped]
from hypothesis import given
from hypothesis import strategies as st

from fronts.drawings.lettering import shortened, text_width
from fronts.sheets.pdf import BUNDLED

FONTS = {False: "DejaVuSansCondensed.ttf", True: "DejaVuSansCondensed-Bold.ttf"}
PRINTED = string.ascii_letters + string.digits + " .,:;-/×≈½⌀→↑()'\"!&#%+"


@cache
def font(bold: bool) -> TTFont:
    """A bundled font."""
    return TTFont(BUNDLED / "fonts" / FONTS[bold])


@pytest.mark.parametrize("bold", [False, True])
@given(text=st.text(alphabet=PRINTED, max_size=30))
def test_an_estimate_is_never_too_small(bold: bool, text: str) -> None:
    """Texts that are kept apart by the estimate are apart in print; it is not far off either."""
    glyphs, advances = font(bold).getBestCmap(), font(bold)["hmtx"]
    em = font(bold)["head"].unitsPerEm
    true = sum(advances[glyphs[ord(each)]][0] for each in text) * 10_00 / em
    assert true <= text_width(text, 10_00, bold=bold) + 1


def test_figures_are_not_far_overestimated() -> None:
    """A size such as 15 7/16 is taken at most a tenth too wide, so that figures still fit."""
    glyphs, advances = font(False).getBestCmap(), font(False)["hmtx"]
    true = sum(advances[glyphs[ord(each)]][0] for each in "15 7/16")
    assert text_width("15 7/16", 10_00) <= true * 10_00 * 1.1 / font(False)["head"].unitsPerEm


@given(st.text(max_size=60), st.integers(min_value=0, max_value=200_00))
def test_a_shortened_text_fits(text: str, room: int) -> None:
    """A text too long for its place is cut with `…`, or left out."""
    short = shortened(text, 12_00, room)
    assert short == "" or text_width(short, 12_00) <= room
    assert short in ("", text) or short.endswith("…")
