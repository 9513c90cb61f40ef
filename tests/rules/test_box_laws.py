"""Laws of boxes to be made: they clear what is round them, and their pieces make them up."""

from dataclasses import replace
from fractions import Fraction

from hypothesis import given, settings

from fronts.rules.box_facts import Box
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.opening_sizes import heights_of, widths_of
from fronts.rules.schedule import schedule
from fronts.rules.slide_needs import needs_of
from tests.rules.laws import LAW
from tests.rules.made_boxes import kitchens_of_boxes


@settings(LAW, max_examples=60)
@given(kitchens_of_boxes())
def test_a_made_box_clears_slide_opening_and_neighbours(of: Kitchen) -> None:
    """Within the slide's tolerance of its width, within the room of its front, behind no other."""
    found = schedule(of)
    items = {item.code: item for item in of.hardware.slides}
    ((opening,),) = [cabinet.openings for cabinet in of.cabinets]
    fronts = {front.label: front for front in found.fronts}
    for box in found.boxes:
        needs = needs_of(items[box.slide or ""], of.job.unit)
        widest = needs.widest(min(widths_of(opening)), box.side_thickness)
        front, bottom = fronts[box.front], of.cabinets[0].y + opening.y

        assert 0 <= widest - box.width <= needs.tolerance
        assert box.rise - needs.below >= max(front.y - bottom, Mm(0))
        assert box.rise + box.height + needs.above <= min(
            front.top - bottom, min(heights_of(opening))
        )
        assert box.depth == box.slide_length
        for other in found.fronts:
            if other.label != box.front:
                low = bottom + box.rise
                assert other.top <= low or low + box.height <= other.y
        assert box.class_kg is not None
        assert box.class_kg >= (box.load_kg + front.weight_kg) * Fraction(5, 4)


@settings(LAW, max_examples=60)
@given(kitchens_of_boxes())
def test_the_pieces_add_up_to_the_outside(of: Kitchen) -> None:
    """Front and two sides, less their joints, are the width; the bottom fills its grooves."""
    found = schedule(of)
    for box in found.boxes:
        pieces = {part.part: part for part in found.parts if part.front == box.front}
        side, bottom = pieces["box-side"], pieces["box-bottom"]
        thick = box.side_thickness
        joint = {
            "butt": Mm(0), "rabbet": thick / 2, "dado": thick / 2, "through-dovetail": thick,
        }[of.boxes_made_of.joint]  # fmt: skip

        assert pieces["box-front"].length + 2 * (thick - joint) == box.width
        assert pieces["box-back"].length == pieces["box-front"].length
        assert side.length == box.depth
        assert pieces["box-front"].width == box.height
        assert side.width <= box.height
        assert box.width - 2 * thick < bottom.length < box.width
        assert bottom.width < (box.depth or 0)
        assert min(min(part.length, part.width) for part in pieces.values()) > 0


@settings(LAW, max_examples=60)
@given(kitchens_of_boxes())
def test_a_made_box_runs_as_a_found_one(of: Kitchen) -> None:
    """Put in as measured, nothing is wrong with it that is wrong with found boxes."""
    found = schedule(of)
    boxes = {box.front: box for box in found.boxes}
    ((opening,),) = [cabinet.openings for cabinet in of.cabinets]
    labels = [front.label for front in found.fronts]
    if len(boxes) < len(opening.fronts):
        return
    measured = tuple(
        replace(front, box_to_make=None, box=Box(
            width=boxes[label].width, height=boxes[label].height, depth=boxes[label].depth,
            front_thickness=boxes[label].side_thickness, rise=boxes[label].rise,
            slide=boxes[label].kind,
            shelves=front.box_to_make.shelves if front.box_to_make else 0,
            load_kg=front.box_to_make.load_kg if front.box_to_make else None,
        ))
        for label, front in zip(labels, opening.fronts, strict=True)
    )  # fmt: skip
    cabinet = replace(of.cabinets[0], openings=(replace(opening, fronts=measured),))
    codes = {each.code for each in schedule(replace(of, cabinets=(cabinet,))).findings}

    assert not codes & {
        "box-does-not-run", "box-cannot-come-out", "box-too-long", "slide-not-the-boxs-length",
        "bottom-slide-too-high", "no-slide-fits", "box-does-not-fit", "boxes-overlap",
    }  # fmt: skip
