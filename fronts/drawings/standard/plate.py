"""A drawing whose every dimension is a field's: named, with its value, marked by its number.

Each number moves its own part of the drawing, in proportion to what is usual, so that a drawing
is to no scale. Labels are placed once all lines are drawn: beside their dimension where there is
room, else led to.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from fronts.drawings.drawing import SCREEN, Anchor, Drawing, Kind, text_area
from fronts.drawings.geometry import Area, Place
from fronts.drawings.lettering import shortened
from fronts.drawings.section import Leaning, draw_cut_block
from fronts.drawings.standard.figure import Figure, Figures
from fronts.drawings.standard.label_places import Label, LabelPlace, label_places
from fronts.drawings.svg import Px, written
from fronts.rules.lengths import Mm

WIDE: Px = 400_00
SIZE: Px = 13_00
_NOTE: Px = 12_00
_TICK: Px = 3_50
_PAST: Px = 4_00
_LEAST: Px = 3_00
_AIR: Px = 2_00
_UNSAID = "–"
_MOST = Fraction(9, 4)
"""How many times its usual length a part is drawn at most."""


@dataclass(frozen=True, slots=True)
class _Mark:
    """What goes around the parts of one field's dimension."""

    figure: Figure

    @property
    def begins(self) -> str:
        how = "is-own" if self.figure.own else "is-usual"
        said = {"class": f"measure {how}", "data-of": str(self.figure.number)}
        return f"<g{written(said)}>"


class Plate:
    """Outlines first, then dimensions; the labels come of themselves."""

    def __init__(self, figures: Figures) -> None:
        self.figures = figures
        self.drawing = Drawing(SCREEN)
        self._labels: list[tuple[_Mark, Label]] = []
        self._lines: list[Area] = []

    def size(self, name: str, usual: Px, *, of: Mm | None = None, most: Px | None = None) -> Px:
        """How long a part is drawn that is `usual` long where its number is as usual, or `of`."""
        drawn = int(self.figures[name].times(of) * usual)
        return max(_LEAST, min(drawn, most or int(usual * _MOST)))

    def rect(self, kind: Kind, left: Px, top: Px, right: Px, bottom: Px) -> None:
        """An outline that labels keep off."""
        area = Area(left, top, right, bottom)
        self.drawing.rect(kind, area)
        self.drawing.framed(area)

    def cut(self, left: Px, top: Px, right: Px, bottom: Px, leaning: Leaning = 1) -> None:
        """Wood cut through."""
        area = Area(left, top, right, bottom)
        draw_cut_block(self.drawing, area, leaning)
        self.drawing.frames.append(area)

    def line(self, kind: Kind, x1: Px, y1: Px, x2: Px, y2: Px) -> None:
        """A line of an outline."""
        self.drawing.line(kind, x1, y1, x2, y2)
        self.drawing.frames.append(_around(x1, y1, x2, y2))

    def path(self, kind: Kind, points: Sequence[Place]) -> None:
        """An outline of any shape that labels keep off."""
        self.drawing.path(kind, points)
        for (x1, y1), (x2, y2) in pairwise(points):
            self.drawing.frames.append(_around(x1, y1, x2, y2))

    def circle(self, kind: Kind, x: Px, y: Px, radius: Px) -> None:
        """A hole or a head."""
        self.drawing.circle(kind, x, y, radius)
        self.drawing.frames.append(_around(x - radius, y - radius, x + radius, y + radius))

    def note(self, x: Px, y: Px, text: str, anchor: Anchor = "middle") -> None:
        """What a part is called."""
        self.drawing.text(x, y, text, _NOTE, anchor, kind="note")

    def across(self, name: str, x1: Px, x2: Px, y: Px, says: str, base: Px | None = None) -> None:
        """A level dimension at `y`; its extension lines begin at `base`."""
        x1, x2 = min(x1, x2), max(x1, x2)
        with_base = [] if base is None else [(x, base, x, _past(base, y)) for x in (x1, x2)]
        ticks = [(x - _TICK, y + _TICK, x + _TICK, y - _TICK) for x in (x1, x2)]
        out = 0 if x2 - x1 > 4 * _TICK else 3 * _TICK
        lines = [(x1 - out, y, x2 + out, y), *ticks, *with_base]
        self._dimension(name, says, (x1, y, x2, y), lines)

    def upright(self, name: str, y1: Px, y2: Px, x: Px, says: str, base: Px | None = None) -> None:
        """An upright dimension at `x`; its extension lines begin at `base`."""
        y1, y2 = min(y1, y2), max(y1, y2)
        with_base = [] if base is None else [(base, y, _past(base, x), y) for y in (y1, y2)]
        ticks = [(x - _TICK, y + _TICK, x + _TICK, y - _TICK) for y in (y1, y2)]
        out = 0 if y2 - y1 > 4 * _TICK else 3 * _TICK
        lines = [(x, y1 - out, x, y2 + out), *ticks, *with_base]
        self._dimension(name, says, (x, y1, x, y2), lines)

    def points(self, name: str, x: Px, y: Px, says: str) -> None:
        """What is no length of its own: said beside the place that it is about."""
        self._dimension(name, says, (x, y, x, y), [])

    def svg(self, title: str) -> str:
        """The drawing with its labels."""
        self.drawing.seen.append(Area(0, 0, WIDE, 0))
        for mark, label in self._labels:
            self._letter(mark, label, self._place(label))
        return self.drawing.svg(title, "standard")

    def _dimension(
        self, name: str, says: str, run: tuple[Px, Px, Px, Px],
        lines: list[tuple[Px, Px, Px, Px]],
    ) -> None:  # fmt: skip
        figure = self.figures[name]
        mark = _Mark(figure)
        self.drawing.parts.append(mark.begins)
        self.drawing.lines("dimension", lines)
        self.drawing.parts.append("</g>")
        self._lines += [_around(*line) for line in lines]
        said = _UNSAID if figure.value in (None, "", ()) else figure.text
        text = says.format(said) if "{}" in says else f"{says} {said}"
        short = shortened(text, SIZE, WIDE, bold=True)
        self._labels.append((mark, Label(short, SIZE, *run)))

    def _place(self, label: Label) -> LabelPlace:
        """The first place that nothing is in the way of, else one that meets no other text."""
        places = list(label_places(label, WIDE))
        return next(self._suited(places), places[0])

    def _suited(self, places: list[LabelPlace]) -> Iterator[LabelPlace]:
        free = [place for place in places if self.drawing.free(place.area)]
        clear = [one for one in free if not one.area.meets(self._lines)]
        yield from (place for place in clear if self.drawing.uncrossed(place.area.grown(_AIR)))
        yield from clear
        yield from free

    def _letter(self, mark: _Mark, label: Label, place: LabelPlace) -> None:
        drawing = self.drawing
        drawing.parts.append(mark.begins)
        if place.lead is not None:
            drawing.line("dimension", *place.lead)
            self._lines.append(_around(*place.lead))
        drawing.text(place.x, place.y, label.text, SIZE, place.anchor, bold=mark.figure.own)
        drawing.taken.append(text_area(place.x, place.y, label.text, SIZE, place.anchor, bold=True))
        drawing.parts.append("</g>")


def _past(base: Px, at: Px) -> Px:
    return at + (_PAST if at > base else -_PAST)


def _around(x1: Px, y1: Px, x2: Px, y2: Px) -> Area:
    """What a line takes, at least a hair wide, so that what crosses it meets it."""
    return Area(min(x1, x2) - 50, min(y1, y2) - 50, max(x1, x2) + 50, max(y1, y2) + 50)
