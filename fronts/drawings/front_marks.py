"""One front seen from before it: outline, hand, knobs, name, and the frame of a stop."""

from collections.abc import Iterator
from dataclasses import dataclass

from fronts.drawings.drawing import Drawing, text_area
from fronts.drawings.geometry import Area
from fronts.drawings.lettering import line_height, shortened
from fronts.drawings.scale import Scale
from fronts.drawings.svg import Px
from fronts.rules.front_states import FrontState
from fronts.rules.handles import Handle
from fronts.rules.kinds import FRONT_KINDS, name_of
from fronts.rules.lengths import Mm, show
from fronts.rules.results import Front

_STOP_BAND: Px = 6_00
_HATCH_PITCH: Px = 5_00
_SIGN: Px = 8_00
KNOB = Mm(9)
"""Radius at which a knob is drawn where nobody says."""

LEAST_KNOB: Px = 2_20
_ASIDE = 10
"""A door's name stands a tenth of its width off the middle, away from its hand's lines."""


@dataclass(frozen=True, slots=True)
class Letters:
    """Sizes of a drawing's lettering: a front's name, and the figures under it."""

    name: Px = 13_00
    figure: Px = 11_00


SCREEN_LETTERS = Letters()


def front_area(scale: Scale, front: Front) -> Area:
    return scale.area(front.x, front.y, front.width, front.height)


def draw_front(
    drawing: Drawing, scale: Scale, front: Front, *, stopped: bool, target: bool = False
) -> None:
    """Outline, knobs and pulls, and the frame of a front that must not be cut."""
    area = front_area(scale, front)
    if stopped:
        _stop_frame(drawing, area)
    drawing.rect("stop" if stopped else "front", area, target=target)
    for handle in front.handles:
        _handle(drawing, scale, front, handle)


def _handle(drawing: Drawing, scale: Scale, front: Front, handle: Handle) -> None:
    """A knob as a circle; a pull as a bar between the circles of its screws."""
    radius = max(LEAST_KNOB, scale.length(KNOB))
    xs = sorted(scale.x(front.x + hole.x) for hole in handle.holes)
    ys = sorted(scale.y(front.y + hole.y) for hole in handle.holes)
    whole = Area(xs[0], ys[0], xs[-1], ys[-1])
    if handle.screws > 1:
        drawing.rect("cabinet", whole.grown(radius // 2))
    for hole in handle.holes:
        x, y = scale.x(front.x + hole.x), scale.y(front.y + hole.y)
        drawing.circle("cabinet", x, y, radius)
    drawing.taken.append(whole.grown(radius))


def draw_state(drawing: Drawing, area: Area, state: FrontState) -> None:
    """How the front stands, as a sign in its upper right corner, where there is room."""
    if area.width < 3 * _SIGN or area.height < 2 * _SIGN:
        return
    x, y = area.right - _SIGN - 2_00, area.top + _SIGN + 2_00
    drawing.text(x, y, state.sign, 15_00, bold=True, kind=f"state-{state.word}")
    drawing.taken.append(Area(x, y, x, y).grown(_SIGN))


def name_front(
    drawing: Drawing, area: Area, front: Front, *, unit: str, letters: Letters, stopped: bool
) -> bool:
    """The front's label, and its size below it; whether there was room for that."""
    inside = area.grown(-(_STOP_BAND + 1_00 if stopped else 2_00))
    if stopped:
        _stop_sign(drawing, inside)
    ways = [(True, lines) for lines in _with_its_size(front, unit, letters)]
    ways += [(False, lines) for lines in _by_its_name(front, letters, inside)]
    for sized, lines in ways:
        for x, y in _places(area, front):
            if _lettered(drawing, inside, x, y, lines):
                return sized
    return False


def _places(area: Area, front: Front) -> Iterator[tuple[Px, Px]]:
    """Where a name may stand: in the middle; else beside, under or over what is there."""
    x, y = area.middle
    yield x + _aside(area, front), y
    yield x, y
    for across in (-area.width // 4, area.width // 4):
        yield x + across, y
    for down in (area.height // 4, -area.height // 4):
        yield x, y + down


def _aside(area: Area, front: Front) -> Px:
    if front.hinged == "left":
        return area.width // _ASIDE
    return -area.width // _ASIDE if front.hinged == "right" else 0


def _with_its_size(
    front: Front, unit: str, letters: Letters
) -> Iterator[list[tuple[str, Px, bool]]]:
    wide, high = show(front.width, unit), show(front.height, unit)
    name = (front.label, letters.name, True)
    kind = [(name_of(front.kind), letters.figure, False)] if FRONT_KINDS[front.kind].named else []
    both = (f"{wide} × {high}", letters.figure, False)
    folded = [(wide, letters.figure, False), (f"× {high}", letters.figure, False)]
    other = [(f"{wide} ×", letters.figure, False), (high, letters.figure, False)]
    yield [name, both, *kind]
    yield [name, both]
    yield [name, *folded]
    yield [name, *other]
    yield [(front.label, letters.figure, True), *folded]
    yield [(f"{front.label}: {wide} × {high}", letters.figure, False)]


def _by_its_name(
    front: Front, letters: Letters, inside: Area
) -> Iterator[list[tuple[str, Px, bool]]]:
    yield [(front.label, letters.name, True)]
    smaller = letters.figure * 85 // 100
    yield [(front.label, letters.figure, True)]
    yield [(front.label, smaller, True)]
    own = front.label.removeprefix(f"{front.cabinet}.")
    yield [(own, smaller, True)]
    short = shortened(own, smaller, inside.width, bold=True)
    if short:
        yield [(short, smaller, True)]


def _lettered(
    drawing: Drawing, inside: Area, x: Px, y: Px, lines: list[tuple[str, Px, bool]]
) -> bool:
    height = sum(line_height(size) for _, size, _ in lines)
    places: list[tuple[Px, Area]] = []
    aired: list[Area] = []
    top = y - height // 2
    for text, size, bold in lines:
        at = top + line_height(size) // 2
        area = text_area(x, at, text, size, bold=bold)
        air = _aired(area, size)
        if not inside.holds(air):
            return False
        places.append((at, area))
        aired.append(air)
        top += line_height(size)
    if not all(drawing.free(area) and drawing.uncrossed(area) for _, area in places):
        return False
    for (at, _), (text, size, bold) in zip(places, lines, strict=True):
        drawing.text(x, at, text, size, bold=bold, kind="name" if bold else "size")
    drawing.taken += aired
    return True


def _aired(area: Area, size: Px) -> Area:
    """A text's place with room beside it: a screen's letters may be wider than a sheet's."""
    air = size // 3 + area.width // 16
    return Area(area.left - air, area.top, area.right + air, area.bottom)


def draw_hand(drawing: Drawing, scale: Scale, front: Front) -> None:
    """A door's hand: dashed lines that meet in the middle of the hinge side, open at texts."""
    area = front_area(scale, front)
    x, y = area.middle
    corners = {
        "left": ((area.right, area.top), (area.left, y), (area.right, area.bottom)),
        "right": ((area.left, area.top), (area.right, y), (area.left, area.bottom)),
        "top": ((area.left, area.bottom), (x, area.top), (area.right, area.bottom)),
        "bottom": ((area.left, area.top), (x, area.bottom), (area.right, area.top)),
    }
    if front.hinged:
        start, middle, end = corners[front.hinged]
        drawing.broken_line("hand", *middle, *start)
        drawing.broken_line("hand", *middle, *end)


def _stop_frame(drawing: Drawing, area: Area) -> None:
    inner = area.grown(-_STOP_BAND)
    if inner.width <= 0 or inner.height <= 0:
        strips = [area]
    else:
        strips = [
            Area(area.left, area.top, area.right, inner.top),
            Area(area.left, inner.bottom, area.right, area.bottom),
            Area(area.left, inner.top, inner.left, inner.bottom),
            Area(inner.right, inner.top, area.right, inner.bottom),
        ]
    drawing.lines("hatch", (line for strip in strips for line in hatching(strip, _HATCH_PITCH)))


def hatching(area: Area, pitch: Px) -> Iterator[tuple[Px, Px, Px, Px]]:
    """Lines at 45° that fill the area, each ended at its edges."""
    first = -(-(area.left + area.top) // pitch) * pitch
    for total in range(first, area.right + area.bottom, pitch):
        x1, x2 = max(area.left, total - area.bottom), min(area.right, total - area.top)
        if x2 > x1:
            yield x1, total - x1, x2, total - x2


def _stop_sign(drawing: Drawing, inside: Area) -> None:
    """An eight-cornered sign with its `!`, in the upper left corner, where there is room."""
    if inside.width < 2 * _SIGN or inside.height < 2 * _SIGN:
        return
    x, y, far, near = inside.left + _SIGN, inside.top + _SIGN, _SIGN - 50, _SIGN * 2 // 5
    corners = [
        (near, far), (far, near), (far, -near), (near, -far),
        (-near, -far), (-far, -near), (-far, near), (-near, far), (near, far),
    ]  # fmt: skip
    drawing.path("front", [(x + right, y + down) for right, down in corners])
    drawing.text(x, y, "!", 12_00, bold=True, kind="sign")
    drawing.taken.append(Area(x, y, x, y).grown(_SIGN))
