"""Where a box's slides lie: below it, or along its sides."""

from dataclasses import dataclass

from fronts.rules.box_facts import Box
from fronts.rules.kinds import SLIDES
from fronts.rules.lengths import NOTHING, Mm


@dataclass(frozen=True, slots=True)
class SlideOutline:
    """Where a slide lies seen from the front, in the box front's places."""

    left: Mm
    bottom: Mm
    right: Mm
    top: Mm


def slide_outlines(box: Box) -> tuple[SlideOutline, ...]:
    """The outlines of a box's slides: below it, or along its sides; none: not measured."""
    if box.slide_width is None or box.slide_height is None or box.slide is None:
        return ()
    wide, tall = box.slide_width, box.slide_height
    slide = SLIDES[box.slide]
    if slide.single:
        left = (box.width - wide) / 2
        return (SlideOutline(left, -tall, left + wide, NOTHING),)
    if slide.below:
        return (
            SlideOutline(NOTHING, -tall, wide, NOTHING),
            SlideOutline(box.width - wide, -tall, box.width, NOTHING),
        )
    low = (box.height - tall) / 2
    return (
        SlideOutline(-wide, low, NOTHING, low + tall),
        SlideOutline(box.width, low, box.width + wide, low + tall),
    )
