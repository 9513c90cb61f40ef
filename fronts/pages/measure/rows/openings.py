"""Openings as a page shows them, with their fronts and the boxes behind these."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import cast

from fronts.figures.own_standard import own_note
from fronts.figures.sizes import size
from fronts.measures import write_weight
from fronts.models import Box, BoxToMake, Front, Opening
from fronts.pages.measure.rows.cells import NOTHING_TYPED, Cell, Typed, cells_of, seen_in
from fronts.pages.shared.choice_words import HAND
from fronts.rules.facts import single_facts
from fronts.rules.kinds import SLIDES, Unit, words_of
from fronts.rules.kitchen import Measured
from fronts.rules.lengths import show
from fronts.snapshot.standards import standard_of

_SLIDE: Mapping[str, str] = words_of(SLIDES)
_IN_FULL = {
    "fixed": "Fixed front, with screws of the shop's choice from behind",
    "open": "Open",
}
_MEASURED = tuple(name for name, _, _ in single_facts(Measured, "measured_"))


@dataclass(frozen=True, slots=True)
class BoxRow:
    """The place of a box behind a front; `text` is empty where there is none yet.

    `to_make`: it is to be made, so there is nothing to measure.
    """

    name: str
    text: str
    to_make: bool = False


@dataclass(frozen=True, slots=True)
class FrontRow:
    """One front of an opening: what is decided about it alone, and its box.

    `name` is empty for a single front, which the opening's own line speaks of; `side` is where
    one counts from. `box` is None where it stands on none.
    """

    index: int
    name: str
    side: str
    text: str
    box: BoxRow | None


@dataclass(frozen=True, slots=True)
class OpeningRow:
    """An opening in its cabinet."""

    id: int
    label: str
    what: str
    cells: tuple[Cell | None, ...]
    notes: tuple[str, ...]
    fronts: tuple[FrontRow, ...]

    @property
    def key(self) -> str:
        return f"opening-{self.id}"

    @property
    def seen(self) -> str:
        """What its cells show."""
        return seen_in(self.cells)

    @property
    def next_box(self) -> int | None:
        """The first front whose box nobody measured."""
        boxes = ((front.index, front.box) for front in self.fronts)
        return next((index for index, box in boxes if box and not box.text), None)


def opening_row(opening: Opening, unit: str, typed: Typed = NOTHING_TYPED) -> OpeningRow:
    """An opening whose boxes and named door are at hand."""
    return OpeningRow(
        id=opening.pk,
        label=opening.label,
        what=_what(opening),
        cells=cells_of(opening, f"opening-{opening.pk}", unit, pale={}, typed=typed),
        notes=tuple(_opening_notes(opening, unit)),
        fronts=tuple(_front_rows(opening, unit)),
    )


def _what(opening: Opening) -> str:
    fronts, closing = list(opening.fronts.all()), opening.closing
    if closing.hinged:
        return f"{closing.says}, hinged {HAND[fronts[0].hinged]}"
    if closing.stack:
        return f"{len(fronts)} drawers"
    return _IN_FULL.get(opening.closed_by, closing.says)


def _opening_notes(opening: Opening, unit: str) -> Iterator[str]:
    fronts = list(opening.fronts.all())
    if opening.closing.single:
        yield from _decided(fronts[0])
    elif any(front.choose for front in fronts):
        yield "a door on hand that fits"
    if any(getattr(opening, name) is not None for name in _MEASURED):
        yield "measured on site"
    note = own_note(standard_of(opening), unit)
    if note:
        yield note


def _decided(front: Front) -> Iterator[str]:
    """What is decided about a front beside its size in the stack and its hinges."""
    if front.choose:
        yield "a door on hand that fits"
    elif front.door is not None:
        yield f"door {front.door.label}"
    if front.width is not None or front.height is not None:
        yield "front exists"
    if front.shift_x or front.shift_y:
        yield "moved off its place"
    if front.glass:
        yield "glass"
    if front.grain_set:
        yield f"grain set {front.grain_set}"
    yield from (f"{kind} {code}" for kind, code in (
        ("hinge", front.hinge), ("handle", front.handle)
    ) if code)  # fmt: skip


def _front_rows(opening: Opening, unit: str) -> Iterator[FrontRow]:
    """The fronts that have something to be said of by themselves: one of several, or a box."""
    fronts, on_box = list(opening.fronts.all()), opening.closing.on_box
    if len(fronts) < 2 and not on_box:
        return
    side = "from the left" if opening.closing.across else "from the top"
    for front in fronts:
        place = f"{front.position + 1} {side}" if len(fronts) > 1 else ""
        yield FrontRow(
            index=front.position,
            name=f"Front {front.position + 1}" if place else "",
            side=side,
            text=", ".join(_alone(front, unit)),
            box=_box_row(front, place, unit) if on_box else None,
        )


def _alone(front: Front, unit: str) -> Iterator[str]:
    """What is decided about one front of several."""
    if front.own_height is not None:
        yield f"{show(front.own_height, unit)} high"
    yield from _decided(front)
    if front.build:
        yield front.build
    if front.material:
        yield front.material
    if front.thickness is not None:
        yield f"{show(front.thickness, unit)} thick"


def _box_row(front: Front, place: str, unit: str) -> BoxRow:
    name = f"Box {place}" if place else "Box"
    if hasattr(front, "box_to_make"):
        return BoxRow(name, _box_to_make(front.box_to_make, unit), to_make=True)
    return BoxRow(name, _box(front.box, unit) if hasattr(front, "box") else "")


def _box(box: Box, unit: str) -> str:
    lengths = [box.width, box.height, *([box.depth] if box.depth is not None else [])]
    words = [size(unit, *lengths), f"{show(box.rise, unit)} up"]
    if box.slide:
        words.append(f"slide {_SLIDE[box.slide].lower()}")
    return ", ".join([*words, *_carried(box, unit)])


def _box_to_make(box: BoxToMake, unit: str) -> str:
    slide = [f"slide {_SLIDE[box.slide].lower()}"] if box.slide else []
    return ", ".join(["to be made", *slide, *_carried(box, unit)])


def _carried(box: Box | BoxToMake, unit: str) -> Iterator[str]:
    if box.shelves:
        yield f"{box.shelves} shel{'f' if box.shelves == 1 else 'ves'} above its floor"
    if box.load_kg is not None:
        yield f"carries {write_weight(box.load_kg, cast(Unit, unit))}"
