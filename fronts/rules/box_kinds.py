"""Boxes to be made, sorted as they are built: kinds that are cut alike, and the sizes of each.

A kind shares what its slides ask for, joint, stock and tiers, so that one drawing and one set-up of
the saw serve all of it; what differs within it are lengths alone.
"""

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import isqrt

from fronts.rules.box_parts import PIECES, SHELF, SIDE
from fronts.rules.box_results import BoxOnSlide
from fronts.rules.box_stock import MATERIAL, BoxStock, box_stock
from fronts.rules.item_kinds import Joint
from fronts.rules.kinds import SLIDES, SlideKind
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm, floor_to
from fronts.rules.materials import density_of
from fronts.rules.results import Part, Schedule
from fronts.rules.slide_needs import SlideNeeds, needs_of
from fronts.rules.usual_slides import slides_of
from fronts.rules.weight import mass_kg


@dataclass(frozen=True, slots=True)
class BoxSize:
    """Boxes that are alike in everything; `parts` are those of one of them, by their names.

    `diagonal` is from corner to corner over the outside, to the shop's step: both are equal
    where the box is square.
    """

    boxes: tuple[BoxOnSlide, ...]
    parts: Mapping[str, Part]
    weight_kg: Fraction
    diagonal: Mm
    tier: Mm

    @property
    def like(self) -> BoxOnSlide:
        """One of them."""
        return self.boxes[0]

    @property
    def count(self) -> int:
        return len(self.boxes)

    @property
    def length(self) -> Mm:
        """From its front's face to its back's: a side's length."""
        return self.parts[SIDE].length

    @property
    def tiers_meet(self) -> bool:
        """Whether its tiers are closer than their sides are high."""
        return SHELF in self.parts and self.tier < self.parts[SIDE].width

    @property
    def load_kg(self) -> Fraction:
        """The greatest that is put into any of them."""
        return max(box.load_kg for box in self.boxes)


@dataclass(frozen=True, slots=True)
class BoxKind:
    """Boxes that are built in one way, for slides that ask the same of them.

    `low`: their sides are lower than front and back; `shelves` above the floor of each.
    """

    slide: SlideKind
    joint: Joint
    stock: BoxStock
    needs: SlideNeeds
    low: bool
    shelves: int
    sizes: tuple[BoxSize, ...]

    @property
    def open_behind(self) -> bool:
        """Whether the bottom runs on beneath the back, which ends above it."""
        return SLIDES[self.slide].notched

    @property
    def count(self) -> int:
        return sum(size.count for size in self.sizes)


def kinds_of_boxes(schedule: Schedule, kitchen: Kitchen) -> tuple[BoxKind, ...]:
    """The kinds of boxes to be made, in the order in which the kitchen has them."""
    made_of, unit = kitchen.boxes_made_of, kitchen.job.unit
    parts = _parts_by_front(schedule)
    alike: dict[tuple[SlideKind, SlideNeeds, bool, int], list[BoxOnSlide]] = defaultdict(list)
    for box in schedule.boxes:
        if box.made and box.kind is not None:
            pieces = parts[box.front]
            shelves = pieces[SHELF].count if SHELF in pieces else 0
            low = pieces[SIDE].width < box.height
            alike[box.kind, _needs(box, box.kind, kitchen), low, shelves].append(box)
    return tuple(
        BoxKind(
            slide=slide, joint=made_of.joint, stock=box_stock(made_of, unit), needs=needs,
            low=low, shelves=shelves,
            sizes=tuple(_sizes(boxes, parts, shelves, kitchen.job.step)),
        )
        for (slide, needs, low, shelves), boxes in alike.items()
    )  # fmt: skip


def nearest_root(square: Fraction, step: Mm) -> Mm:
    """The whole number of steps nearest to the square root, exactly: no float comes in."""
    halves = isqrt(int(square * (2 / step) ** 2))
    return (halves + 1) // 2 * step


def _parts_by_front(schedule: Schedule) -> Mapping[str, dict[str, Part]]:
    found: dict[str, dict[str, Part]] = defaultdict(dict)
    for part in schedule.parts:
        found[part.front][part.part] = part
    return found


def _needs(box: BoxOnSlide, kind: SlideKind, kitchen: Kitchen) -> SlideNeeds:
    item = next(slide for slide in slides_of(kitchen, kind) if slide.code == box.slide)
    return needs_of(item, kitchen.job.unit)


def _sizes(
    boxes: Sequence[BoxOnSlide], parts: Mapping[str, dict[str, Part]], shelves: int, step: Mm
) -> Iterator[BoxSize]:
    """The widest first, as they are cut."""
    alike: dict[tuple[Mm, Mm, Mm, str], list[BoxOnSlide]] = defaultdict(list)
    for box in boxes:
        length = parts[box.front][SIDE].length
        alike[-box.width, -box.height, -length, box.slide or ""].append(box)
    for _, same in sorted(alike.items()):
        like = same[0]
        pieces = {name: part for name, part in parts[like.front].items() if name in PIECES}
        yield BoxSize(
            boxes=tuple(same),
            parts=pieces,
            weight_kg=sum((_weight(part) for part in pieces.values()), Fraction(0)),
            diagonal=nearest_root(like.width**2 + pieces[SIDE].length ** 2, step),
            tier=floor_to(like.height / (1 + shelves), step),
        )


def _weight(part: Part) -> Fraction:
    volume = part.length * part.width * part.thickness * part.count
    return mass_kg(volume, density_of(part.material, MATERIAL))
