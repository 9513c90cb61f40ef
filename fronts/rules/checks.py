"""What is wrong with an opening or a front by itself, before its neighbours are looked at.

Laps at some sides and gaps at others (mixed) come first: such a front is told what to be
trimmed to, and its gaps are not told as well (common practice, no source).
"""

from collections.abc import Iterator, Sequence
from math import hypot, sqrt

from fronts.rules.box_checks import stack_findings
from fronts.rules.findings import FindingWriter
from fronts.rules.kinds import SIDES, is_inset
from fronts.rules.laying import Laid, LaidOpening
from fronts.rules.lengths import NOTHING, Mm, floor_to
from fronts.rules.opening_sizes import heights_of, lean_of, widths_of
from fronts.rules.practice import Practice
from fronts.rules.rect import Rect
from fronts.rules.results import Finding
from fronts.rules.standard_keys import Sides


def opening_findings(
    laid: LaidOpening, writer: FindingWriter, practice: Practice
) -> Iterator[Finding]:
    """Findings about the opening: no rule, no room, badly measured, out of square."""
    if laid.no_rule:
        yield writer.no_rule(laid.label)
    if laid.trouble:
        yield writer.no_room(laid.label, laid.trouble)
    if laid.past_rule:
        yield writer.heights_past_rule(laid.label, laid.past_rule)
    yield from _measuring(laid, writer, practice)
    yield from stack_findings(laid, writer)
    leaning = lean_of(laid.opening, laid.rect.width)
    if leaning and laid.fronts:
        yield from _leaning(laid, leaning, writer)


def front_findings(laid: Laid, writer: FindingWriter, step: Mm) -> Iterator[Finding]:
    """Findings about a front in its opening: mixed, or too tight inside it."""
    outer = {side: overlay for side in SIDES if (overlay := laid.overlays[side]) is not None}
    laps = [side for side, overlay in outer.items() if overlay >= 0]
    inside = [side for side, overlay in outer.items() if overlay < 0]
    by_inset_rule = not laid.exists and is_inset(laid.standard.mount)
    if laps and inside and not by_inset_rule:
        yield writer.mixed(laid.label, laps, inside, _trim_to(laid, writer, step))
        return
    if not is_inset(laid.plane):
        return
    gap = min(-overlay for overlay in outer.values())
    if gap < laid.standard.least_gap:
        yield writer.gap_too_small(
            laid.label, gap, laid.standard.least_gap, _trim_to(laid, writer, step)
        )


def cabinet_findings(openings: Sequence[LaidOpening], writer: FindingWriter) -> Iterator[Finding]:
    """Findings between the openings of one cabinet: they overlap, or a front blocks the next."""
    for index, one in enumerate(openings):
        for other in openings[index + 1 :]:
            if _overlap(one.rect, other.rect):
                yield writer.openings_overlap(one.label, other.label)
    inset = [
        opening for opening in openings if any(is_inset(front.plane) for front in opening.fronts)
    ]
    for front in (front for opening in openings for front in opening.fronts):
        for other in inset:
            if not is_inset(front.plane) and not _overlap(front.rect, other.rect):
                by = _overlap(Rect(front.x, front.y, front.width, front.height), other.rect)
                if by:
                    yield writer.laps_next_opening(front.label, other.label, by)


def _overlap(one: Rect, other: Rect) -> Mm:
    wide = min(one.right, other.right) - max(one.x, other.x)
    tall = min(one.top, other.top) - max(one.y, other.y)
    return max(min(wide, tall), NOTHING)


def _measuring(laid: LaidOpening, writer: FindingWriter, practice: Practice) -> Iterator[Finding]:
    taken, opening = laid.opening.measured, laid.opening
    if taken.diagonal_1 is None or taken.diagonal_2 is None:
        return
    widths, heights = widths_of(opening), heights_of(opening)
    across = hypot(float(sum(widths)) / len(widths), float(sum(heights)) / len(heights))
    diagonal = sqrt((float(taken.diagonal_1) ** 2 + float(taken.diagonal_2) ** 2) / 2)
    if abs(across - diagonal) > practice.lines_seen:
        yield writer.measure_again(laid.label, "its diagonals don't go with its width and height")


def _leaning(laid: LaidOpening, leaning: Mm, writer: FindingWriter) -> Iterator[Finding]:
    sides = [overlay for front in laid.fronts for overlay in _at_sides(front.overlays)]
    laps = not any(is_inset(front.plane) for front in laid.fronts)
    left = min(abs(overlay) for overlay in sides) - abs(leaning) / 2
    least = laid.standard.least_gap
    if laps:
        if left < 0:
            yield writer.lap_runs_out(laid.label, leaning)
        else:
            yield writer.leans(laid.label, leaning, left, laps=True)
    elif left < least:
        yield writer.out_of_square(laid.label, leaning, left, least)
    else:
        yield writer.leans(laid.label, leaning, left, laps=False)


def _at_sides(overlays: Sides[Mm | None]) -> list[Mm]:
    return [overlay for overlay in (overlays.left, overlays.right) if overlay is not None]


def _trim_to(laid: Laid, writer: FindingWriter, step: Mm) -> str:
    """What to trim the front to, so that it lies inside its opening all round."""
    gap, opening = laid.standard.inset_gap, laid.opening
    width = floor_to(min(widths_of(opening)) - gap.left - gap.right, step)
    height = floor_to(min(heights_of(opening)) - gap.top - gap.bottom, step)
    if width <= 0 or height <= 0:
        return "the opening is too small for an inset front"
    if laid.width < width or laid.height < height:
        return (
            f"trimmed to {writer.say(min(width, laid.width))} × "
            f"{writer.say(min(height, laid.height))} it lies inside"
        )
    return f"trim it to {writer.say(width)} × {writer.say(height)} to lie inside"
