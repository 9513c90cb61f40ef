"""Offcuts of a shop: what is written on them, which are worth keeping, which a plan may use."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import TypeVar

from fronts.rules.cutting_groups import CuttingGroup
from fronts.rules.lengths import Mm
from fronts.rules.practice import Practice

LETTER = "R"
"""What remains; not O, which reads as a nought on a piece of wood."""
MOST_OFFERED = 6
"""So many a material: each is one more size that every part is tried on."""
MOST_KEPT = 2_000
"""Of a shop, those that are gone apart."""


@dataclass(frozen=True, slots=True)
class OffcutFacts:
    """A piece: `length` runs along its grain, where it has any. A stick is ripped to `width`."""

    material: str
    thickness: Mm
    length: Mm
    width: Mm
    is_stick: bool = False
    is_grained: bool = True

    @property
    def area(self) -> Mm:
        """What it covers."""
        return self.length * self.width


@dataclass(frozen=True, slots=True)
class OffcutAt:
    """An offcut that can be had, by the number on it; `is_ours`: it is laid by for this job."""

    number: int
    facts: OffcutFacts
    is_ours: bool = False

    @property
    def label(self) -> str:
        """As it stands on the piece."""
        return offcut_label(self.number)


Offered = TypeVar("Offered", bound=OffcutAt)


def offcut_label(number: int) -> str:
    """What is written on the piece: `R12`."""
    return f"{LETTER}{number}"


def number_of(label: str) -> int | None:
    """The number on a piece, as `R12`, or None."""
    digits = label[len(LETTER) :]
    is_one = label.startswith(LETTER) and digits.isascii() and digits.isdigit()
    return int(digits) if is_one and len(digits) < 10 else None


def is_worth_keeping(length: Mm, width: Mm | None, practice: Practice) -> bool:
    """Whether somebody may want to cut something out of it; without a width, of a stick.

    As the shop says. As is usual, a drawer front comes out of such a piece, a rail out of such a
    stick (common practice, no source).
    """
    if width is None:
        return length >= practice.offcut_stick
    narrow, long = sorted((length, width))
    return narrow >= practice.offcut_narrow and long >= practice.offcut_long


def fitting(offcuts: Iterable[Offered], group: CuttingGroup) -> list[Offered]:
    """Those out of which a part of the group may come, ours first, then the largest."""
    suited = [
        each
        for each in offcuts
        if is_of(each.facts, group) and any(_holds(each.facts, part) for part in _sizes(group))
    ]
    return sorted(suited, key=lambda each: (not each.is_ours, -each.facts.area, each.number))


def is_of(facts: OffcutFacts, group: CuttingGroup) -> bool:
    """Whether it is of the material, as thick, and where it is a stick as wide."""
    same = facts.material.casefold() == group.material.casefold()
    wide = not facts.is_stick or facts.width == group.width
    return same and wide and facts.thickness == group.thickness


def _sizes(group: CuttingGroup) -> Sequence[tuple[Mm, Mm]]:
    return [(part.length, part.width) for part in group.parts]


def _holds(facts: OffcutFacts, part: tuple[Mm, Mm]) -> bool:
    """Either way round: which way a part may lie is the plan's to say."""
    if facts.is_stick:
        return part[0] <= facts.length
    return min(part) <= min(facts.length, facts.width) and max(part) <= max(
        facts.length, facts.width
    )
