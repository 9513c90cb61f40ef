"""Rails of a low five-piece drawer front: narrow ones where full ones leave too little panel.

    height - 2 × rail < least panel    narrow rails
    still less with narrow ones        a slab instead

Both limits are the shop's numbers (common practice, no source).
"""

from dataclasses import dataclass

from fronts.rules.lengths import Mm
from fronts.rules.practice import Practice


@dataclass(frozen=True, slots=True)
class Rails:
    """How a low front is made: its rails, and whether it has a panel at all."""

    rail: Mm
    panel: bool


def drawer_rails(height: Mm, rail: Mm, practice: Practice) -> Rails:
    """The rails of a five-piece drawer front that is so high."""
    if height - 2 * rail >= practice.least_panel:
        return Rails(rail, panel=True)
    narrow = min(rail, practice.narrow_rail)
    return Rails(narrow, panel=height - 2 * narrow >= practice.least_panel)
