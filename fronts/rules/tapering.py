"""An opening that tapers or leans: how its square front lies in it at each end of every side.

An opening that was measured at both ends tapers evenly about its middle line; its diagonals
say by how much it leans, to the right at the top where diagonal 1 is the longer. The front
hangs square where its rule puts it, so that with the lean e

    at the top      left gap  = (width there - front) / 2 + (left - right planned) / 2 - e / 2
                    right gap = (width there - front) / 2 - (left - right planned) / 2 + e / 2

and at the bottom with the signs of e turned; gaps above and below alike, without e. A lap is
a gap below zero.
"""

from collections.abc import Iterable, Iterator, Mapping

from fronts.rules.findings import FindingWriter
from fronts.rules.kinds import Unit, is_inset
from fronts.rules.laying import LaidOpening
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.opening_sizes import heights_at_ends, lean_of, widths_at_ends
from fronts.rules.practice import inches
from fronts.rules.results import Finding
from fronts.rules.standard_keys import Sides
from fronts.rules.wall_results import OpeningEnds

SEEN: Mapping[Unit, Mm] = {"in": inches(1, 16), "mm": Mm(8, 5)}
"""A side whose ends differ by more than this looks crooked (common practice, no source)."""


def tapering_or_leaning(openings: Iterable[LaidOpening]) -> Iterator[OpeningEnds]:
    """What there is at each end of every opening that tapers or leans, and has one front."""
    for opening in openings:
        ends = _ends_of(opening)
        if ends is not None:
            yield ends


def taper_findings(laid: LaidOpening, unit: Unit, writer: FindingWriter) -> Iterator[Finding]:
    """An opening with fronts whose sides would differ in sight from end to end through taper."""
    if not laid.fronts:
        return
    top, bottom = widths_at_ends(laid.opening)
    left, right = heights_at_ends(laid.opening)
    ways = {"at its sides": abs(top - bottom) / 2, "above and below": abs(left - right) / 2}
    seen = {where: by for where, by in ways.items() if by > SEEN[unit]}
    if seen:
        yield writer.opening_tapers(laid.label, seen)


def _ends_of(laid: LaidOpening) -> OpeningEnds | None:
    if len(laid.fronts) != 1:
        return None
    top, bottom = widths_at_ends(laid.opening)
    left, right = heights_at_ends(laid.opening)
    e = lean_of(laid.opening, (top + bottom) / 2) or NOTHING
    if top == bottom and left == right and not e:
        return None
    front = laid.fronts[0]
    aside = (_planned(front.overlays.left) - _planned(front.overlays.right)) / 2
    up = (_planned(front.overlays.bottom) - _planned(front.overlays.top)) / 2
    at_top, at_bottom = (top - front.width) / 2, (bottom - front.width) / 2
    at_left, at_right = (left - front.height) / 2, (right - front.height) / 2
    gaps = Sides(
        left=(at_top + aside - e / 2, at_bottom + aside + e / 2),
        right=(at_top - aside + e / 2, at_bottom - aside - e / 2),
        top=(at_left - up, at_right - up),
        bottom=(at_left + up, at_right + up),
    )
    return OpeningEnds(laid.label, gaps if is_inset(front.plane) else _turned(gaps))


def _planned(overlay: Mm | None) -> Mm:
    """The planned gap: a front that is alone in its opening has one at every side."""
    return NOTHING if overlay is None else -overlay


def _turned(gaps: Sides[tuple[Mm, Mm]]) -> Sides[tuple[Mm, Mm]]:
    """The same as overlays."""
    return Sides(*(
        (-first, -last) for first, last in (gaps.left, gaps.right, gaps.top, gaps.bottom)
    ))  # fmt: skip
