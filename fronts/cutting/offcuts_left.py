"""What a plan leaves that is worth keeping, piece by piece."""

from collections.abc import Iterator
from dataclasses import dataclass

from fronts.cutting.model import Layout, Offcut, Plan
from fronts.rules.lengths import Mm
from fronts.rules.offcuts import LeastKept, is_worth_keeping


@dataclass(frozen=True, slots=True)
class OffcutLeft:
    """One piece that is left: which layout it is of, which sheet cut so, which of its offcuts.

    `length` runs along the grain; a stick has no width of its own.
    """

    layout: int
    copy: int
    index: int
    length: Mm
    width: Mm | None
    is_grained: bool

    @property
    def place(self) -> str:
        """Its name within the plan of its material."""
        return f"{self.layout}.{self.copy}.{self.index}"


def offcuts_left(plan: Plan, least: LeastKept) -> Iterator[OffcutLeft]:
    """The pieces worth keeping, sheet by sheet, the largest of each first."""
    for number, layout in enumerate(plan.layouts):
        for copy in range(layout.count):
            for index, offcut in largest_first(layout):
                if offcut.usable and is_worth_keeping(offcut.length, offcut.width, least):
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
    return OffcutLeft(*place, length, width, grain is not None)
