"""Where a drawer box stands behind its front: side offset and jig thickness.

      front
+----------------+          side offset   = side clearance + overlay
|   +--------+   |                          (- gap where the front is inset)
|   |  box   |   |          jig thickness = rise + overlay at the bottom
|   +--------+   |  ^ jig                   (- gap where the front is inset)
+----------------+  v
"""

from fronts.rules.box_facts import Box
from fronts.rules.laying import Laid
from fronts.rules.lengths import Mm
from fronts.rules.rect import Rect


def side_clearance(opening_width: Mm, box: Box) -> Mm:
    """From the opening's left edge to the box: measured, else half of what is over."""
    if box.side_clearance is not None:
        return box.side_clearance
    return (opening_width - box.width) / 2


def box_on_front(laid: Laid, box: Box) -> Rect:
    """The box front's outline on the front: its place is the side offset and the jig thickness."""
    x = side_clearance(laid.rect.width, box) + laid.rect.x - laid.x
    return Rect(x, box.rise + laid.rect.y - laid.y, box.width, box.height)
