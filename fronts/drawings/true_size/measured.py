"""Edges of the wood, centre marks and dimensions, as all templates have them."""

from fronts.drawings.true_size.outline import Figure, Outline, Ring
from fronts.rules.lengths import NOTHING, Mm

_HATCH, _PITCH = Mm(2), Mm(6)
_TICK = Mm(1)
_AIR = Mm(1)
_BEYOND = Mm(4)
_FIGURE_FROM_END = Mm(25)
CENTRE = Mm(1)
"""The ring about a centre where the awl goes."""


def level_edge(outline: Outline, y: Mm, left: Mm, right: Mm, *, out: int = -1) -> None:
    """An edge of the wood along a level line; hatched on the side that is off the wood."""
    outline.stroke("edge", left, y, right, y)
    for at in range(int((right - left) // _PITCH)):
        x = left + _PITCH * at + _AIR
        outline.stroke("dimension", x, y, x + _HATCH, y + out * _HATCH)


def upright_edge(outline: Outline, x: Mm, bottom: Mm, top: Mm, *, out: int = -1) -> None:
    """An edge of the wood along an upright line."""
    outline.stroke("edge", x, bottom, x, top)
    for at in range(int((top - bottom) // _PITCH)):
        y = bottom + _PITCH * at + _AIR
        outline.stroke("dimension", x, y, x + out * _HATCH, y + _HATCH)


def centre_mark(outline: Outline, x: Mm, y: Mm, diameter: Mm | None) -> None:
    """The hole as large as it is bored, a cross beyond it, and a small ring about its centre."""
    reach = (diameter or NOTHING) / 2 + _BEYOND
    outline.stroke("dimension", x - reach, y, x + reach, y)
    outline.stroke("dimension", x, y - reach, x, y + reach)
    outline.rings.append(Ring("dimension", x, y, CENTRE))
    if diameter is not None:
        outline.rings.append(Ring("cabinet", x, y, diameter))


def level_size(outline: Outline, y: Mm, start: Mm, end: Mm, text: str) -> None:
    """A dimension along a level line: obliques at both ends, its figure over it, near the end.

    Without a text its figure is said beside it already.
    """
    _ticked(outline, start, y, end, y)
    if not text:
        return
    at = Figure(_near_end(start, end), y, text)
    raised = y + at.span.height / 2 + _AIR / 2
    if at.span.width > abs(end - start):
        outline.figures.append(Figure(min(start, end) + _AIR, raised, text, "start"))
    else:
        outline.figures.append(Figure(at.x, raised, text))


def upright_size(outline: Outline, x: Mm, start: Mm, end: Mm, text: str) -> None:
    """A dimension along an upright line, its figure at the right of it, near the end."""
    _ticked(outline, x, start, x, end)
    _beside(outline, x, start, end, text)


def along_centres(outline: Outline, x: Mm, start: Mm, end: Mm, text: str) -> None:
    """The same on the holes' own line: nothing but the crosses' lines runs through a centre."""
    outline.stroke("dimension", x, start, x, end)
    _beside(outline, x, start, end, text)


def _beside(outline: Outline, x: Mm, start: Mm, end: Mm, text: str) -> None:
    outline.figures.append(Figure(x + _AIR * 2, _near_end(start, end), text, "start"))


def _ticked(outline: Outline, x1: Mm, y1: Mm, x2: Mm, y2: Mm) -> None:
    outline.stroke("dimension", x1, y1, x2, y2)
    for x, y in ((x1, y1), (x2, y2)):
        outline.stroke("cabinet", x - _TICK, y - _TICK, x + _TICK, y + _TICK)


def _near_end(start: Mm, end: Mm) -> Mm:
    """The middle of a short dimension; a long one may run on over several sheets."""
    half = min(abs(end - start) / 2, _FIGURE_FROM_END)
    return end - half if end > start else end + half
