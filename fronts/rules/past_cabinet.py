"""By how much an opening ends past its cabinet: it is the hole in that cabinet's face.

Nothing of the trade: a slip of the tape or of the finger, so pages and files refuse it.
"""

from collections.abc import Mapping
from typing import Literal, Protocol

from fronts.rules.lengths import Mm


class Sized(Protocol):
    """What has a size: a cabinet, as a thing or as a row."""

    @property
    def width(self) -> Mm: ...
    @property
    def height(self) -> Mm: ...


class Placed(Sized, Protocol):
    """What has a place too: an opening, as a thing or as a row."""

    @property
    def x(self) -> Mm: ...
    @property
    def y(self) -> Mm: ...


def ends_past(opening: Placed, cabinet: Sized) -> Mapping[Literal["width", "height"], Mm]:
    """How far it ends past its cabinet, by the size that is too large; empty: within.

    Its place is from the cabinet's lower left corner.
    """
    past: dict[Literal["width", "height"], Mm] = {
        "width": opening.x + opening.width - cabinet.width,
        "height": opening.y + opening.height - cabinet.height,
    }
    return {size: by for size, by in past.items() if by > 0}
