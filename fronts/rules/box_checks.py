"""What is wrong with a drawer box where it stands: in its opening, and in its stack."""

from collections.abc import Iterator

from fronts.rules.findings import FindingWriter
from fronts.rules.kitchen import Box
from fronts.rules.laying import Laid, LaidOpening
from fronts.rules.lengths import Mm
from fronts.rules.opening_sizes import widths_of
from fronts.rules.results import Finding


def box_findings(
    laid: Laid, box: Box, side_clearance: Mm, writer: FindingWriter
) -> Iterator[Finding]:
    """Whether a front's box passes its opening and its cabinet."""
    opening, say = laid.rect, writer.say
    if side_clearance < 0 or side_clearance + box.width > opening.width:
        least = say(min(widths_of(laid.opening)))
        why = f"its box, {say(box.width)} wide, does not pass an opening of {least}"
        yield writer.box_does_not_fit(laid.label, why)
    if box.rise + box.height > opening.height:
        top = say(box.rise + box.height)
        why = f"its box reaches {top} up in an opening {say(opening.height)} high"
        yield writer.box_does_not_fit(laid.label, why)
    if box.depth is not None and box.depth > laid.cabinet.depth:
        why = f"its box is {say(box.depth)} deep, its cabinet {say(laid.cabinet.depth)}"
        yield writer.box_does_not_fit(laid.label, why)


def stack_findings(laid: LaidOpening, writer: FindingWriter) -> Iterator[Finding]:
    """Boxes of one stack that stand in each other's way."""
    boxes = [(front.label, front.box) for front in laid.fronts if front.box]
    for index, (one, upper) in enumerate(boxes):
        for other, lower in boxes[index + 1 :]:
            top = min(upper.rise + upper.height, lower.rise + lower.height)
            by = top - max(upper.rise, lower.rise)
            if by > 0:
                yield writer.boxes_overlap(one, other, by)
