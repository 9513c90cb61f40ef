"""What is wrong with a drawer box that exists, where it stands: in its opening, in its stack."""

from collections.abc import Iterator, Sequence

from fronts.rules.box_facts import Box
from fronts.rules.box_place import side_clearance
from fronts.rules.box_runs import runs_on, too_narrow
from fronts.rules.box_slides import BoxSlide
from fronts.rules.findings import FindingWriter
from fronts.rules.inside_depth import inside_depth
from fronts.rules.items import SlideItem
from fronts.rules.kinds import SLIDES, SlideKind
from fronts.rules.kitchen import Kitchen
from fronts.rules.laying import Laid, LaidOpening
from fronts.rules.lengths import Mm
from fronts.rules.opening_sizes import heights_of, widths_of
from fronts.rules.results import Finding
from fronts.rules.slide_needs import SlideNeeds, needs_of
from fronts.rules.usual_slides import ANY_SLIDES, slides_of, usual_slides


def box_findings(
    laid: Laid, box: Box, hung: BoxSlide, siblings: Sequence[Laid], front_thickness: Mm,
    kitchen: Kitchen, writer: FindingWriter,
) -> Iterator[Finding]:  # fmt: skip
    """Whether a front's box goes in, runs, and comes out past the `siblings` in its opening."""
    yield from _width_findings(laid, box, kitchen, writer)
    met = list(_way_out(laid, box, siblings, kitchen, writer))
    if met:
        yield writer.box_cannot_come_out(laid.label, met)
    slide_height = _slide_height(box, kitchen)
    if slide_height is not None and slide_height > box.rise:
        yield writer.bottom_slide_too_high(laid.label, slide_height, box.rise)
    inside = inside_depth(laid, front_thickness, kitchen.job.unit)
    if box.depth is not None and box.depth > inside:
        yield writer.box_too_long(laid.label, box.depth, inside)
    if hung.slide is None:
        yield _no_slide(laid, box, hung, kitchen, writer)


def _width_findings(
    laid: Laid, box: Box, kitchen: Kitchen, writer: FindingWriter
) -> Iterator[Finding]:
    width = min(widths_of(laid.opening))
    if box.slide is not None:
        slides, unit = _slides_to_try(box.slide, kitchen), kitchen.job.unit
        if not any(runs_on(box, width, needs_of(slide, unit)) for slide in slides):
            needs = needs_of(slides[0], unit)
            yield _does_not_run(laid.label, box, box.slide, width, needs, writer)
            return
    left = side_clearance(width, box)
    if left < 0 or left + box.width > width:
        yield writer.box_does_not_fit(laid.label, box.width, width)


def _slides_to_try(kind: SlideKind, kitchen: Kitchen) -> tuple[SlideItem, ...]:
    """The shop's slides of a kind; plain ones, where it has none of it."""
    return slides_of(kitchen, kind) or usual_slides(kitchen, kind)


def _does_not_run(
    label: str, box: Box, kind: SlideKind, opening: Mm, needs: SlideNeeds, writer: FindingWriter
) -> Finding:
    most = needs.widest(opening, box.front_thickness)
    loose = too_narrow(box, opening, needs) and SLIDES[kind].single
    return writer.box_does_not_run(
        label, SLIDES[kind].item, box.width, most - needs.tolerance, most, loose=loose
    )


def _way_out(
    laid: Laid, box: Box, siblings: Sequence[Laid], kitchen: Kitchen, writer: FindingWriter
) -> Iterator[str]:
    """What a box meets on its way out, in words: its opening, or another front of that."""
    least, say = kitchen.practice.box_clear, writer.say
    above = min(heights_of(laid.opening)) - box.rise - box.height
    for where, gap in (("below", box.rise), ("above", above)):
        if gap < least:
            yield f"it leaves {say(gap)} {where} it in its opening, {say(least)} is wanted"
    low = laid.rect.y + box.rise
    for other in siblings:
        if other.label == laid.label:
            continue
        by = min(low + box.height, other.top) - max(low, other.y)
        if by > 0:
            yield f"it stands {say(by)} behind {other.label}"


def _slide_height(box: Box, kitchen: Kitchen) -> Mm | None:
    """How high the slide under a box is: as measured, else as the lowest of the shop's is."""
    if box.slide is None or not SLIDES[box.slide].single:
        return None
    if box.slide_height is not None:
        return box.slide_height
    listed = (slide.height for slide in slides_of(kitchen, box.slide))
    return min((height for height in listed if height is not None), default=None)


def _no_slide(
    laid: Laid, box: Box, hung: BoxSlide, kitchen: Kitchen, writer: FindingWriter
) -> Finding:
    kind, depth = SLIDES[box.slide].item if box.slide else ANY_SLIDES, box.depth
    slides = slides_of(kitchen, box.slide)
    exact = box.slide is not None and SLIDES[box.slide].notched
    if exact and depth is not None and not any(depth in slide.lengths for slide in slides):
        return writer.slide_not_the_boxs_length(laid.label, depth)
    needed = writer.say_weight(hung.load.needed_kg)
    return writer.no_slide(laid.label, kind, hung.longest, needed)


def stack_findings(laid: LaidOpening, writer: FindingWriter) -> Iterator[Finding]:
    """Boxes of one stack that stand in each other's way."""
    boxes = [(front.label, front.box) for front in laid.fronts if front.box]
    for index, (one, upper) in enumerate(boxes):
        for other, lower in boxes[index + 1 :]:
            top = min(upper.rise + upper.height, lower.rise + lower.height)
            by = top - max(upper.rise, lower.rise)
            if by > 0:
                yield writer.boxes_overlap(one, other, by)
