"""Laying out an opening's fronts: which sizes, and where on the wall.

A front is new (its edges by the rules), or exists (a door on hand as it is, or a stated
width and height, centred on the opening but for its shift), or is to be chosen from the doors
on hand (its size by the rules, the door trimmed to it).
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from fronts.rules.axis import Axis, axis_of, one_by_one, shifted, with_gaps
from fronts.rules.box_facts import Box
from fronts.rules.cabinet_edges import to_edges
from fronts.rules.items import BY_RULE
from fronts.rules.kinds import SIDES, Hinged, Mount, Side, is_inset
from fronts.rules.kitchen import CHOOSE, Cabinet, DoorOnHand, FrontFacts, Kitchen, Opening
from fronts.rules.labels import front_labels, opening_label
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.opening_sizes import opening_rect, widths_of
from fronts.rules.overlay import rule_overlays
from fronts.rules.rect import Rect
from fronts.rules.standard_keys import Settled, Sides
from fronts.rules.standard_levels import levels_of
from fronts.rules.standards import EMPTY, settled


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
    def decided(self) -> FrontFacts:
        """What somebody decided about this front."""
        return self.opening.fronts[self.index]

    @property
    def handle(self) -> str | None:
        """The code of its knob or pull, its own or its standard's; None: the shop's first."""
        usual = self.standard.front_handle
        return self.decided.handle or (None if usual == BY_RULE else usual)

    @property
    def hinge(self) -> str | None:
        """The code of its hinge, its own or its standard's; None: by the rule."""
        usual = self.standard.front_hinge
        return self.decided.hinge or (None if usual == BY_RULE else usual)

    @property
    def box(self) -> Box | None:
        return self.decided.box

    @property
    def opening_label(self) -> str:
        return opening_label(self.cabinet.label, self.opening.label)


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


def lay_cabinet(
    cabinet: Cabinet, kitchen: Kitchen, doors: Mapping[str, DoorOnHand]
) -> list[LaidOpening]:
    """Every opening of a cabinet with its fronts laid out."""
    farther = levels_of(cabinet, kitchen)
    own = settled(*farther)
    standards = [
        own if opening.standard == EMPTY else settled(opening.standard, *farther)
        for opening in cabinet.openings
    ]
    rects = [
        opening_rect(cabinet, opening, greatest=_laps(opening, standard, doors))
        for opening, standard in zip(cabinet.openings, standards, strict=True)
    ]
    outer = Rect(cabinet.left, cabinet.y, cabinet.width, cabinet.height)
    laid = []
    for index, opening in enumerate(cabinet.openings):
        others = rects[:index] + rects[index + 1 :]
        overlays = rule_overlays(rects[index], others, outer, standards[index])
        laid.append(
            _lay(cabinet, opening, standards[index], rects[index], overlays, kitchen, doors)
        )
    return laid


def _laps(opening: Opening, standard: Settled, doors: Mapping[str, DoorOnHand]) -> bool:
    """Whether the fronts are sized against the greatest sizes: existing ones by their width."""
    widths = [width for width, _ in _existing_sizes(opening, doors)]
    known = [width for width in widths if width is not None]
    if not known or (opening.closing.across and len(known) < len(widths)):
        return not is_inset(standard.mount)
    if opening.closing.across:
        return with_gaps(known, standard.gap_between) > max(widths_of(opening))
    return max(known) > max(widths_of(opening))


def _existing_sizes(
    opening: Opening, doors: Mapping[str, DoorOnHand]
) -> list[tuple[Mm | None, Mm | None]]:
    """Width and height of each front, as far as it exists."""
    return [_existing_size(front, doors) for front in opening.fronts]


def _existing_size(
    front: FrontFacts, doors: Mapping[str, DoorOnHand]
) -> tuple[Mm | None, Mm | None]:
    door = _named_door(front, doors)
    return (front.width, front.height) if door is None else (door.width, door.height)


def _named_door(front: FrontFacts, doors: Mapping[str, DoorOnHand]) -> DoorOnHand | None:
    named = front.door_on_hand
    return None if named is None or named == CHOOSE else doors[named]


def _lay(
    cabinet: Cabinet,
    opening: Opening,
    standard: Settled,
    rect: Rect,
    overlays: Sides[Mm] | None,
    kitchen: Kitchen,
    doors: Mapping[str, DoorOnHand],
) -> LaidOpening:
    label = opening_label(cabinet.label, opening.label)
    bare = LaidOpening(label, cabinet, opening, standard, rect, ())
    if not opening.fronts:
        return bare
    sizes = _existing_sizes(opening, doors)
    if overlays is None:
        if any(None in size for size in sizes):
            return replace(bare, no_rule=True)
        overlays = Sides(NOTHING, NOTHING, NOTHING, NOTHING)
    widths, heights = [width for width, _ in sizes], [height for _, height in sizes]
    across = _across(opening, standard, rect, overlays, widths, kitchen.job.step)
    along = _along(opening, standard, rect, overlays, heights, kitchen.job.step)
    if any(size <= 0 for size in (*across.sizes, *along.sizes)):
        trouble = "there is no room in it for its fronts; look at its size, gaps and fixed heights"
        return replace(bare, trouble=trouble)
    return replace(bare, fronts=_fronts(bare, across, along, doors), past_rule=along.past_rule)


def _across(
    opening: Opening, standard: Settled, rect: Rect, overlays: Sides[Mm],
    widths: Sequence[Mm | None], step: Mm,
) -> Axis:  # fmt: skip
    def axis(sizes: Sequence[Mm | None]) -> Axis:
        return axis_of(
            sizes, rect.x, rect.width, overlays.left, overlays.right, standard.gap_between, step,
            stack=False,
        )  # fmt: skip

    placed = axis(widths) if opening.closing.across else one_by_one(widths, axis)
    return shifted(placed, [front.shift_x for front in opening.fronts])


def _along(
    opening: Opening, standard: Settled, rect: Rect, overlays: Sides[Mm],
    heights: Sequence[Mm | None], step: Mm,
) -> Axis:  # fmt: skip
    """From the bottom up, though a stack's heights are given, and shared, from the top."""

    def axis(sizes: Sequence[Mm | None]) -> Axis:
        return axis_of(
            sizes, -rect.top, rect.height, overlays.top, overlays.bottom, standard.gap_between,
            step, stack=opening.closing.stack,
        )  # fmt: skip

    if opening.closing.stack:
        own = [front.own_height for front in opening.fronts]
        down = axis(
            [height if mine is None else mine for mine, height in zip(own, heights, strict=True)]
        )
    else:
        down = one_by_one(heights, axis)
    starts = tuple(-(start + size) for start, size in zip(down.starts, down.sizes, strict=True))
    up = Axis(starts, down.sizes, down.past_rule)
    return shifted(up, [front.shift_y for front in opening.fronts])


def _fronts(
    laid: LaidOpening, across: Axis, along: Axis, doors: Mapping[str, DoorOnHand]
) -> tuple[Laid, ...]:
    opening, fronts = laid.opening, []
    labels = front_labels(laid.cabinet.label, opening)
    for index, (label, decided) in enumerate(zip(labels, opening.fronts, strict=True)):
        x, width = across.starts[index], across.sizes[index]
        y, height = along.starts[index], along.sizes[index]
        right, top = x + width, y + height
        overlays = _overlays(
            laid.rect, Rect(x, y, width, height),
            pair=opening.closing.across, index=index, count=len(labels),
        )  # fmt: skip
        exists = None not in _existing_size(decided, doors) and decided.door_on_hand != CHOOSE
        fronts.append(
            Laid(
                label=label, cabinet=laid.cabinet, opening=opening, standard=laid.standard,
                rect=laid.rect, index=index, x=x, y=y, right=right, top=top, width=width,
                height=height,
                overlays=overlays, plane=_plane(overlays, laid.standard, exists=exists),
                hinged=_hinged(opening, index), exists=exists, door=_named_door(decided, doors),
            )
        )  # fmt: skip
    return tuple(fronts)


def _overlays(rect: Rect, front: Rect, *, pair: bool, index: int, count: int) -> Sides[Mm | None]:
    first, last = index == 0, index == count - 1
    inner: dict[Side, bool] = {
        "left": pair and not first,
        "right": pair and not last,
        "top": not pair and not first,
        "bottom": not pair and not last,
    }
    past = to_edges(rect, front)
    return Sides(**{side: None if inner[side] else past[side] for side in SIDES})


def _plane(overlays: Sides[Mm | None], standard: Settled, *, exists: bool) -> Mount:
    if not exists and is_inset(standard.mount):
        return "inset"
    known = (overlays.left, overlays.right, overlays.top, overlays.bottom)
    return "overlay" if all(overlay is None or overlay >= 0 for overlay in known) else "inset"


def _hinged(opening: Opening, index: int) -> Hinged | None:
    if opening.closing.leaves:
        return opening.closing.leaves[index]
    return (opening.fronts[index].hinged or "left") if opening.closing.hinged else None
