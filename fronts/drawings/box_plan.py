"""A box to be made, cut through level above its bottom: its corners, and what it is squared by.

And one of its sides from inside, as it lies on the bench: where groove and joint are cut.
"""

from collections.abc import Mapping, Sequence

from fronts.drawings.box_sections import FIGURE, ROW
from fronts.drawings.box_shape import (
    BOTTOM,
    LONG,
    LONG_FROM_ABOVE,
    STOCK,
    WIDE,
    BoxShapeDrawn,
)
from fronts.drawings.dimension import Chain, Piece, dimension_chain
from fronts.drawings.drawing import PAPER, Drawing
from fronts.drawings.geometry import Area, Place
from fronts.drawings.section import draw_cut
from fronts.drawings.svg import Px

_NOTE: Px = 11_00


def from_above(shape: BoxShapeDrawn, says: Mapping[str, str], stock: Mapping[str, str]) -> str:
    """Cut through level, its front at the foot of the drawing."""
    drawing, deep = Drawing(PAPER), LONG_FROM_ABOVE
    inner = STOCK - shape.pocket.depth
    for flip in (False, True):
        _side(drawing, shape, flip=flip)
        _end(drawing, shape, flip=flip)
    x, y = WIDE * 3 // 8, -deep * 5 // 8
    drawing.text(x, y, says["X"], FIGURE, kind="dimension")
    drawing.broken_line("hand", 0, 0, WIDE, -deep)
    drawing.broken_line("hand", 0, -deep, WIDE, 0)
    chain = Chain("x", ROW, 1, 0, FIGURE)
    dimension_chain(drawing, chain, [Piece(inner, WIDE - inner, says["D"])])
    pieces = [Piece(inner, STOCK, stock["joint"])] if shape.pocket.depth else []
    dimension_chain(drawing, Chain("x", -deep - ROW, -1, -deep, FIGURE), pieces)
    dimension_chain(drawing, Chain("y", -ROW, -1, 0, FIGURE), [Piece(-deep, 0, says["C"])])
    right = [Piece(-STOCK, 0, stock["side"])]
    if shape.pocket.near:
        right = [
            Piece(-shape.pocket.near, 0, stock["near"]),
            Piece(-STOCK, -shape.pocket.near, stock["tongue"]),
        ]
    dimension_chain(drawing, Chain("y", WIDE + ROW, 1, WIDE, FIGURE), right)
    return drawing.svg("The box from above, cut through level", "box")


def _side(drawing: Drawing, shape: BoxShapeDrawn, *, flip: bool) -> None:
    """One side with its ends' pockets; the right one with `flip`."""
    deep, pocket = LONG_FROM_ABOVE, shape.pocket
    within = STOCK - pocket.depth
    end: list[Place] = [(within, pocket.near), (within, STOCK), (STOCK, STOCK)]
    if pocket.near:
        end = [(STOCK, 0), (STOCK, pocket.near), *end]
    outline = [(0, 0), *end, *((x, deep - y) for x, y in reversed(end)), (0, deep)]
    areas = [
        Area(0, 0, within, deep),
        Area(within, STOCK, STOCK, deep - STOCK),
        Area(within, 0, STOCK, pocket.near),
        Area(within, deep - pocket.near, STOCK, deep),
    ]
    placed = [(WIDE - x if flip else x, -y) for x, y in outline]
    draw_cut(drawing, placed, [_turned(area, across=flip) for area in areas], 1)


def _turned(area: Area, *, across: bool = False, along: bool = False) -> Area:
    """An area from the front's left corner inwards, on paper; or at the right, or the back."""
    left, right = (WIDE - area.right, WIDE - area.left) if across else (area.left, area.right)
    if along:
        return Area(left, area.top - LONG_FROM_ABOVE, right, area.bottom - LONG_FROM_ABOVE)
    return Area(left, -area.bottom, right, -area.top)


def _end(drawing: Drawing, shape: BoxShapeDrawn, *, flip: bool) -> None:
    """The front, or with `flip` the back, with what of it goes into the sides."""
    pocket = shape.pocket
    within = STOCK - pocket.depth
    tongue = [(STOCK, 0), (STOCK, pocket.near), (within, pocket.near), (within, STOCK)]
    half: Sequence[Place] = tongue if pocket.near else [(within, 0), (within, STOCK)]
    outline = [*half, *((WIDE - x, y) for x, y in reversed(half))]
    areas = [
        Area(STOCK, 0, WIDE - STOCK, STOCK),
        Area(within, pocket.near, STOCK, STOCK),
        Area(WIDE - STOCK, pocket.near, WIDE - within, STOCK),
    ]
    placed = [(x, y - LONG_FROM_ABOVE if flip else -y) for x, y in outline]
    draw_cut(drawing, placed, [_turned(area, along=flip) for area in areas], -1)


def side_from_inside(
    shape: BoxShapeDrawn, says: Mapping[str, str], stock: Mapping[str, str], cuts: Sequence[str]
) -> str:
    """A left side's inner face, its front end at the left; `cuts` are said over it."""
    drawing, high = Drawing(PAPER), shape.side_high
    drawing.rect("box", Area(0, -high, LONG, 0))
    foot = -shape.recess
    for y in (foot, foot - BOTTOM):
        drawing.line("cabinet", 0, y, LONG, y)
    pocket = shape.pocket
    if pocket.depth:
        for near in (pocket.near, STOCK):
            for x in (near, LONG - near):
                drawing.line("cabinet", x, -high, x, 0)
    drawing.text(0, -high - _NOTE, ", ".join(cuts), _NOTE, "start", kind="note")
    below = [Piece(0, STOCK, stock["side"]), Piece(LONG - STOCK, LONG, stock["side"])]
    if pocket.near:
        below = [
            Piece(0, pocket.near, stock["near"]),
            Piece(pocket.near, STOCK, stock["tongue"]),
        ]
    out = ROW
    if pocket.depth:
        out = dimension_chain(drawing, Chain("x", ROW, 1, 0, FIGURE), below) + ROW
    dimension_chain(drawing, Chain("x", out, 1, 0, FIGURE), [Piece(0, LONG, says["C"])])
    left = Chain("y", -ROW, -1, 0, FIGURE)
    dimension_chain(drawing, left, [
        Piece(foot, 0, stock["recess"]), Piece(foot - BOTTOM, foot, stock["bottom"])
    ])  # fmt: skip
    right = Chain("y", LONG + ROW, 1, LONG, FIGURE)
    dimension_chain(drawing, right, [Piece(-high, 0, says.get("H", says["B"]))])
    return drawing.svg("A side from inside", "box")
