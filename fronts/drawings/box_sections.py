"""A box to be made, cut through across and along: grooves, recess, back, and where its slide is."""

from collections.abc import Mapping, Sequence
from itertools import pairwise

from fronts.drawings.box_shape import BOTTOM, GROOVE, LONG, STOCK, WIDE, BoxShapeDrawn
from fronts.drawings.dimension import Axis, Chain, Piece, Towards, dimension_chain
from fronts.drawings.drawing import PAPER, Drawing
from fronts.drawings.geometry import Area
from fronts.drawings.section import draw_cut_block, draw_grooved
from fronts.drawings.svg import Px
from fronts.rules.kinds import SlideKind

FIGURE: Px = 11_00
ROW: Px = 11_00
_SLIDE: Px = 9_00
_NOTE: Px = 11_00


def across(
    shape: BoxShapeDrawn, slide: SlideKind, says: Mapping[str, str], stock: Mapping[str, str]
) -> str:
    """Cut across, seen from the front towards the back.

    `says` has the lengths by their letters, `stock` the thicknesses that all sizes share.
    """
    drawing, inner = Drawing(PAPER), WIDE - STOCK
    _back_behind(drawing, shape)
    for tier in shape.tiers:
        top, grooves = -tier - shape.side_high, [_groove(shape, tier)]
        draw_grooved(drawing, Area(0, top, STOCK, -tier), grooves, GROOVE, 1)
        draw_grooved(drawing, Area(inner, top, WIDE, -tier), grooves, GROOVE, -1)
        _panel(drawing, STOCK - GROOVE, inner + GROOVE, grooves[0])
    _slides_across(drawing, shape, slide)
    drawing.text(WIDE // 2, -shape.high + _NOTE, "back", _NOTE, kind="note")
    foot = drawing.bounds().bottom
    _rows(drawing, "x", foot, 1, [
        [Piece(STOCK - GROOVE, inner + GROOVE, says["E"])],
        [Piece(0, WIDE, says["A"])],
    ])  # fmt: skip
    floor = -shape.recess
    left = drawing.bounds().left
    _rows(drawing, "y", min(left, 0), -1, [
        [Piece(floor, 0, stock["recess"]), Piece(floor - BOTTOM, floor, stock["bottom"])],
    ])  # fmt: skip
    tiers = [Piece(-upper, -lower, says["K"]) for lower, upper in pairwise(shape.tiers)]
    whole = [Piece(-shape.high, 0, says["B"])]
    _rows(drawing, "y", WIDE + _SLIDE, 1, [tiers, whole] if tiers else [whole])
    return drawing.svg("The box cut across, seen from the front", "box")


def along(shape: BoxShapeDrawn, slide: SlideKind, says: Mapping[str, str]) -> str:
    """Cut along, its front at the left."""
    drawing = Drawing(PAPER)
    for tier in shape.tiers:
        drawing.rect("cabinet", Area(STOCK, -tier - shape.side_high, LONG - STOCK, -tier))
    if shape.open_behind:
        drawing.rect("cabinet", Area(LONG - STOCK, -shape.back_from, LONG, 0))
    grooves = [_groove(shape, tier) for tier in shape.tiers]
    for tier, groove in zip(shape.tiers, grooves, strict=True):
        end = shape.bottom_to if tier == 0 else LONG - STOCK + GROOVE
        _panel(drawing, STOCK - GROOVE, end, groove)
    draw_grooved(drawing, Area(0, -shape.high, STOCK, 0), grooves, GROOVE, 1)
    behind = Area(LONG - STOCK, -shape.high, LONG, -shape.back_from)
    draw_grooved(drawing, behind, grooves[1:] if shape.open_behind else grooves, GROOVE, -1)
    if slide == "under":
        drawing.rect("hidden", Area(STOCK, -shape.recess, LONG, -shape.recess + 2 * _SLIDE))
    rows = [[Piece(STOCK - GROOVE, shape.bottom_to, says["F"])], [Piece(0, LONG, says["C"])]]
    if "J" in says and shape.open_behind:
        rows.insert(0, [Piece(STOCK - GROOVE, LONG - STOCK + GROOVE, says["J"])])
    _rows(drawing, "x", 0, 1, rows)
    if shape.open_behind:
        _rows(drawing, "y", LONG, 1, [[Piece(-shape.high, -shape.back_from, says["G"])]])
    return drawing.svg("The box cut along, its front at the left", "box")


def _groove(shape: BoxShapeDrawn, tier: Px) -> tuple[Px, Px]:
    """From its upper edge to its lower one."""
    return -tier - shape.recess - BOTTOM, -tier - shape.recess


def _panel(drawing: Drawing, start: Px, end: Px, groove: tuple[Px, Px]) -> None:
    draw_cut_block(drawing, Area(start, groove[0], end, groove[1]), leaning=-1)


def _rows(
    drawing: Drawing, axis: Axis, base: Px, towards: Towards, rows: Sequence[Sequence[Piece]]
) -> None:
    """Chains of dimensions, each outside the one before."""
    out = base
    for pieces in rows:
        chain = Chain(axis, out + towards * ROW, towards, base, FIGURE)
        out = dimension_chain(drawing, chain, pieces)


def _back_behind(drawing: Drawing, shape: BoxShapeDrawn) -> None:
    """What is seen of the back: between the sides, and over low ones."""
    low, high = -shape.back_from, -shape.high
    drawing.line("cabinet", STOCK, low, WIDE - STOCK, low)
    end = STOCK - shape.pocket.depth if shape.side_high < shape.high else STOCK
    drawing.line("cabinet", end, high, WIDE - end, high)
    for start, stop in pairwise((*shape.tiers, shape.high)):
        if start + shape.side_high < stop:
            for x in (end, WIDE - end):
                drawing.line("cabinet", x, -start - shape.side_high, x, -stop)


def _slides_across(drawing: Drawing, shape: BoxShapeDrawn, slide: SlideKind) -> None:
    """Beside the sides, in the recess below the bottom, or in the middle below the box."""
    middle, foot = shape.side_high // 2, -shape.recess
    far, across = WIDE - STOCK - 2 * _SLIDE, WIDE // 2
    areas = {
        "side": [Area(x, -middle - _SLIDE, x + _SLIDE, _SLIDE - middle) for x in (-_SLIDE, WIDE)],
        "under": [Area(x, foot, x + 2 * _SLIDE, foot + 2 * _SLIDE) for x in (STOCK, far)],
        "bottom": [Area(across - 2 * _SLIDE, 0, across + 2 * _SLIDE, 2 * _SLIDE)],
    }
    for area in areas[slide]:
        drawing.rect("hidden", area)
