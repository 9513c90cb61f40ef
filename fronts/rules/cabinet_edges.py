"""How far the edges of a front lie within its cabinet's outline, on its wall.

What of the cabinet shows beside the front; below zero: how far the front goes past it.
"""

from fronts.rules.kitchen import Cabinet
from fronts.rules.lengths import Mm
from fronts.rules.rect import Rect
from fronts.rules.standard_keys import Sides


def to_edges(inner: Rect, outer: Rect) -> Sides[Mm]:
    """From each edge of a rectangle to the edge round it at that side."""
    return Sides(
        left=inner.x - outer.x,
        right=outer.right - inner.right,
        top=outer.top - inner.top,
        bottom=inner.y - outer.y,
    )


def to_cabinet_edges(front: Rect, cabinet: Cabinet) -> Sides[Mm]:
    """From each edge of the front to the cabinet's edge at that side."""
    return to_edges(front, Rect(cabinet.left, cabinet.y, cabinet.width, cabinet.height))
