"""What a front that was cut needs once the kitchen is measured anew, worked by hand."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.figures.after_cut import after_cut_words
from fronts.rules.cut_fronts import after_cut, cut_to
from fronts.rules.lengths import Mm
from tests.rules.small_kitchens import cabinet, inch, kitchen, only_front, opening

OF = kitchen(cabinet(opening("door", hinged="left")))
FRONT = only_front(OF)
CUT = cut_to(FRONT, OF)

# Each: how the size and the lower left corner have changed since; what is to be done.
SINCE = [
    ("nothing", {}, ""),
    ("narrower at its right", {"width": "-1/16"}, "trim 1/16 off the right"),
    ("narrower at its left", {"width": "-1/16", "x": "1/16"}, "trim 1/16 off the left"),
    ("narrower at both", {"width": "-1/8", "x": "1/16"},
     "trim 1/16 off the left, 1/16 off the right"),
    ("narrower, and moved right", {"width": "-1/16", "x": "1/2"}, "trim 1/16 off the left"),
    ("narrower, and moved left", {"width": "-1/16", "x": "-1/2"}, "trim 1/16 off the right"),
    ("lower at its top", {"height": "-1/8"}, "trim 1/8 off the top"),
    ("lower at its bottom", {"height": "-1/8", "y": "1/8"}, "trim 1/8 off the bottom"),
    ("moved alone", {"x": "1/4", "y": "1/4"}, ""),
    ("wider", {"width": "1/16"}, "make again: 1/16 too narrow"),
    ("wider and lower", {"width": "1/16", "height": "-1"}, "make again: 1/16 too narrow"),
    ("wider and higher", {"width": "1/16", "height": "1/8"},
     "make again: 1/16 too narrow, 1/8 too low"),
    ("thinner", {"thickness": "-1/16"}, "make again: 1/16 off in its thickness"),
    # The shop trims 1 in at most (the house standard's own number).
    ("far too wide", {"width": "-1 1/16"},
     "make again: 1 1/16 off the right is more than may be trimmed"),
]  # fmt: skip


@pytest.mark.parametrize(
    ("since", "words"), [row[1:] for row in SINCE], ids=[row[0] for row in SINCE]
)
def test_what_is_to_be_done(since: dict[str, str], words: str) -> None:
    """An edge that has moved in is trimmed there; what lacks is made again."""
    now = replace(FRONT, **{name: getattr(FRONT, name) + inch(by) for name, by in since.items()})

    assert after_cut_words(after_cut(CUT, now, OF), "in") == words


def test_a_stile_that_gets_too_narrow_is_not_trimmed() -> None:
    """A five-piece front's stile of 2 in leaves 1 3/4 in, the least, and no less."""
    framed = replace(FRONT, build="five-piece", frame=replace(FRONT.frame, right=inch("2")))

    def since(less: str) -> str:
        now = replace(framed, width=framed.width - inch(less))
        return after_cut_words(after_cut(CUT, now, OF), "in")

    assert since("1/4") == "trim 1/4 off the right"
    assert since("5/16") == "make again: 5/16 off the right is more than may be trimmed"


parts = st.integers(-40, 40).map(lambda count: Mm(count) * inch("1/64"))


@given(width=parts, height=parts, x=parts, y=parts)
def test_trims_make_up_what_it_is_too_large_by(width: Mm, height: Mm, x: Mm, y: Mm) -> None:
    """To the last fraction, none less than nothing; and nothing is trimmed of what lacks."""
    now = replace(
        FRONT, width=FRONT.width + width, height=FRONT.height + height,
        x=FRONT.x + x, y=FRONT.y + y,
    )  # fmt: skip

    after = after_cut(CUT, now, OF)

    assert all(trim > 0 for trim in after.trims.values())
    if width > 0 or height > 0:
        assert after.make_again
        assert not after.trims
    else:
        across = [after.trims.get(side, Mm(0)) for side in ("left", "right")]
        upright = [after.trims.get(side, Mm(0)) for side in ("bottom", "top")]
        assert (sum(across), sum(upright)) == (-width, -height)
    assert after.holds == (not width and not height)
