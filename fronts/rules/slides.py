"""Slides: the longest stocked length that fits, the load they carry, and where they lie."""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from fronts.rules.kinds import SLIDES, is_inset
from fronts.rules.kitchen import Box
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.practice import Practice
from fronts.rules.results import Front


@dataclass(frozen=True, slots=True)
class SlideOutline:
    """Where a slide lies seen from the front, in the box front's places."""

    left: Mm
    bottom: Mm
    right: Mm
    top: Mm


def slide_room(box: Box, cabinet_depth: Mm, front: Front, practice: Practice) -> Mm:
    """The longest slide that fits the cabinet's depth, less a clearance behind, and the box.

    An inset front takes its own thickness of the cabinet's depth.
    """
    inside = cabinet_depth - practice.rear_clearance
    if is_inset(front.plane):
        inside -= front.thickness
    return inside if box.depth is None else min(inside, box.depth)


def slide_length(stocked: Sequence[Mm], room: Mm) -> Mm | None:
    """The longest stocked slide that fits; None: none does."""
    return max((length for length in stocked if length <= room), default=None)


def expected_load(box: Box, cabinet_depth: Mm, front_kg: Fraction, practice: Practice) -> Fraction:
    """Kilograms on a box's slides: its floor at the drawer test's load, and its front.

    Source: ANSI/KCMA A161.1, drawers loaded at 15 lb/ft².
    """
    depth = box.depth if box.depth is not None else cabinet_depth
    return box.width * depth * practice.drawer_load + front_kg


def slide_class(load_kg: Fraction, practice: Practice) -> Fraction | None:
    """The lowest load class, in kg, at or above the load; None: past them all."""
    return min((carries for carries in practice.slide_classes if carries >= load_kg), default=None)


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
