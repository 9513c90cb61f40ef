"""What a front that was cut needs once the kitchen is measured anew, worked by hand."""

from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.figures.after_cut import after_cut_words
from fronts.rules.cut_fronts import CutTo, after_cut, cut_to
from fronts.rules.kitchen import FrontFacts
from fronts.rules.lengths import Mm
from fronts.rules.results import Front
from tests.rules.small_kitchens import all_round, cabinet, inch, kitchen, only_front, opening

OF = kitchen(cabinet(opening("door", hinged="left")))
FRONT = only_front(OF)
CUT = cut_to(FRONT, OF)
FRAMED = only_front(
    kitchen(cabinet(opening("door", hinged="left", front=FrontFacts(build="five-piece"))))
)

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
    framed = replace(FRAMED, frame=replace(FRAMED.frame, right=inch("2")))
    cut = cut_to(framed, OF)

    def since(less: str) -> str:
        now = replace(framed, width=framed.width - inch(less))
        return after_cut_words(after_cut(cut, now, OF), "in")

    assert since("1/4") == "trim 1/4 off the right"
    assert since("5/16") == "make again: 5/16 off the right is more than may be trimmed"


OAK = replace(FRONT, material="white oak")
GLAZED = replace(FRAMED, glass=True)
PLUG = "where it is bored, plug the cups and bore anew, or make it again"
AGAIN = "make again: cut "

# Each: the front as it was cut; what is another thing of it now; what is to be done.
MADE = [
    ("a slab, now framed", FRONT, {"build": "five-piece", "frame": FRAMED.frame},
     AGAIN + "as slab, now five-piece"),
    ("framed, now a slab", FRAMED, {"build": "slab"}, AGAIN + "as five-piece, now slab"),
    ("glazed, now a slab", GLAZED, {"build": "slab", "glass": False},
     AGAIN + "as five-piece, now slab"),
    ("another wood", OAK, {"material": "maple"}, AGAIN + "in white oak, now maple"),
    ("the same wood in other letters", OAK, {"material": "White Oak"}, ""),
    ("a wood that nobody names now", OAK, {"material": ""}, ""),
    ("its grain turned", OAK, {"grain_upright": False},
     AGAIN + "with its grain up and down, now from side to side"),
    ("turned, where there is none", replace(FRONT, material="MDF"), {"grain_upright": False}, ""),
    ("glass for a panel", FRAMED, {"glass": True}, AGAIN + "with a panel, now for glass"),
    ("a panel for glass", GLAZED, {"glass": False}, AGAIN + "for glass, now with a panel"),
    ("wider stiles and rails", FRAMED, {"frame": all_round("2 1/2")},
     AGAIN + "with stiles and rails 2 1/4 wide, now 2 1/2"),
    ("a lower rail", FRAMED, {"frame": replace(FRAMED.frame, bottom=inch("3"))},
     AGAIN + "with its bottom rail 2 1/4 wide, now 3"),
    ("a door on hand, now new", replace(FRONT, door_on_hand="D1"), {"door_on_hand": None},
     AGAIN + "from a door on hand, now made new"),
    ("new, now a door on hand", FRONT, {"door_on_hand": "D1"},
     AGAIN + "made new, now from a door on hand"),
    ("another door on hand", replace(FRONT, door_on_hand="D1"), {"door_on_hand": "D2"}, ""),
    ("another hand", FRONT, {"hinged": "right"},
     f"hinged at the left when it was cut, now at the right: {PLUG}"),
    ("another hand, and narrower", FRONT,
     {"hinged": "right", "width": FRONT.width - inch("1/16")},
     f"trim 1/16 off the right; hinged at the left when it was cut, now at the right: {PLUG}"),
    ("hinged no more", FRONT, {"hinged": None, "hinges": 0},
     "hinged at the left when it was cut, now not: plug its cups"),
    ("hinged now", replace(FRONT, hinged=None, hinges=0), {"hinged": "left", "hinges": 2}, ""),
    ("another hand of another wood", OAK, {"hinged": "right", "material": "maple"},
     AGAIN + "in white oak, now maple"),
    ("another wood, and wider", OAK, {"material": "maple", "width": FRONT.width + inch("1/16")},
     AGAIN + "in white oak, now maple; 1/16 too narrow"),
]  # fmt: skip


@pytest.mark.parametrize(
    ("was", "since", "words"), [row[1:] for row in MADE], ids=[row[0] for row in MADE]
)
def test_what_was_cut_as_another_thing(was: Front, since: dict[str, Any], words: str) -> None:
    """Another build, wood or grain is another front; another hand takes boring."""
    now = replace(was, **since)

    after = after_cut(cut_to(was, OF), now, OF)

    assert after_cut_words(after, "in") == words
    assert after.holds == (not words)


def test_of_a_front_that_was_cut_before_that_was_noted_only_the_size_is_told() -> None:
    """Nothing is known of how it was made."""
    older = CutTo(CUT.width, CUT.height, CUT.thickness, CUT.left, CUT.bottom)
    now = replace(FRAMED, hinged="right", material="maple", glass=True, door_on_hand="D1")

    assert after_cut(older, now, OF).holds
    narrower = replace(now, width=now.width - inch("1/16"))
    assert after_cut_words(after_cut(older, narrower, OF), "in") == "trim 1/16 off the right"


def test_a_door_on_hand_that_is_trimmed_again_has_narrower_stiles() -> None:
    """They follow from its size: what is told is the trimming."""
    door = replace(FRAMED, door_on_hand="D1")
    narrower = replace(
        door, width=door.width - inch("1/16"),
        frame=replace(door.frame, right=door.frame.right - inch("1/16")),
    )  # fmt: skip

    after = after_cut(cut_to(door, OF), narrower, OF)

    assert after_cut_words(after, "in") == "trim 1/16 off the right"


def test_what_has_no_end_of_decimals_holds_as_it_was_kept() -> None:
    """A third of a millimetre is kept to 8 places, and is no other size then."""
    third = replace(FRONT, width=FRONT.width + Mm(1, 3), x=FRONT.x + Mm(1, 7))

    assert after_cut(cut_to(third, OF), third, OF).holds


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
