"""What a shop saws with, and from which sizes of stock, where nobody says.

Kerf and trims are those of a table saw and its fence; the sizes are those in which sheets and
boards are sold in each unit (common practice, no source).
"""

from collections.abc import Mapping
from dataclasses import dataclass

from fronts.rules.lengths import Mm
from fronts.rules.practice import inches


@dataclass(frozen=True, slots=True)
class Saw:
    """How the shop saws: kerf, trims of sheets and of sticks, and what is too narrow to hold."""

    kerf: Mm
    trim: Mm
    ends: Mm
    safe: Mm


SAFE_WIDTH = inches(3)
"""Nothing narrower is held by hand at the blade (common practice, no source)."""

USUAL_SAW: Mapping[str, Saw] = {
    "in": Saw(kerf=inches(1, 8), trim=inches(1, 4), ends=inches(1, 2), safe=SAFE_WIDTH),
    "mm": Saw(kerf=Mm(16, 5), trim=Mm(10), ends=Mm(15), safe=Mm(75)),
}
USUAL_SHEET: Mapping[str, tuple[Mm, Mm]] = {
    "in": (inches(96), inches(48)),
    "mm": (Mm(2440), Mm(1220)),
}
"""Length, along which the grain runs, and width."""
USUAL_STICK: Mapping[str, Mm] = {"in": inches(96), "mm": Mm(2440)}
