"""By how much an opening ends past its cabinet: it is the hole in that cabinet's face.

Nothing of the trade: a slip of the tape or of the finger, so pages and files refuse it.
"""

from collections.abc import Mapping
from typing import Literal

from fronts.rules.lengths import Mm
from fronts.rules.rect import Rect


def ends_past(opening: Rect, width: Mm, height: Mm) -> Mapping[Literal["width", "height"], Mm]:
    """How far it ends past a cabinet of this size, by the size that is too large; empty: within.

    Its place is from the cabinet's lower left corner.
    """
    past: dict[Literal["width", "height"], Mm] = {
        "width": opening.right - width,
        "height": opening.top - height,
    }
    return {size: by for size, by in past.items() if by > 0}
