"""What a slide asks of its box: width, room below and above, and how exactly.

As the item says, else as is usual for its kind in the job's unit.
"""

from dataclasses import dataclass

from fronts.rules.items import SlideItem
from fronts.rules.kinds import SLIDES, Unit
from fronts.rules.lengths import NOTHING, Mm, floor_to
from fronts.rules.unit_figures import UNIT_FIGURES


@dataclass(frozen=True, slots=True)
class SlideNeeds:
    """`notched`: the box is exactly as long as the slide, and its inside width counts."""

    clearance: Mm
    tolerance: Mm
    below: Mm
    above: Mm
    recess: Mm
    notched: bool
    most_side: Mm | None

    def widest(self, opening: Mm, side: Mm) -> Mm:
        """The outside width of a box with sides so thick, in an opening so wide."""
        if self.notched:
            return opening - self.clearance + 2 * side
        return opening - 2 * self.clearance

    def made_width(self, opening: Mm, side: Mm, step: Mm) -> Mm:
        """Down to the step, or exact where the step would lose more than the tolerance."""
        widest = self.widest(opening, side)
        stepped = floor_to(widest, step)
        return widest if widest - stepped > self.tolerance else stepped


def needs_of(item: SlideItem, unit: Unit) -> SlideNeeds:
    """What this item asks for; a bottom slide at least its own height below the box."""
    usual, traits = UNIT_FIGURES[unit].slides[item.kind], SLIDES[item.kind]
    own_clearance = item.inside_clearance if traits.notched else item.clearance
    below = max(item.height or NOTHING, usual.below) if traits.single else usual.below
    return SlideNeeds(
        clearance=_or(own_clearance, usual.clearance),
        tolerance=_or(item.tolerance, usual.tolerance),
        below=_or(item.below, below),
        above=_or(item.above, usual.above),
        recess=_or(item.recess, usual.recess) if traits.notched else usual.recess,
        notched=traits.notched,
        most_side=item.most_side,
    )


def _or(said: Mm | None, usual: Mm) -> Mm:
    return usual if said is None else said
