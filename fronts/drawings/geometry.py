"""Rectangles on paper, and what of a line lies outside them."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import TypeAlias

from fronts.drawings.svg import Px

Place: TypeAlias = tuple[Px, Px]


@dataclass(frozen=True, slots=True)
class Area:
    """A rectangle on paper, y downwards."""

    left: Px
    top: Px
    right: Px
    bottom: Px

    @property
    def width(self) -> Px:
        return self.right - self.left

    @property
    def height(self) -> Px:
        return self.bottom - self.top

    @property
    def middle(self) -> tuple[Px, Px]:
        return (self.left + self.right) // 2, (self.top + self.bottom) // 2

    def grown(self, by: Px) -> "Area":
        return Area(self.left - by, self.top - by, self.right + by, self.bottom + by)

    def overlaps(self, other: "Area") -> bool:
        return self.meets((other,))

    def meets(self, others: "Sequence[Area]") -> bool:
        """Whether it overlaps one of them."""
        return next(self.met(others), None) is not None

    def met(self, others: "Sequence[Area]") -> "Iterator[Area]":
        """Those of them that it overlaps: a drawing asks this ten thousand times."""
        left, top, right, bottom = self.left, self.top, self.right, self.bottom
        for other in others:
            beside = right <= other.left or other.right <= left
            if not beside and top < other.bottom and other.top < bottom:
                yield other

    def holds(self, other: "Area") -> bool:
        return (
            self.left <= other.left
            and other.right <= self.right
            and self.top <= other.top
            and other.bottom <= self.bottom
        )


def left_open(start: Place, end: Place, areas: Sequence[Area]) -> Iterator[tuple[Place, Place]]:
    """The pieces of the line from `start` to `end` that lie in none of the areas."""
    around = Area(
        min(start[0], end[0]), min(start[1], end[1]), max(start[0], end[0]), max(start[1], end[1])
    ).grown(1)
    inside = [each for area in around.met(areas) if (each := _inside(start, end, area))]
    reached = Fraction(0)
    for begin, leave in [*sorted(inside), (Fraction(1), Fraction(1))]:
        if begin > reached:
            yield _at(start, end, reached), _at(start, end, begin)
        reached = max(reached, leave)


def _inside(start: Place, end: Place, area: Area) -> tuple[Fraction, Fraction] | None:
    """The part of the line inside the area, as parts of its length (Liang and Barsky's way)."""
    low, high = Fraction(0), Fraction(1)
    sides = ((area.left, area.right), (area.top, area.bottom))
    for one, other, (least, most) in zip(start, end, sides, strict=True):
        if one == other:
            if not least < one < most:
                return None
            continue
        near, far = sorted(Fraction(each - one, other - one) for each in (least, most))
        low, high = max(low, near), min(high, far)
    return (low, high) if low < high else None


def _at(start: Place, end: Place, part: Fraction) -> Place:
    x, y = (round(one + (other - one) * part) for one, other in zip(start, end, strict=True))
    return x, y
