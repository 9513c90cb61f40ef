"""The jig that a front stands on while it is fixed to its box: block, ledges, slot.

    +------+   +------+   block, under the box: as thick as the box is above the front's edge
    |      |   |      |   slot at its mid-length: clears a bottom slide
    |      +---+      |
    +--+-----------+--+
    +--+           +--+   ledges: stand proud under the front, flush behind

A block thinner than a shop's least is not made: packers as thick stand under the box instead.
One jig serves all fronts with the same jig thickness and box width; the same thickness alone
shares a blank.
"""

from collections import defaultdict
from collections.abc import Sequence

from fronts.rules.box_facts import Box
from fronts.rules.fitting_results import Fitting, Jig, Ledges, Method, Slot
from fronts.rules.kinds import SLIDES, Unit
from fronts.rules.lengths import Mm
from fronts.rules.practice import Practice
from fronts.rules.results import Front
from fronts.rules.unit_figures import UNIT_FIGURES


def ledges_for(front_thickness: Mm, practice: Practice) -> Ledges:
    """Ledges that stand proud by a front's thickness, flush with the back of the block."""
    length = practice.ledge_length
    return Ledges(
        thickness=practice.ledge_thickness,
        length=length,
        overhang=front_thickness,
        block_depth=length - front_thickness,
    )


def setting_method(thickness: Mm, unit: Unit) -> Method:
    """What a front is set with, whose bottom edge is so far below its box."""
    if thickness <= 0:
        return "shims"
    return "packers" if thickness < UNIT_FIGURES[unit].least_jig else "jig"


def needs_slot(box: Box) -> bool:
    """Whether a slide hangs under the box's middle, where the jig stands."""
    return box.slide is not None and SLIDES[box.slide].single


def slot_for(box: Box, practice: Practice) -> Slot | None:
    """The slot for a bottom slide; None where there is none, or its sizes are not known."""
    if not needs_slot(box) or box.slide_width is None or box.slide_height is None:
        return None
    return Slot(box.slide_width + practice.slot_wider, box.slide_height + practice.slot_deeper)


def shared_jigs(
    fittings: Sequence[Fitting], fronts: Sequence[Front], practice: Practice
) -> tuple[Jig, ...]:
    """The jigs of the whole kitchen, thickest last.

    The ledges of a shared one carry its thickest front, its slot clears its largest slide.
    """
    thickness_of = {front.label: front.thickness for front in fronts}
    groups: dict[tuple[Mm, Mm], list[Fitting]] = defaultdict(list)
    for fitting in fittings:
        if fitting.method == "jig":
            groups[fitting.jig_thickness, fitting.jig_length].append(fitting)
    jigs = []
    for (thickness, length), group in sorted(groups.items()):
        slots = [fitting.slot for fitting in group if fitting.slot]
        jigs.append(
            Jig(
                thickness=thickness,
                length=length,
                ledges=ledges_for(max(thickness_of[fitting.front] for fitting in group), practice),
                slot=max(slots, key=lambda slot: (slot.width, slot.depth), default=None),
                fronts=tuple(fitting.front for fitting in group),
            )
        )
    return tuple(jigs)
