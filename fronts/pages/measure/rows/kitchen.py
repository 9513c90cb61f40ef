"""A kitchen's rows as a page shows them: every length already in the job's words."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby

from fronts.figures.sizes import size
from fronts.models import Box, Cabinet, DoorOnHand, Opening
from fronts.models.openings import BOXED
from fronts.pages.measure.forms.openings import MEASURED_FIELDS
from fronts.pages.shared.choice_words import BUILDS, CLOSED_BY, HAND, KINDS, SLIDES
from fronts.rules.lengths import show
from fronts.rules.standards import EMPTY
from fronts.snapshot.standards import standard_of

_KIND, _BUILD = dict(KINDS), dict(BUILDS)
_CLOSED, _SLIDE = dict(CLOSED_BY), dict(SLIDES)


@dataclass(frozen=True, slots=True)
class BoxRow:
    """The place of a box behind a front; `text` is empty where none was measured."""

    index: int
    name: str
    text: str


@dataclass(frozen=True, slots=True)
class OpeningRow:
    """An opening in its cabinet."""

    id: int
    label: str
    what: str
    size: str
    place: str
    notes: tuple[str, ...]
    boxes: tuple[BoxRow, ...]

    @property
    def key(self) -> str:
        return f"opening-{self.id}"

    @property
    def next_box(self) -> int | None:
        """The first box that nobody measured."""
        return next((each.index for each in self.boxes if not each.text), None)


@dataclass(frozen=True, slots=True)
class CabinetRow:
    """A cabinet with its openings."""

    id: int
    label: str
    wall: str
    what: str
    size: str
    place: str
    notes: tuple[str, ...]
    openings: tuple[OpeningRow, ...]

    @property
    def key(self) -> str:
        return f"cabinet-{self.id}"

    @property
    def new_key(self) -> str:
        """Where its next opening is entered."""
        return f"opening-new-{self.id}"


@dataclass(frozen=True, slots=True)
class WallRows:
    """The cabinets of one wall that follow each other in the job's order."""

    wall: str
    cabinets: tuple[CabinetRow, ...]

    @property
    def id(self) -> str:
        return wall_id(self.wall)


@dataclass(frozen=True, slots=True)
class DoorRow:
    """A door on hand."""

    id: int
    label: str
    size: str
    what: str
    notes: tuple[str, ...]

    @property
    def key(self) -> str:
        return f"door-{self.id}"


def wall_id(wall: str) -> str:
    """An id for a wall's part of the page that any selector can name."""
    return f"wall-{wall.encode().hex()}"


def wall_rows(cabinets: Sequence[Cabinet], unit: str) -> list[WallRows]:
    """The cabinets wall by wall, in the order in which the walls were begun."""
    order = {wall: place for place, wall in reversed(list(enumerate(c.wall for c in cabinets)))}
    by_wall = sorted(cabinets, key=lambda each: order[each.wall])
    return [
        WallRows(wall, tuple(cabinet_row(each, unit) for each in group))
        for wall, group in groupby(by_wall, key=lambda each: each.wall)
    ]


def cabinet_row(cabinet: Cabinet, unit: str) -> CabinetRow:
    """A cabinet whose openings and boxes are at hand."""
    place = f"{show(cabinet.x, unit)} from the left"
    if cabinet.y:
        place += f", {show(cabinet.y, unit)} up"
    return CabinetRow(
        id=cabinet.pk,
        label=cabinet.label,
        wall=cabinet.wall,
        what=f"{_KIND[cabinet.kind]}, {_BUILD[cabinet.build].lower()}",
        size=size(unit, cabinet.width, cabinet.height, cabinet.depth),
        place=place,
        notes=("own standard",) if standard_of(cabinet) != EMPTY else (),
        openings=tuple(opening_row(each, unit) for each in cabinet.openings.all()),
    )


def opening_row(opening: Opening, unit: str) -> OpeningRow:
    """An opening whose boxes and named door are at hand."""
    return OpeningRow(
        id=opening.pk,
        label=opening.label,
        what=_what(opening),
        size=size(unit, opening.width, opening.height),
        place=f"{show(opening.x, unit)} from the left, {show(opening.y, unit)} up",
        notes=tuple(_opening_notes(opening, unit)),
        boxes=tuple(_box_rows(opening, unit)),
    )


def door_row(door: DoorOnHand, unit: str) -> DoorRow:
    """A door whose bores are at hand."""
    notes = ["knob hole"] if door.knob_x is not None else []
    bores = len(door.hinge_bores.all())
    if bores:
        notes.append(f"{bores} hinge bore{'s' if bores > 1 else ''}")
    what = f"{door.build.capitalize()}{f', {door.material}' if door.material else ''}"
    sizes = size(unit, door.width, door.height, door.thickness)
    return DoorRow(door.pk, door.label, sizes, what, tuple(notes))


def _what(opening: Opening) -> str:
    if opening.closed_by == "open":
        return "Open"
    if opening.closed_by == "door":
        return f"Door, hinged {HAND[opening.hinged]}"
    if opening.closed_by == "fixed":
        return "Fixed front, with screws of the shop's choice from behind"
    if opening.closed_by == "drawers":
        return f"{opening.count} drawers"
    return _CLOSED[opening.closed_by]


def _opening_notes(opening: Opening, unit: str) -> Iterator[str]:
    if opening.front_choose:
        yield "a door on hand that fits"
    elif opening.front_door is not None:
        yield f"door {opening.front_door.label}"
    if opening.front_width is not None or opening.front_height is not None:
        yield "front exists"
    if any(getattr(opening, name) is not None for name in MEASURED_FIELDS):
        yield "measured on site"
    if opening.shift_x or opening.shift_y:
        yield "moved off its place"
    if standard_of(opening) != EMPTY:
        yield "own standard"


def _box_rows(opening: Opening, unit: str) -> Iterator[BoxRow]:
    if opening.closed_by not in BOXED:
        return
    boxes = {box.index: box for box in opening.boxes.all()}
    for index in range(opening.count):
        name = "Box" if opening.count == 1 else f"Box {index + 1} from the top"
        yield BoxRow(index, name, _box(boxes[index], unit) if index in boxes else "")


def _box(box: Box, unit: str) -> str:
    lengths = [box.width, box.height, *([box.depth] if box.depth is not None else [])]
    words = [size(unit, *lengths), f"{show(box.rise, unit)} up"]
    if box.slide:
        words.append(f"slide {_SLIDE[box.slide].lower()}")
    return ", ".join(words)
