"""The box behind a front, found or made, with the slide that it runs on and what it carries."""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from fronts.rules.blocking import blocking
from fronts.rules.box_checks import box_findings
from fronts.rules.box_facts import Box, BoxToMake
from fronts.rules.box_parts import BoxPiece
from fronts.rules.box_results import BoxOnSlide
from fronts.rules.box_sizes import NoBox, size_box
from fronts.rules.box_slides import BoxSlide, slide_for
from fronts.rules.box_stock import MATERIAL
from fronts.rules.findings import FindingWriter
from fronts.rules.items import SlideItem
from fronts.rules.kinds import FRONT_KINDS, SLIDES
from fronts.rules.kitchen import Kitchen
from fronts.rules.laying import Laid
from fronts.rules.lengths import Mm
from fronts.rules.materials import material_of
from fronts.rules.results import Finding


@dataclass(frozen=True, slots=True)
class Standing:
    """A box behind its front; `floor` is the upper face of its bottom above its lower edge.

    `pieces` are those of a box that is to be made, `slide` None where none is right.
    """

    box: Box
    made: bool
    slide: SlideItem | None
    length: Mm | None
    load_kg: Fraction
    floor: Mm
    pieces: tuple[BoxPiece, ...] = ()
    material: str = ""


def boxes_behind(
    laid: Sequence[Laid],
    thicknesses: Sequence[Mm],
    weights: Sequence[Fraction],
    kitchen: Kitchen,
    writer: FindingWriter,
) -> tuple[dict[str, Standing], list[Finding]]:
    """The boxes of all fronts by the labels of these, and what is wrong with them."""
    in_opening: dict[str, list[Laid]] = defaultdict(list)
    for front in laid:
        in_opening[front.opening_label].append(front)
    boxes, findings = {}, []
    for front, thickness, weight in zip(laid, thicknesses, weights, strict=True):
        siblings = in_opening[front.opening_label]
        standing, wrong = _stand(front, siblings, thickness, weight, kitchen, writer)
        findings += wrong
        if standing is not None:
            boxes[front.label] = standing
    return boxes, findings


def _stand(
    laid: Laid,
    siblings: Sequence[Laid],
    thickness: Mm,
    weight: Fraction,
    kitchen: Kitchen,
    writer: FindingWriter,
) -> tuple[Standing | None, list[Finding]]:
    """The box of a front of this thickness and weight; `siblings` are all of its opening."""
    decided = laid.decided
    if not laid.opening.closing.on_box:
        return None, []
    if decided.box_to_make is not None:
        standing, findings = _make(laid, decided.box_to_make, thickness, weight, kitchen, writer)
    elif decided.box is not None:
        hung = slide_for(laid, decided.box, thickness, weight, kitchen)
        standing = _found(decided.box, hung)
        findings = list(box_findings(laid, decided.box, hung, siblings, thickness, kitchen, writer))
    else:
        return None, [writer.box_missing(laid.label)]
    if standing is not None:
        findings += _wants(laid, standing.box, kitchen, writer)
    return standing, findings


def _make(
    laid: Laid, to_make: BoxToMake, thickness: Mm, weight: Fraction, kitchen: Kitchen,
    writer: FindingWriter,
) -> tuple[Standing | None, list[Finding]]:  # fmt: skip
    made = size_box(laid, to_make, thickness, weight, kitchen)
    if isinstance(made, NoBox):
        kind = SLIDES[made.kind].item
        if made.room is not None:
            room = made.room
            return None, [
                writer.no_room_for_box(laid.label, kind, room.width, room.high - room.low)
            ]
        needed = None if made.needed_kg is None else writer.say_weight(made.needed_kg)
        return None, [writer.no_slide(laid.label, kind, made.longest, needed)]
    findings = []
    if material_of(made.material) is None:
        findings.append(writer.material_unknown(laid.label, made.material, MATERIAL))
    standing = Standing(
        box=made.box,
        made=True,
        slide=made.slide,
        length=made.length,
        load_kg=made.load_kg,
        floor=made.floor,
        pieces=made.pieces,
        material=made.material,
    )
    return standing, findings


def _found(box: Box, hung: BoxSlide) -> Standing:
    return Standing(
        box=box,
        made=False,
        slide=hung.slide,
        length=hung.length,
        load_kg=hung.load.load_kg,
        floor=hung.floor,
    )


def _wants(laid: Laid, box: Box, kitchen: Kitchen, writer: FindingWriter) -> list[Finding]:
    """What a box wants beside its slides: blocking, and at a high pull-out's top a guide."""
    findings, practice = [], kitchen.practice
    thick = blocking(laid, box, kitchen.job.unit)
    if thick:
        findings.append(writer.stile_wants_blocking(laid.label, thick))
    high = box.height > practice.guide_over or box.height > practice.guide_times * box.width
    if FRONT_KINDS[laid.opening.closing.front].low_sides and high:
        findings.append(writer.box_wants_guide(laid.label, box.width, box.height))
    return findings


def box_row(front: str, standing: Standing) -> BoxOnSlide:
    """What the schedule says of it."""
    box, slide = standing.box, standing.slide
    return BoxOnSlide(
        front=front,
        made=standing.made,
        width=box.width,
        height=box.height,
        depth=box.depth,
        side_thickness=box.front_thickness,
        rise=box.rise,
        kind=box.slide,
        slide=slide.code if slide else None,
        slide_length=standing.length,
        load_kg=standing.load_kg,
        class_kg=slide.load_kg if slide else None,
    )
