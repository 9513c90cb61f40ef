"""What a drawing of a front's back is drawn with: its scale, how large bores are, free places."""

from dataclasses import dataclass
from itertools import combinations

from fronts.drawings.drawing import Drawing
from fronts.drawings.geometry import Area
from fronts.drawings.scale import Scale
from fronts.drawings.svg import Px
from fronts.figures.boxes import mirrored
from fronts.rules.fitting_results import Fitting
from fronts.rules.kitchen import Point
from fronts.rules.lengths import Mm
from fronts.rules.results import Front

CROSS: Px = 4_00
NOTE: Px = 12_00
_LEAST_HOLE: Px = 2_50
_FARTHEST: Px = 30_00
_LEAST_REACH: Px = 1_50


@dataclass(frozen=True, slots=True)
class Bores:
    """Sizes of what is bored into a front's back."""

    knob: Mm
    cup: Mm


@dataclass(frozen=True, slots=True)
class View:
    """A front on the bench, with what is fixed to it, as it is being drawn."""

    drawing: Drawing
    scale: Scale
    front: Front
    fitting: Fitting | None
    bores: Bores
    unit: str
    figure: Px

    def seen(self, place: Point) -> tuple[Px, Px]:
        """Where a place on the front's face is drawn."""
        return self.scale.x(mirrored(self.front, place.x)), self.scale.y(place.y)

    def ring(self, diameter: Mm) -> Px:
        """The radius at which a bore is drawn: large enough to see, and clear of the next."""
        drawn = max(_LEAST_HOLE, self.scale.length(diameter) // 2)
        return drawn if diameter >= self.bores.cup else min(drawn, self.reach * 2 // 3)

    @property
    def reach(self) -> Px:
        """How far a bore's cross may go, so that it does not touch the next one's."""
        holes = () if self.fitting is None else self.fitting.holes
        places = [(self.scale.x(each.front_x), self.scale.y(each.front_y)) for each in holes]
        places += [(self.scale.x(each.x), self.scale.y(each.y)) for each in self.front.knobs]
        apart = [max(abs(one[0] - other[0]), abs(one[1] - other[1]))
                 for one, other in combinations(places, 2)]  # fmt: skip
        return max(min([_FARTHEST, *(each * 9 // 20 for each in apart)]), _LEAST_REACH)


def free(drawing: Drawing, area: Area, inside: Area) -> bool:
    """Whether a text may stand there: within, on no other text, across no line."""
    return drawing.free(area, inside) and drawing.uncrossed(area)


def cross(drawing: Drawing, x: Px, y: Px, reach: Px) -> None:
    """A bore's cross, whose place no text takes."""
    drawing.line("dimension", x - reach, y, x + reach, y)
    drawing.line("dimension", x, y - reach, x, y + reach)
    drawing.taken.append(Area(x, y, x, y).grown(reach))
