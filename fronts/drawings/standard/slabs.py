"""Edge bands: a slab with a band on each edge, and what is milled off before."""

from fronts.drawings.standard.figure import Figures
from fronts.drawings.standard.plate import Plate
from fronts.drawings.svg import Px
from fronts.rules.items import NO_BAND
from fronts.rules.lengths import Mm

_LEFT, _RIGHT, _TOP, _BOTTOM = 100_00, 300_00, 90_00, 260_00
_BAND: Px = 12_00
_MILLED = Mm(1)
"""Nothing is milled off as is usual: this much is drawn as long as `_BAND`."""


def slabs_drawing(figures: Figures) -> str:
    """The finished front in thick lines; dashed, the slab before it is milled."""
    plate = Plate(figures)
    left, right = _LEFT - _milled(plate, "left"), _RIGHT + _milled(plate, "right")
    top, bottom = _TOP - _milled(plate, "top"), _BOTTOM + _milled(plate, "bottom")
    plate.rect("front", _LEFT, _TOP, _RIGHT, _BOTTOM)
    plate.rect("hidden", left, top, right, bottom)
    bands = {
        "left": (_LEFT - _BAND, _TOP, _LEFT, _BOTTOM),
        "right": (_RIGHT, _TOP, _RIGHT + _BAND, _BOTTOM),
        "top": (_LEFT, _TOP - _BAND, _RIGHT, _TOP),
        "bottom": (_LEFT, _BOTTOM, _RIGHT, _BOTTOM + _BAND),
    }
    for side, area in bands.items():
        if figures[f"band_{side}"].value != NO_BAND:
            plate.rect("box", *area)
    plate.across("premill_left", left, _LEFT, 215_00, "milled")
    plate.across("premill_right", _RIGHT, right, 215_00, "milled")
    plate.upright("premill_top", top, _TOP, 270_00, "milled")
    plate.upright("premill_bottom", _BOTTOM, bottom, 270_00, "milled")
    plate.points("band_top", 200_00, 24_00, "top: {}")
    plate.points("band_left", 200_00, 46_00, "left: {}")
    plate.points("band_right", 200_00, 304_00, "right: {}")
    plate.points("band_bottom", 200_00, 326_00, "bottom: {}")
    return plate.svg("A slab front with its edge bands")


def _milled(plate: Plate, side: str) -> Px:
    value = plate.figures[f"premill_{side}"].value
    return plate.size(f"premill_{side}", _BAND, of=_MILLED) if value else 0
