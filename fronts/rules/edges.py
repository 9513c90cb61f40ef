"""Where a new front's edges lie: overlay by amount, overlay by reveal, or inset.

    overlay by reveal, across a shared member m:   (m - between) / 2 outside the opening
    overlay by reveal, at the cabinet's end:        m - end outside the opening
    overlay by amount:                              overlay outside the opening
    inset:                                          gap inside the opening

The raw span is the opening plus the two overlays (or less the two gaps). Fronts that share
an opening are `gap_between` apart exactly. Each takes an equal share, down to the step;
what is left over goes, in whole steps, to the lowest front of a stack that has no height of
its own, and the rest comes off the two outer edges, half each. So a front is never larger
than its rule.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from fronts.rules.kinds import Side, is_inset
from fronts.rules.kitchen import Cabinet, Opening
from fronts.rules.lengths import Mm, floor_to
from fronts.rules.standard_keys import Settled, Sides

NOTHING = Mm(0)


@dataclass(frozen=True, slots=True)
class Rect:
    """A rectangle on a wall."""

    x: Mm
    y: Mm
    width: Mm
    height: Mm

    @property
    def right(self) -> Mm:
        return self.x + self.width

    @property
    def top(self) -> Mm:
        return self.y + self.height


@dataclass(frozen=True, slots=True)
class Division:
    """How a span is shared: sizes in order, and what comes off the two outer edges together."""

    sizes: tuple[Mm, ...]
    rest: Mm


def widths_of(opening: Opening) -> tuple[Mm, ...]:
    """The opening's widths: those measured on site, else the nominal one."""
    taken = (opening.measured.width_top, opening.measured.width_bottom)
    return tuple(width for width in taken if width is not None) or (opening.width,)


def heights_of(opening: Opening) -> tuple[Mm, ...]:
    """The opening's heights: those measured on site, else the nominal one."""
    taken = (opening.measured.height_left, opening.measured.height_right)
    return tuple(height for height in taken if height is not None) or (opening.height,)


def opening_rect(cabinet: Cabinet, opening: Opening, *, greatest: bool) -> Rect:
    """The opening on its wall, by its greatest sizes (overlay) or its least (inset)."""
    pick = max if greatest else min
    width, height = pick(widths_of(opening)), pick(heights_of(opening))
    return Rect(cabinet.x + opening.x, cabinet.y + opening.y, width, height)


def rule_overlays(
    rect: Rect, others: Sequence[Rect], outer: Rect, standard: Settled
) -> Sides[Mm] | None:
    """How far past the opening's edges the rule puts a new front (negative: inside).

    `others` are the cabinet's other openings, `outer` its outline. None: nobody said how far.
    """
    if is_inset(standard.mount):
        gap = standard.inset_gap
        return Sides(-gap.left, -gap.right, -gap.top, -gap.bottom)
    if standard.reveal is None:
        return standard.overlay
    reveal = standard.reveal
    overlays: dict[Side, Mm] = {}
    for side, (member, shared) in members(rect, others, outer).items():
        overlays[side] = (member - reveal.between) / 2 if shared else member - reveal.end[side]
    return Sides(**overlays)


def members(rect: Rect, others: Sequence[Rect], outer: Rect) -> dict[Side, tuple[Mm, bool]]:
    """For each side the member's width, and whether another opening shares it."""
    beside = [other for other in others if other.y < rect.top and rect.y < other.top]
    along = [other for other in others if other.x < rect.right and rect.x < other.right]
    spans: dict[Side, tuple[list[Mm], Mm]] = {
        "left": ([rect.x - other.right for other in beside], rect.x - outer.x),
        "right": ([other.x - rect.right for other in beside], outer.right - rect.right),
        "top": ([other.y - rect.top for other in along], outer.top - rect.top),
        "bottom": ([rect.y - other.top for other in along], rect.y - outer.y),
    }
    widths: dict[Side, tuple[Mm, bool]] = {}
    for side, (between, to_end) in spans.items():
        nearest = min((span for span in between if span >= 0), default=None)
        widths[side] = (to_end, False) if nearest is None else (nearest, True)
    return widths


def divide(
    raw: Mm,
    gap_between: Mm,
    step: Mm,
    sizes: Sequence[Mm | None],
    *,
    lowest_takes_rest: bool = False,
) -> Division:
    """Share a raw span among fronts; None in `sizes` marks one without a size of its own.

    The last of `sizes` is the lowest. A share may come out at or below zero: no room.
    """
    free = raw - gap_between * (len(sizes) - 1) - sum((size for size in sizes if size), NOTHING)
    sharing = [index for index, size in enumerate(sizes) if size is None]
    if not sharing:
        return Division(tuple(size for size in sizes if size is not None), free)
    share = floor_to(free / len(sharing), step)
    shared = [share if size is None else size for size in sizes]
    rest = free - share * len(sharing)
    if lowest_takes_rest:
        whole = floor_to(rest, step)
        shared[sharing[-1]] += whole
        rest -= whole
    return Division(tuple(shared), rest)


def lean(width: Mm, diagonal_1: Mm, diagonal_2: Mm) -> Mm:
    """How far the opening leans over its height: (d1² - d2²) / (4·w)."""
    return (diagonal_1 * diagonal_1 - diagonal_2 * diagonal_2) / (width * 2 * 2)
