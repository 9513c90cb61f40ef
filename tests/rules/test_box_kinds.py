"""Boxes to be made by kinds: nothing is lost or told twice, and a diagonal is the root it is."""

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from fronts.rules.box_kinds import kinds_of_boxes, nearest_root
from fronts.rules.box_parts import PIECES
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import INCH, Mm
from fronts.rules.schedule import schedule
from fronts.rules.slide_needs import needs_of
from tests.drawings.kitchens import demo
from tests.rules.laws import LAW
from tests.rules.made_boxes import kitchens_of_boxes
from tests.rules.small_kitchens import inch

# Whole-number right triangles (Euclid, Elements X.29), and two worked out by hand.
DIAGONALS = [
    ("9", "12", "1/16", "15"),
    ("20", "21", "1/16", "29"),
    ("22", "26", "1/16", "34 1/16"),
    ("14", "22", "1", "26"),
]


@pytest.mark.parametrize(("wide", "long", "step", "diagonal"), DIAGONALS)
def test_a_diagonal_is_the_root_to_the_shops_step(
    wide: str, long: str, step: str, diagonal: str
) -> None:
    """22² + 26² = 1160, whose root is 34.0588; 14² + 22² = 680, 26.08."""
    square = inch(wide) ** 2 + inch(long) ** 2
    assert nearest_root(square, inch(step)) == inch(diagonal)


@given(
    st.fractions(min_value=0, max_value=10**8, max_denominator=10**4),
    st.sampled_from((INCH / 16, INCH / 64, Mm(1), Mm(1, 2))),
)
def test_no_other_step_is_nearer_to_the_root(square: Fraction, step: Mm) -> None:
    """The root lies within half a step of it, by squares alone."""
    root = nearest_root(square, step)
    assert root % step == 0
    assert max(root - step / 2, Mm(0)) ** 2 <= square <= (root + step / 2) ** 2


@settings(LAW, max_examples=60)
@given(kitchens_of_boxes())
def test_kinds_hold_every_box_and_piece_once(of: Kitchen) -> None:
    """Counts, lengths and slides are the schedule's, piece by piece."""
    found = schedule(of)
    kinds = kinds_of_boxes(found, of)
    items = {item.code: item for item in of.hardware.slides}
    boxes = [(box, size, kind) for kind in kinds for size in kind.sizes for box in size.boxes]
    assert sorted(box.front for box, _, _ in boxes) == sorted(
        box.front for box in found.boxes if box.made
    )
    pieces = [part for part in found.parts if part.part in PIECES]
    told = [(box.front, part) for box, size, _ in boxes for part in size.parts.values()]
    assert len(told) == len(pieces)
    for box, size, kind in boxes:
        assert (box.width, box.height) == (size.like.width, size.like.height)
        assert kind.needs == needs_of(items[box.slide or ""], of.job.unit)
        for part in pieces:
            if part.front == box.front:
                alike = size.parts[part.part]
                assert (part.length, part.width, part.thickness, part.count) == (
                    alike.length, alike.width, alike.thickness, alike.count,
                )  # fmt: skip


def test_the_demo_has_two_kinds_and_their_weights() -> None:
    """Three drawers on under slides in two sizes, two on side slides.

    B4.b by hand: 2 sides 22 × 4 × 1/2, front and back 13 1/2 × 4 × 1/2, a bottom
    13 7/16 × 21 7/16 × 1/4 in are 214.0 in³ of birch plywood; at 600 kg/m³ 2.1 kg.
    """
    of, worked_out = demo()
    under, side = kinds_of_boxes(worked_out, of)
    assert [(size.like.front, size.count) for size in under.sizes] == [
        ("B2.a.2", 2), ("B2.a.1", 1),
    ]  # fmt: skip
    assert under.slide == "under"
    assert under.needs.recess == 13
    assert under.open_behind
    assert [size.like.front for size in side.sizes] == ["B5.b", "B4.b"]
    assert float(side.sizes[1].weight_kg) == pytest.approx(2.1, abs=0.05)
    assert not side.low
    assert not side.open_behind
