"""Blocking behind a face frame's stiles, where a box hangs on side slides.

    |#|________      the slide is screwed to the cabinet's side; a stile that stands in front of
    |#|  stile |     it by s keeps the slide so far off, unless s is blocked out
    |#|<- s -->|

A cabinet's sides are taken as thick as a frameless one's (common practice, no source). Behind
a stile that two openings share nobody knows what stands, so nothing is said of it.
"""

from collections.abc import Mapping

from fronts.rules.box_facts import Box
from fronts.rules.kinds import CABINET_BUILDS, SLIDES, Side, Unit
from fronts.rules.laying import Laid
from fronts.rules.lengths import Mm
from fronts.rules.member_width import member_width
from fronts.rules.opening_sizes import opening_rect
from fronts.rules.overlay import members
from fronts.rules.rect import Rect


def blocking(laid: Laid, box: Box, unit: Unit) -> Mapping[Side, Mm]:
    """How thick it must be, by the side on which it is wanted."""
    cabinet = laid.cabinet
    at_sides = box.slide is not None and not SLIDES[box.slide].below
    if not at_sides or not CABINET_BUILDS[cabinet.build].framed:
        return {}
    others = [
        opening_rect(cabinet, opening, greatest=True)
        for opening in cabinet.openings
        if opening.label != laid.opening.label
    ]
    outer = Rect(cabinet.left, cabinet.y, cabinet.width, cabinet.height)
    stiles = members(laid.rect, others, outer)
    panel = member_width("frameless", unit)
    return {
        side: width - panel
        for side, (width, shared) in stiles.items()
        if side in ("left", "right") and not shared and width > panel
    }
