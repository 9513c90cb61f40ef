"""Where a cabinet's openings go when it is made wider, narrower, higher or lower.

A face that words can say is laid out anew in the new size: what was shared is shared again,
what was given stays as given. Sizes measured on site are no part of that; they stay.
"""

from dataclasses import replace

from fronts.notebook.faults import NotUnderstood
from fronts.notebook.openings import Around, openings_of
from fronts.notebook.regular_face import regular_face
from fronts.rules.kinds import Unit
from fronts.rules.kitchen import Cabinet, Opening
from fronts.rules.lengths import Mm


def openings_resized(
    cabinet: Cabinet, width: Mm, height: Mm, unit: Unit, step: Mm
) -> tuple[Opening, ...]:
    """The cabinet's openings in a new size of it, in their order.

    They stay where they are if no words say the face that they are, or it has no room.
    """
    known = regular_face(cabinet, unit, step)
    if known is None or (cabinet.width, cabinet.height) == (width, height):
        return cabinet.openings
    try:
        placed = openings_of(known.face, Around(width, height, known.member, unit, step))
    except NotUnderstood:
        return cabinet.openings
    down = sorted(cabinet.openings, key=lambda opening: (-opening.y, opening.x))
    moved = {
        opening.label: replace(
            opening, x=place.x, y=place.y, width=place.width, height=place.height
        )
        for opening, place in zip(down, placed, strict=True)
    }
    return tuple(moved[opening.label] for opening in cabinet.openings)
