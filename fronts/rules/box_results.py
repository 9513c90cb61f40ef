"""What a schedule says of the boxes behind its fronts: frozen results, exact millimetres."""

from dataclasses import dataclass
from fractions import Fraction

from fronts.rules.kinds import SlideKind
from fronts.rules.lengths import Mm


@dataclass(frozen=True, slots=True)
class BoxOnSlide:
    """One front's box, found or `made`; `depth` None: nobody measured it.

    `slide` is the item's code, `class_kg` what that carries, `load_kg` what is put into the box.
    """

    front: str
    made: bool
    width: Mm
    height: Mm
    depth: Mm | None
    side_thickness: Mm
    rise: Mm
    kind: SlideKind | None
    slide: str | None
    slide_length: Mm | None
    load_kg: Fraction
    class_kg: Fraction | None
