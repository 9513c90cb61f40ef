"""Whether a box that exists runs on its slides: not too wide for them, and not too narrow.

Not wider than a box would be made for them, and not narrower by more than their tolerance;
where it was measured how far the box is from the opening's side, and it hangs between slides or
guides, by no more than half of the tolerance on either side.
"""

from fronts.rules.box_facts import Box
from fronts.rules.box_room import box_room
from fronts.rules.laying import Laid
from fronts.rules.lengths import Mm
from fronts.rules.slide_needs import SlideNeeds


def runs_on(laid: Laid, box: Box, needs: SlideNeeds) -> bool:
    """Whether the box is as wide as these slides ask."""
    return not too_wide_by(laid, box, needs) > 0 and not too_narrow(laid, box, needs)


def too_wide_by(laid: Laid, box: Box, needs: SlideNeeds) -> Mm:
    """How much wider than the slides ask; below zero: narrower."""
    return box.width - needs.widest(box_room(laid).width, box.front_thickness)


def too_narrow(laid: Laid, box: Box, needs: SlideNeeds) -> bool:
    """Whether a slide would not reach the box: in all, or at one side."""
    if -too_wide_by(laid, box, needs) > needs.tolerance:
        return True
    if needs.notched or box.side_clearance is None:
        return False
    right = box_room(laid).width - box.side_clearance - box.width
    return max(box.side_clearance, right) > needs.clearance + needs.tolerance / 2
