"""Whether a box that exists runs on its slides: not too wide for them, and not too narrow.

Not wider than a box would be made for them, and not narrower by more than their tolerance;
where it was measured how far the box is from the opening's side, and it hangs between slides or
guides, by no more than half of the tolerance on either side.
"""

from fronts.rules.box_facts import Box
from fronts.rules.lengths import Mm
from fronts.rules.slide_needs import SlideNeeds


def runs_on(box: Box, opening: Mm, needs: SlideNeeds) -> bool:
    """Whether the box is as wide as these slides ask in an opening so wide."""
    widest = needs.widest(opening, box.front_thickness)
    return box.width <= widest and not too_narrow(box, opening, needs)


def too_narrow(box: Box, opening: Mm, needs: SlideNeeds) -> bool:
    """Whether a slide would not reach the box: in all, or at one side."""
    if needs.widest(opening, box.front_thickness) - box.width > needs.tolerance:
        return True
    if needs.notched or box.side_clearance is None:
        return False
    right = opening - box.side_clearance - box.width
    return max(box.side_clearance, right) > needs.clearance + needs.tolerance / 2
