"""Laying out an opening's fronts: which sizes, and where on the wall.

A front is new (its edges by the rules), or exists (a door on hand as it is, or a stated
width and height, centred on the opening but for its shift), or is to be chosen from the doors
on hand (its size by the rules, the door trimmed to it).
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from fronts.rules.edges import (
    NOTHING,
    Rect,
    divide,
    opening_rect,
    rule_overlays,
    widths_of,
)
from fronts.rules.kitchen import (
    CHOOSE,
    Box,
    Cabinet,
    DoorOnHand,
    Hinged,
    Kitchen,
    Mount,
    Opening,
    Side,
    Sides,
)
from fronts.rules.labels import front_count, front_labels
from fronts.rules.lengths import Mm
from fronts.rules.standards import EMPTY, Settled, settled


@dataclass(frozen=True, slots=True)
class Laid:
    """A front in its place; `overlays` is None towards a front of the same opening."""

    label: str
    cabinet: Cabinet
    opening: Opening
    standard: Settled
    rect: Rect
    index: int
    x: Mm
    y: Mm
    right: Mm
    top: Mm
    width: Mm
    height: Mm
    overlays: Sides[Mm | None]
    plane: Mount
    hinged: Hinged | None
    exists: bool
    door: DoorOnHand | None

    @property
    def box(self) -> Box | None:
        own = self.opening.boxes
        return own[self.index] if self.index < len(own) else None

    @property
    def opening_label(self) -> str:
        return f"{self.cabinet.label}.{self.opening.label}"


@dataclass(frozen=True, slots=True)
class LaidOpening:
    """An opening with its fronts; `trouble` says in words why there are none.

    `past_rule` is by how much fixed heights come to more than the rule allows.
    """

    label: str
    cabinet: Cabinet
    opening: Opening
    standard: Settled
    rect: Rect
    fronts: tuple[Laid, ...]
    trouble: str | None = None
    past_rule: Mm = NOTHING
    no_rule: bool = False


@dataclass(frozen=True, slots=True)
class _Axis:
    """One direction of an opening's fronts, from its low edge: starts and sizes."""

    starts: tuple[Mm, ...]
    sizes: tuple[Mm, ...]
    past_rule: Mm = NOTHING


def lay_cabinet(
    cabinet: Cabinet, kitchen: Kitchen, doors: Mapping[str, DoorOnHand]
) -> list[LaidOpening]:
    """Every opening of a cabinet with its fronts laid out."""
    own = settled(cabinet.standard, kitchen.standard)
    standards = [
        own
        if each.standard == EMPTY
        else settled(each.standard, cabinet.standard, kitchen.standard)
        for each in cabinet.openings
    ]
    rects = [
        opening_rect(cabinet, opening, greatest=_laps(opening, standard, doors))
        for opening, standard in zip(cabinet.openings, standards, strict=True)
    ]
    outer = Rect(cabinet.x, cabinet.y, cabinet.width, cabinet.height)
    laid = []
    for index, opening in enumerate(cabinet.openings):
        others = rects[:index] + rects[index + 1 :]
        overlays = rule_overlays(rects[index], others, outer, standards[index])
        laid.append(
            _lay(cabinet, opening, standards[index], rects[index], overlays, kitchen, doors)
        )
    return laid


def _laps(opening: Opening, standard: Settled, doors: Mapping[str, DoorOnHand]) -> bool:
    """Whether the fronts are sized against the greatest sizes: an existing one by its width."""
    width, _ = _existing_sizes(opening, doors)
    if width is None:
        return standard.mount == "overlay"
    return _total(width, opening, standard, across=True) > max(widths_of(opening))


def _existing_sizes(
    opening: Opening, doors: Mapping[str, DoorOnHand]
) -> tuple[Mm | None, Mm | None]:
    wish = opening.front
    if wish.door_on_hand and wish.door_on_hand != CHOOSE:
        door = doors[wish.door_on_hand]
        return door.width, door.height
    return wish.width, wish.height


def _total(size: Mm, opening: Opening, standard: Settled, *, across: bool) -> Mm:
    """What an existing front's size comes to over all fronts of its opening."""
    count = front_count(opening) if (opening.closed_by == "pair") == across else 1
    return size * count + standard.gap_between * (count - 1)


def _lay(
    cabinet: Cabinet,
    opening: Opening,
    standard: Settled,
    rect: Rect,
    overlays: Sides[Mm] | None,
    kitchen: Kitchen,
    doors: Mapping[str, DoorOnHand],
) -> LaidOpening:
    label = f"{cabinet.label}.{opening.label}"
    bare = LaidOpening(label, cabinet, opening, standard, rect, ())
    if opening.closed_by == "open":
        return bare
    width, height = _existing_sizes(opening, doors)
    if overlays is None:
        if width is None or height is None:
            return LaidOpening(label, cabinet, opening, standard, rect, (), no_rule=True)
        overlays = Sides(NOTHING, NOTHING, NOTHING, NOTHING)
    step = kitchen.job.step
    shift = opening.front
    across = _across(opening, standard, rect, overlays, width, step, shift.shift_x)
    along = _along(opening, standard, rect, overlays, height, step, shift.shift_y)
    if any(size <= 0 for size in (*across.sizes, *along.sizes)):
        trouble = "there is no room in it for its fronts; look at its size, gaps and fixed heights"
        return LaidOpening(label, cabinet, opening, standard, rect, (), trouble=trouble)
    exists = width is not None and height is not None and opening.front.door_on_hand != CHOOSE
    fronts = _fronts(bare, across, along, exists=exists, doors=doors)
    return LaidOpening(label, cabinet, opening, standard, rect, fronts, past_rule=along.past_rule)


def _across(
    opening: Opening, standard: Settled, rect: Rect, overlays: Sides[Mm], width: Mm | None,
    step: Mm, shift: Mm,
) -> _Axis:  # fmt: skip
    count = 2 if opening.closed_by == "pair" else 1
    sizes: list[Mm | None] = [width] * count
    return _axis(
        sizes, rect.x, rect.width, overlays.left, overlays.right, standard.gap_between, step,
        shift, stack=False,
    )  # fmt: skip


def _along(
    opening: Opening, standard: Settled, rect: Rect, overlays: Sides[Mm], height: Mm | None,
    step: Mm, shift: Mm,
) -> _Axis:  # fmt: skip
    """From the bottom up, though a stack's heights are given, and shared, from the top."""
    sizes: list[Mm | None] = [height]
    if opening.closed_by == "drawers":
        own = (opening.heights + (None,) * opening.count)[: opening.count]
        sizes = [each if each is not None else height for each in own]
    down = _axis(
        sizes, -rect.top, rect.height, overlays.top, overlays.bottom, standard.gap_between, step,
        -shift, stack=opening.closed_by == "drawers",
    )  # fmt: skip
    starts = tuple(-(start + size) for start, size in zip(down.starts, down.sizes, strict=True))
    return _Axis(starts, down.sizes, down.past_rule)


def _axis(
    sizes: Sequence[Mm | None], edge: Mm, opening: Mm, before: Mm, after: Mm, between: Mm,
    step: Mm, shift: Mm, *, stack: bool,
) -> _Axis:  # fmt: skip
    """Places along one direction: an existing front stands centred, a new one by its overlays."""
    past = NOTHING
    if not stack and sizes[0] is not None:
        found = tuple(each for each in sizes if each is not None)
        total = sum(found, NOTHING) + between * (len(found) - 1)
        first = edge + (opening - total) / 2 + shift
    else:
        division = divide(before + opening + after, between, step, sizes, lowest_takes_rest=stack)
        found = division.sizes
        first = edge - before + division.rest / 2 + shift
        past = max(-division.rest, NOTHING)
    starts, place = [], first
    for size in found:
        starts.append(place)
        place += size + between
    return _Axis(tuple(starts), found, past)


def _fronts(
    laid: LaidOpening, across: _Axis, along: _Axis, *, exists: bool, doors: Mapping[str, DoorOnHand]
) -> tuple[Laid, ...]:
    labels = front_labels(laid.cabinet.label, laid.opening)
    count = len(labels)
    pair = laid.opening.closed_by == "pair"
    wished = laid.opening.front.door_on_hand
    door = doors.get(wished) if wished and wished != CHOOSE else None
    found = []
    for index, label in enumerate(labels):
        at, up = (index, 0) if pair else (0, index)
        x, width = across.starts[at], across.sizes[at]
        y, height = along.starts[up], along.sizes[up]
        right, top = x + width, y + height
        overlays = _overlays(laid.rect, x, y, right, top, pair=pair, index=index, count=count)
        found.append(
            Laid(
                label=label, cabinet=laid.cabinet, opening=laid.opening, standard=laid.standard,
                rect=laid.rect, index=index, x=x, y=y, right=right, top=top, width=width,
                height=height,
                overlays=overlays, plane=_plane(overlays, laid.standard, exists=exists),
                hinged=_hinged(laid.opening, index), exists=exists, door=door,
            )
        )  # fmt: skip
    return tuple(found)


def _overlays(
    rect: Rect, x: Mm, y: Mm, right: Mm, top: Mm, *, pair: bool, index: int, count: int
) -> Sides[Mm | None]:
    first, last = index == 0, index == count - 1
    inner: dict[Side, bool] = {
        "left": pair and not first,
        "right": pair and not last,
        "top": not pair and not first,
        "bottom": not pair and not last,
    }
    past: dict[Side, Mm] = {
        "left": rect.x - x,
        "right": right - rect.right,
        "top": top - rect.top,
        "bottom": rect.y - y,
    }
    return Sides(**{side: None if inner[side] else past[side] for side in past})


def _plane(overlays: Sides[Mm | None], standard: Settled, *, exists: bool) -> Mount:
    if not exists and standard.mount == "inset":
        return "inset"
    known = (overlays.left, overlays.right, overlays.top, overlays.bottom)
    return "overlay" if all(each is None or each >= 0 for each in known) else "inset"


def _hinged(opening: Opening, index: int) -> Hinged | None:
    if opening.closed_by == "pair":
        return "left" if index == 0 else "right"
    return (opening.hinged or "left") if opening.closed_by == "door" else None
