"""How much is sawn off which side of a door on hand; worked by hand from the rule.

The order of the ways and the 3 mm left beside a hole are common practice, no source.
"""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.door_trim import LEAST_RIM, trim_of, trimmed
from fronts.rules.kinds import SIDES
from fronts.rules.kitchen import DoorOnHand, KnobHole, Point
from fronts.rules.lengths import Mm
from fronts.rules.practice import PRACTICE
from tests.rules.hinge_items import mm
from tests.rules.laws import LAW

W, H, LEAST = mm("400"), mm("700"), mm("44")
HOLE = KnobHole(mm("360"), mm("350"), mm("5"))


def _door(
    *bores: tuple[str, str], knob: KnobHole | None = None, framed: bool = False
) -> DoorOnHand:
    """400 × 700 mm, with bores of 35 mm; framed with 57 mm all round."""
    return DoorOnHand(
        "D1", W, H, mm("19"), "five-piece" if framed else "slab", stile=mm("57"), rail=mm("57"),
        knob_hole=knob, hinge_bores=tuple(Point(mm(x), mm(y)) for x, y in bores),
    )  # fmt: skip


def _off(
    door: DoorOnHand, over: str = "10", up: str = "0", *, spare_bores: bool = False
) -> tuple[dict[str, Mm], bool, bool]:
    found = trim_of(
        door, W - mm(over), H - mm(up), LEAST, PRACTICE, spare_bores=spare_bores
    )  # fmt: skip
    return {s: found.sides[s] for s in SIDES if found.sides[s]}, found.cuts, found.uneven


def _sides(**off: str) -> dict[str, Mm]:
    return {side: mm(text) for side, text in off.items()}


BORED = ("22", "90")
SLAB = [
    ("no holes: half each", _door(), _sides(left="5", right="5")),
    ("bores at the left: all from the right", _door(BORED), _sides(right="10")),
    ("a knob hole at the right: all from the left", _door(knob=HOLE), _sides(left="10")),
    ("holes on both sides: half each", _door(("40", "90"), knob=HOLE), _sides(left="5", right="5")),
    ("half would cut the bore: all left would too, all right", _door(("22", "90"), knob=HOLE),
     _sides(right="10")),
    ("half would cut the right one: all left", _door(("40", "90"), ("378", "90")),
     _sides(left="10")),
    ("a hole in the very middle is on no side", _door(("200", "90")), _sides(left="5", right="5")),
]  # fmt: skip


@pytest.mark.parametrize(("door", "off"), [row[1:] for row in SLAB], ids=[row[0] for row in SLAB])
def test_a_slabs_width(door: DoorOnHand, off: dict[str, Mm]) -> None:
    """Its only bare side, half each, all left, all right."""
    assert _off(door) == (off, False, False)


FRAMED = [
    ("no holes: half each", _door(framed=True), False, _sides(left="5", right="5")),
    ("a bore far enough in: half each", _door(("40", "90"), framed=True), False,
     _sides(left="5", right="5")),
    ("a bore in the way of half: all left would cut it too", _door(BORED, framed=True), False,
     _sides(right="10")),
    ("bores that hinges use again: all from the side without", _door(("40", "90"), framed=True),
     True, _sides(right="10")),
    ("… at the right", _door(("360", "90"), framed=True), True, _sides(left="10")),
    ("… but a knob hole in its way there: all from their own",
     _door(("40", "90"), knob=replace(HOLE, x=mm("394")), framed=True), True, _sides(left="10")),
    ("… on both sides: half each", _door(("40", "90"), ("360", "90"), framed=True), True,
     _sides(left="5", right="5")),
]  # fmt: skip


@pytest.mark.parametrize(
    ("door", "spare", "off"), [row[1:] for row in FRAMED], ids=[row[0] for row in FRAMED]
)
def test_a_five_piece_doors_width(door: DoorOnHand, spare: bool, off: dict[str, Mm]) -> None:
    """Half each first; its stiles differ where it is not."""
    uneven = off.get("left") != off.get("right")

    assert _off(door, spare_bores=spare) == (off, False, uneven)


HEIGHTS = [
    ("half each", _door(("60", "90")), _sides(top="5", bottom="5")),
    ("all from the top, a bore near the bottom", _door(("60", "24")), _sides(top="10")),
    ("all from the bottom, a bore near the top", _door(("60", "676")), _sides(bottom="10")),
]  # fmt: skip


@pytest.mark.parametrize(
    ("door", "off"), [row[1:] for row in HEIGHTS], ids=[row[0] for row in HEIGHTS]
)
def test_heights(door: DoorOnHand, off: dict[str, Mm]) -> None:
    """Half each, all top, all bottom."""
    assert _off(door, "0", "10") == (off, False, False)


@pytest.mark.parametrize(("inward", "cut"), [("25.5", False), ("25.49", True)])
def test_three_millimetres_stay_beside_a_hole(inward: str, cut: bool) -> None:
    """A bore of 35 mm at both sides, 10 mm off in all: 25.5 - 17.5 - 5 leaves 3."""
    door = _door((inward, "90"), (str(400 - float(inward)), "90"))

    assert _off(door) == (_sides(left="5", right="5"), cut, False)


def test_no_way_without_a_cut_is_the_first() -> None:
    """A bore at either side, near the edge."""
    assert _off(_door(BORED, ("378", "90"))) == (_sides(left="5", right="5"), True, False)


def test_a_frame_keeps_its_least_stile() -> None:
    """57 - 14 would leave 43: half each is all there is, though it cuts the bore."""
    assert _off(_door(BORED, framed=True), "14") == (_sides(left="7", right="7"), True, False)
    assert _off(_door(BORED, framed=True), "13") == (_sides(right="13"), False, True)


def test_nothing_over_nothing_off() -> None:
    """Holes at the very edge of a door that is used as it is are nobody's fault."""
    assert _off(_door(("10", "10")), "0", "0") == ({}, False, False)


def test_places_are_reckoned_from_the_new_edges() -> None:
    """What comes off the left and the bottom comes off every x and y."""
    door = _door(("40", "90"), knob=HOLE)
    off = trim_of(door, W - mm("10"), H - mm("6"), LEAST, PRACTICE).sides
    found = trimmed(door, off)

    assert (found.width, found.height) == (mm("390"), mm("694"))
    assert found.hinge_bores == (Point(mm("35"), mm("87")),)
    assert found.knob_hole == KnobHole(mm("355"), mm("347"), mm("5"))


places = st.tuples(st.integers(0, 400), st.integers(0, 700)).map(lambda p: (str(p[0]), str(p[1])))


@LAW
@given(st.lists(places, max_size=3), st.integers(0, 25), st.integers(0, 25), st.booleans())
def test_all_of_it_comes_off_and_no_hole_is_cut_unsaid(
    bores: list[tuple[str, str]], over: int, up: int, framed: bool
) -> None:
    """Widths and heights add up; a rim within 3 mm of a sawn edge is told."""
    door = _door(*bores, framed=framed)
    found = trim_of(door, W - over, H - up, LEAST, PRACTICE)
    off, new = found.sides, trimmed(door, found.sides)

    assert (off.left + off.right, off.top + off.bottom) == (Mm(over), Mm(up))
    assert min(off[side] for side in SIDES) >= 0
    across, up_it = [b.x for b in new.hinge_bores], [b.y for b in new.hinge_bores]
    rims = {
        "left": across, "right": [new.width - x for x in across],
        "bottom": up_it, "top": [new.height - y for y in up_it],
    }  # fmt: skip
    near = any(
        off[side] > 0 and min(rims[side]) - door.bore_diameter / 2 < LEAST_RIM
        for side in SIDES
        if rims[side]
    )
    assert found.cuts or not near
