"""What a plan leaves that may be kept, piece by piece."""

from collections.abc import Iterator
from dataclasses import dataclass

from fronts.cutting.model import Layout, Offcut, Plan
from fronts.rules.lengths import Mm


@dataclass(frozen=True, slots=True)
class OffcutLeft:
    """One piece that is left: of which layout, which of the sheets cut so, which of its offcuts.

    `length` runs along the grain; a stick has no width of its own.
    """

    number: int
    copy: int
    index: int
    layout: Layout
    length: Mm
    width: Mm | None

    @property
    def place(self) -> str:
        """Its name within the plan of its material."""
        return place_of(self.number, self.copy, self.index)

    @property
    def is_grained(self) -> bool:
        """Whether grain runs along its length."""
        return self.width is None or self.layout.stock.grain is not None


def place_of(number: int, copy: int, index: int) -> str:
    """The name of a piece by its layout's number, its sheet's, and its own on it."""
    return f"{number}.{copy}.{index}"


def offcuts_left(plan: Plan) -> Iterator[OffcutLeft]:
    """The pieces that can be used, sheet by sheet, the largest of each first."""
    for number, layout in enumerate(plan.layouts):
        for copy in range(layout.count):
            for index, offcut in largest_first(layout):
                if offcut.usable:
                    yield _left(layout, offcut, (number, copy, index))


def largest_first(layout: Layout) -> list[tuple[int, Offcut]]:
    """A layout's offcuts with their numbers."""
    return sorted(
        enumerate(layout.offcuts), key=lambda pair: -pair[1].length * (pair[1].width or 1)
    )


def _left(layout: Layout, offcut: Offcut, place: tuple[int, int, int]) -> OffcutLeft:
    length, width, grain = offcut.length, offcut.width, layout.stock.grain
    if width is not None and (grain == "width" or (grain is None and width > length)):
        length, width = width, length
    return OffcutLeft(*place, layout, length, width)
