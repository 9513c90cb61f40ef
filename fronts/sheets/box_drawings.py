"""The drawings of a kind of box: two sections, from above, and a side as it lies on the bench."""

from django.utils.safestring import SafeString

from fronts.drawings.box_plan import from_above, side_from_inside
from fronts.drawings.box_sections import across, along
from fronts.drawings.box_shape import box_shape
from fronts.figures.box_letters import drawn_letters
from fronts.figures.box_steps import tongue
from fronts.rules.box_kinds import BoxKind
from fronts.rules.lengths import show, write
from fronts.sheets.fitting_drawings import Drawn

_ACROSS, _ALONG, _HALF = 392_00, 296_00, 344_00
"""Room for each drawing; a section across has more dimensions beside it."""


def box_drawings(kind: BoxKind, unit: str) -> tuple[tuple[Drawn, ...], ...]:
    """Two rows of two, with letters or, where all boxes are alike, with letters and figures."""
    shape, says, stock = box_shape(kind), drawn_letters(kind, unit), _stock(kind, unit)
    row = [
        ("Cut across, seen from the front", across(shape, kind.slide, says, stock), _ACROSS),
        ("Cut along, its front at the left", along(shape, kind.slide, says), _ALONG),
        ("From above, its front below", from_above(shape, says, stock), _HALF),
        ("A left side from inside; the right one mirrored",
         side_from_inside(shape, says, stock, _cuts(kind, unit)), _HALF),
    ]  # fmt: skip
    drawn = [Drawn(heading, SafeString(svg), room) for heading, svg, room in row]
    return tuple(drawn[:2]), tuple(drawn[2:])


def _stock(kind: BoxKind, unit: str) -> dict[str, str]:
    """The figures that all sizes share."""
    stock = kind.stock
    return {
        "side": show(stock.side, unit),
        "bottom": show(stock.bottom, unit),
        "recess": write(kind.needs.recess, unit),
        "joint": show(stock.joint, unit),
        "near": show(stock.side - tongue(kind), unit),
        "tongue": show(tongue(kind), unit),
    }


def _cuts(kind: BoxKind, unit: str) -> list[str]:
    cuts = [f"groove {show(kind.stock.groove, unit)} deep"]
    deep = show(kind.stock.joint, unit)
    joint = {"rabbet": f"rabbets {deep} deep", "dado": f"dados {deep} deep",
             "through-dovetail": "tails at both ends", "butt": ""}[kind.joint]  # fmt: skip
    return [joint, *cuts] if joint else cuts
