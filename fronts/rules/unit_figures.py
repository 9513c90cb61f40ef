"""What slides ask for and how boxes are made where nobody says: in inch shops, in metric ones.

A metric shop starts from metric numbers, not from converted inches. Common practice, no source.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from fronts.rules.kinds import SlideKind, Unit
from fronts.rules.lengths import Mm
from fronts.rules.practice import inches


@dataclass(frozen=True, slots=True)
class SlideFigures:
    """What a kind of slide asks for; `recess` is from the sides' lower edge to the bottom panel.

    `clearance` is a side, or for boxes that are notched the opening less the inside width.
    """

    clearance: Mm
    tolerance: Mm
    below: Mm
    above: Mm
    recess: Mm


@dataclass(frozen=True, slots=True)
class UnitFigures:
    """The figures of shops that work in one unit.

    `play` is what panels are short of their grooves in all; `low_side` the most that a
    pull-out's sides are high; `least_box` the least height, and width inside.
    """

    slides: Mapping[SlideKind, SlideFigures]
    back: Mm
    rear_clearance: Mm
    side: Mm
    bottom: Mm
    groove: Mm
    play: Mm
    low_side: Mm
    least_box: Mm
    least_jig: Mm


INSIDE = Mm(42)
RECESS = Mm(13)

UNIT_FIGURES: Mapping[Unit, UnitFigures] = {
    "in": UnitFigures(
        slides={
            "side": SlideFigures(
                inches(1, 2), inches(1, 16), inches(1, 2), inches(1, 2), inches(1, 4)
            ),
            "under": SlideFigures(INSIDE, inches(1, 32), inches(9, 16), inches(1, 4), RECESS),
            "bottom": SlideFigures(
                inches(3, 16), inches(1, 16), inches(1, 2), inches(1, 2), inches(1, 4)
            ),
        },
        back=inches(1, 4),
        rear_clearance=inches(1, 2),
        side=inches(1, 2),
        bottom=inches(1, 4),
        groove=inches(1, 4),
        play=inches(1, 16),
        low_side=inches(4),
        least_box=inches(2),
        least_jig=inches(1, 4),
    ),
    "mm": UnitFigures(
        slides={
            "side": SlideFigures(Mm("12.7"), Mm("1.6"), Mm(12), Mm(12), Mm(6)),
            "under": SlideFigures(INSIDE, Mm("0.8"), Mm(14), Mm(6), RECESS),
            "bottom": SlideFigures(Mm(5), Mm("1.6"), Mm(12), Mm(12), Mm(6)),
        },
        back=Mm(6),
        rear_clearance=Mm(12),
        side=Mm(12),
        bottom=Mm(6),
        groove=Mm(6),
        play=Mm("1.5"),
        low_side=Mm(100),
        least_box=Mm(50),
        least_jig=Mm(6),
    ),
}
