"""How wide the members of a cabinet's face are where nobody says: stiles, rails or panels.

A shop thinks in whole sizes of its own unit, so each unit has its own figure.
"""

from collections.abc import Mapping

from fronts.rules.lengths import Mm
from fronts.rules.practice import inches

USUAL_WIDTHS: Mapping[tuple[str, str], Mm] = {
    ("face-frame", "in"): inches(3, 2),  # common practice, no source
    ("frameless", "in"): inches(3, 4),  # common practice, no source
    ("face-frame", "mm"): Mm(40),  # common practice, no source
    ("frameless", "mm"): Mm(18),  # common practice, no source
}


def member_width(build: str, unit: str) -> Mm:
    """The usual width of a member in a cabinet of this build, in a shop of this unit."""
    return USUAL_WIDTHS[build, unit]
