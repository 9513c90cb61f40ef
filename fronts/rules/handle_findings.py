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
from fronts.rules.results import Finding, Front

BESIDE: tuple[Side, ...] = ("left", "right")


def handle_findings(
    fronts: Sequence[Front],
    laid: Sequence[Laid],
    makes: Sequence[Make],
    faced: Sequence[Mapping[Side, Facing]],
    kitchen: Kitchen,
    writer: FindingWriter,
) -> Iterator[Finding]:
    """Codes that are not in the list, panels too thin for a screw, knobs that miss a line."""
    codes = {item.code for item in kitchen.hardware.handles}
    for front, laid_front in zip(fronts, laid, strict=True):
        named = laid_front.decided.handle
        if named is not None and named not in codes:
            yield writer.handle_unknown(front.label, named)
        yield from _thin(front, kitchen.practice, writer)
    settled = [make.settled for make in makes]
    yield from _lines(fronts, settled, faced, kitchen.practice, writer)


def _thin(front: Front, practice: Practice, writer: FindingWriter) -> Iterator[Finding]:
    face = front.face
    if any(face.is_thin_at(hole.x, hole.y, practice.knob_panel) for hole in front.knobs):
        if front.glass:
            yield writer.knob_in_glass(front.label)
        else:
            yield writer.knob_in_panel(front.label, face.panel_thickness, face.void)


def _lines(
    fronts: Sequence[Front],
    settled: Sequence[bool],
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
        by = _miss(fronts, settled, one, other)
        if by is not None and 0 < by < practice.knobs_line:
            yield writer.knobs_out_of_line(fronts[one].label, fronts[other].label, by)


def _miss(fronts: Sequence[Front], settled: Sequence[bool], one: int, other: int) -> Mm | None:
    """How far their knobs miss one line; None where they need not, or could not, make one."""
    pair = fronts[one], fronts[other]
    doors = {FRONT_KINDS[front.kind].upright for front in pair}
    if len(doors) > 1 or not all(front.handles for front in pair):
        return None
    first, second = (front.y + front.handles[0].y for front in pair)
    low, high = max(front.y for front in pair), min(front.top for front in pair)
    movable = (not settled[one] and low < second < high) or (
        not settled[other] and low < first < high
    )
    return abs(first - second) if movable else None
