"""What is wrong with a front's knobs and pulls, and with those of neighbours together."""

from collections.abc import Iterator, Mapping, Sequence

from fronts.rules.findings import FindingWriter
from fronts.rules.kinds import FRONT_KINDS, Side
from fronts.rules.kitchen import Kitchen
from fronts.rules.laying import Laid
from fronts.rules.lengths import Mm
from fronts.rules.making import Make
from fronts.rules.neighbours import Facing
from fronts.rules.practice import Practice
from fronts.rules.results import Finding

BESIDE: tuple[Side, ...] = ("left", "right")


def handle_findings(
    laid: Sequence[Laid],
    makes: Sequence[Make],
    faced: Sequence[Mapping[Side, Facing]],
    kitchen: Kitchen,
    writer: FindingWriter,
) -> Iterator[Finding]:
    """Codes that are not in the list, panels too thin for a screw, knobs that miss a line."""
    codes = {item.code for item in kitchen.hardware.handles}
    for front, make in zip(laid, makes, strict=True):
        named = front.decided.handle
        if named is not None and named not in codes:
            yield writer.handle_unknown(front.label, named)
        yield from _thin(front, make, kitchen.practice, writer)
    yield from _lines(laid, makes, faced, kitchen.practice, writer)


def _thin(laid: Laid, make: Make, practice: Practice, writer: FindingWriter) -> Iterator[Finding]:
    face = make.face
    holes = (hole for handle in make.handles("") for hole in handle.holes)
    if any(face.is_thin_at(hole.x, hole.y, practice.knob_panel) for hole in holes):
        if make.glass:
            yield writer.knob_in_glass(laid.label)
        else:
            yield writer.knob_in_panel(laid.label, face.panel_thickness, face.void)


def _lines(
    laid: Sequence[Laid],
    makes: Sequence[Make],
    faced: Sequence[Mapping[Side, Facing]],
    practice: Practice,
    writer: FindingWriter,
) -> Iterator[Finding]:
    """Each pair once, in the kitchen's order: fronts of one kind beside each other, of which one
    could be moved. What faces one from its left need not be what that faces on its right.
    """
    pairs = {
        (min(index, other), max(index, other))
        for index, sides in enumerate(faced)
        for side in BESIDE
        if side in sides
        for other in sides[side].fronts
    }
    for one, other in sorted(pairs):
        by = _miss(laid, makes, one, other)
        if by is not None and 0 < by < practice.knobs_line:
            yield writer.knobs_out_of_line(laid[one].label, laid[other].label, by)


def _miss(laid: Sequence[Laid], makes: Sequence[Make], one: int, other: int) -> Mm | None:
    """How far their knobs miss one line; None where they need not, or could not, make one."""
    pair = (laid[one], makes[one]), (laid[other], makes[other])
    doors = {FRONT_KINDS[make.kind].upright for _, make in pair}
    if len(doors) > 1 or not all(make.middles for _, make in pair):
        return None
    heights = [front.y + make.middles[0].y for front, make in pair]
    low, high = max(front.y for front, _ in pair), min(front.top for front, _ in pair)
    movable = [
        index
        for index, (_, make) in enumerate(pair)
        if not make.settled and low < heights[1 - index] < high
    ]
    return abs(heights[0] - heights[1]) if movable else None
