"""What can be known of a cabinet's next opening from those that it has."""

from collections.abc import Sequence
from string import ascii_lowercase
from typing import Any

from fronts.models import Cabinet, Opening
from fronts.pages.measure.forms.openings import USUAL_STACK
from fronts.rules.lengths import Mm
from fronts.services.faces import member_of


def next_opening(cabinet: Cabinet, openings: Sequence[Opening], unit: str) -> dict[str, Any]:
    """What the form of the next opening starts with: the space that is still free."""
    initial: dict[str, Any] = {
        "label": _label({each.label for each in openings}),
        "closed_by": openings[-1].closed_by if openings else "door",
        "hinged": "left",
        "count": USUAL_STACK,
    }
    if not openings:
        return initial | _whole_face(cabinet, member_of(cabinet.build, unit))
    return initial | _below(cabinet, openings)


def _label(taken: set[str]) -> str:
    turns = ("", *(str(turn) for turn in range(2, 100)))
    labels = (f"{letter}{turn}" for turn in turns for letter in ascii_lowercase)
    return next((label for label in labels if label not in taken), "")


def _whole_face(cabinet: Cabinet, member: Mm) -> dict[str, Any]:
    width, height = cabinet.width - 2 * member, cabinet.height - 2 * member
    if width <= 0 or height <= 0:
        return {}
    return {"x": member, "y": member, "width": width, "height": height}


def _below(cabinet: Cabinet, openings: Sequence[Opening]) -> dict[str, Any]:
    """The space under the lowest opening, else over the highest, with members like the others."""
    lowest = min(openings, key=lambda each: each.y)
    top = max(each.y + each.height for each in openings)
    member = lowest.x
    free = lowest.y - 2 * member
    if free > member:
        return {"x": lowest.x, "y": member, "width": lowest.width, "height": free}
    free = cabinet.height - top - 2 * member
    if free > member:
        return {"x": lowest.x, "y": top + member, "width": lowest.width, "height": free}
    return {"y": lowest.y, "height": lowest.height}
