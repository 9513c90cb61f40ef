"""How far the edges of a front lie within its cabinet's outline, on its wall.

What of the cabinet shows beside the front; below zero: how far the front goes past it.
"""

from fronts.rules.kitchen import Cabinet
from fronts.rules.lengths import Mm
from fronts.rules.rect import Rect
from fronts.rules.standard_keys import Sides


def to_cabinet_edges(front: Rect, cabinet: Cabinet) -> Sides[Mm]:
    """From each edge of the front to the cabinet's edge at that side."""
    return Sides(
        left=front.x - cabinet.x,
        right=cabinet.x + cabinet.width - front.right,
        top=cabinet.y + cabinet.height - front.top,
        bottom=front.y - cabinet.y,
    )
