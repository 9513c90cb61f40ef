"""Dimension chains: every figure there, none on another."""

import itertools

from hypothesis import given
from hypothesis import strategies as st

from fronts.drawings.dimension import Axis, Chain, Piece, Towards, dimension_chain, spread
from fronts.drawings.drawing import Drawing
from tests.drawings.reading import meetings, texts

WANTS = st.lists(st.tuples(st.integers(0, 500_00), st.integers(1, 80_00)), max_size=12).map(sorted)


@given(WANTS)
def test_spread_keeps_order_and_room(wants: list[tuple[int, int]]) -> None:
    """Things moved apart keep their order and their extents, and don't overlap."""
    middles = spread(wants)
    placed = [
        (middle - extent // 2, extent) for middle, (_, extent) in zip(middles, wants, strict=True)
    ]
    for (start, extent), (following, _) in itertools.pairwise(placed):
        assert start + extent <= following


def test_what_has_room_is_not_moved() -> None:
    """Figures that don't meet stay in the middle of their pieces."""
    assert spread([(0, 10_00), (30_00, 10_00), (60_00, 10_00)]) == [0, 30_00, 60_00]


@given(
    st.lists(st.integers(1, 120_00), min_size=1, max_size=10),
    st.sampled_from(["x", "y"]),
    st.sampled_from([-1, 1]),
)
def test_no_figure_stands_on_another(lengths: list[int], axis: Axis, towards: Towards) -> None:
    """However small its pieces, a chain gives every figure once, each clear of the others."""
    pieces, start = [], 0
    for length in lengths:
        pieces.append(Piece(start, start + length, f"{length} 7/16"))
        start += length
    drawing = Drawing()
    outer = dimension_chain(drawing, Chain(axis, 20_00 * towards, towards, 0), pieces)
    svg = drawing.svg("chain", "test")
    assert sorted(each.text for each in texts(svg)) == sorted(each.text for each in pieces)
    assert meetings(svg) == []
    for each in texts(svg):
        ends = (
            (each.area.left, each.area.right) if axis == "y" else (each.area.top, each.area.bottom)
        )
        assert all(abs(end) <= abs(outer) + 1_00 for end in ends)
