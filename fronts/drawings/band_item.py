"""What the numbers of an edge band mean: a slab cut through at its banded edge."""

from fronts.drawings.dimension import Chain, Piece, dimension_chain
from fronts.drawings.drawing import SCREEN, Drawing
from fronts.drawings.scale import Scale
from fronts.rules.items import BandItem
from fronts.rules.lengths import NOTHING, Mm, write

LONG, THICK, BAND, OVER = Mm(110), Mm(38), Mm(12), Mm(4)
"""A slab and its band as they are drawn: not to scale with the figures."""
_SIZE = 11_00
_ROW = 12_00


def band_item_drawing(band: BandItem, unit: str) -> str:
    """The section as an `<svg>`, with the figures that the band has."""
    drawing, scale = Drawing(SCREEN), Scale(2_600)
    slab = scale.area(NOTHING, NOTHING, LONG, THICK)
    on_edge = scale.area(LONG, -OVER, BAND, THICK + 2 * OVER)
    drawing.rect("front", slab)
    drawing.rect("box", on_edge)
    drawing.text(*slab.middle, "front, cut through", 12_00, kind="note")
    below = Chain("x", on_edge.bottom + _ROW, 1, on_edge.bottom, _SIZE)
    thick = f"thickness {write(band.thickness, unit)}"
    dimension_chain(drawing, below, [
        Piece(slab.left, slab.right, "cut size"),
        Piece(slab.right, on_edge.right, thick),
    ])  # fmt: skip
    whole = Chain("x", on_edge.top - _ROW, -1, on_edge.top, _SIZE)
    dimension_chain(drawing, whole, [Piece(slab.left, on_edge.right, "finished size")])
    beside = Chain("y", on_edge.right + _ROW, 1, on_edge.right, _SIZE)
    wide = "width" if band.width is None else f"width {write(band.width, unit)}"
    dimension_chain(drawing, beside, [Piece(on_edge.top, on_edge.bottom, wide)])
    return drawing.svg(f"Edge band {band.code}", "band")
