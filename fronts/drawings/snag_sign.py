"""The sign of open snags in a drawing: a flag with their number, where there is room."""

from fronts.drawings.drawing import Drawing, text_area
from fronts.drawings.geometry import Area
from fronts.drawings.lettering import text_width
from fronts.drawings.svg import Px
from fronts.rules.snags import OpenSnags

_FIGURE: Px = 11_00
_HALF: Px = 8_00
"""Half as high as the flag's pole."""
_CLOTH: Px = 9_00
_AIR: Px = 2_00


def draw_snag_sign(drawing: Drawing, inside: Area, snags: OpenSnags) -> None:
    """The sign in a free corner of the area, else in the first; none where it has no room."""
    width = _width(snags)
    lefts, tops = (inside.right - width, inside.left), (inside.top, inside.bottom - 2 * _HALF)
    if inside.width < width or inside.height < 2 * _HALF:
        return
    places = [(left, top + _HALF) for top in tops for left in lefts]
    free = (place for place in places if drawing.free(_area(*place, width)))
    snag_sign_at(drawing, *next(free, places[0]), snags)


def snag_sign_at(drawing: Drawing, x: Px, y: Px, snags: OpenSnags) -> None:
    """The sign with its pole at `x`, its middle at `y`."""
    drawing.line("front", x, y - _HALF, x, y + _HALF)
    drawing.solid([(x, y - _HALF), (x + _CLOTH, y - _HALF // 2), (x, y)])
    drawing.text(x + _CLOTH + _AIR, y, str(snags.count), _FIGURE, "start", bold=True, kind="snags")
    drawing.taken.append(_area(x, y, _width(snags)))


def beside_name(x: Px, y: Px, name: str, size: Px) -> tuple[Px, Px]:
    """Where the sign stands after a name whose middle is at `x`, `y`."""
    return text_area(x, y, name, size, bold=True).right + 3 * _AIR, y


def _width(snags: OpenSnags) -> Px:
    return _CLOTH + _AIR + text_width(str(snags.count), _FIGURE, bold=True)


def _area(x: Px, y: Px, width: Px) -> Area:
    return Area(x, y - _HALF, x + width, y + _HALF)
