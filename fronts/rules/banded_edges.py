"""Which edges of a slab are banded, with which band, and how large it is cut for that.

The house standard names a band for each side of a front. Where it says "plain", as is usual, an
edge is banded where the material's core would show at it, as `materials` says of each board,
with a band that is too thin to be reckoned with. Solid wood and panels in a frame have nothing
to hide (common practice, no source).
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from fronts.rules.items import EDGE_WORDS, PLAIN_BAND, BandItem
from fronts.rules.kinds import SIDES, Side
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.materials import Board, Wood, material_of
from fronts.rules.standard_keys import Settled, Sides

PLAIN = BandItem("", NOTHING, "plain")
"""A band that nobody named: of the slab's own look."""

USUAL_BANDS = (
    BandItem("BAND-04", Mm(4, 10), "thin band", Mm(22)),
    BandItem("BAND-1", Mm(1), "band", Mm(22)),
    BandItem("BAND-2", Mm(2), "thick band", Mm(22)),
)
"""Invented plain ones, for a shop that has entered none (common practice, no source)."""

ACROSS: tuple[Side, Side] = ("left", "right")
UPRIGHT: tuple[Side, Side] = ("top", "bottom")
_NONE: Sides[BandItem | None] = Sides(None, None, None, None)


@dataclass(frozen=True, slots=True)
class Banding:
    """A slab with bands on some of its sides, as it hangs; `width`, `height` with them on.

    `premill` is what is milled off a banded edge before its band goes on; `upright`: the
    part's length runs up the front.
    """

    width: Mm
    height: Mm
    bands: Sides[BandItem | None]
    premill: Sides[Mm]
    upright: bool

    @property
    def cut_width(self) -> Mm:
        return self.width - self._grows(ACROSS)

    @property
    def cut_height(self) -> Mm:
        return self.height - self._grows(UPRIGHT)

    def _grows(self, sides: Sequence[Side]) -> Mm:
        """What banding these edges adds, less what is milled off them first."""
        banded = ((self.bands[side], self.premill[side]) for side in sides)
        return sum((band.thickness - milled for band, milled in banded if band), NOTHING)

    def edges(self) -> Iterator[tuple[Side, BandItem, Mm]]:
        """Each banded edge with its band and its length once all bands are on."""
        for side in SIDES:
            band = self.bands[side]
            if band is not None:
                yield side, band, self.height if side in ACROSS else self.width


def banding_of(
    width: Mm,
    height: Mm,
    material: str,
    standard: Settled,
    listed: Sequence[BandItem],
    *,
    upright: bool,
) -> Banding | None:
    """How a slab of this size is banded with bands of the shop's list; None: on no edge."""
    on = _bands(material, standard, {band.code: band for band in listed})
    return None if on == _NONE else Banding(width, height, on, standard.premill, upright)


def _bands(material: str, standard: Settled, listed: dict[str, BandItem]) -> Sides[BandItem | None]:
    stuff = material_of(material)
    if isinstance(stuff, Wood):
        return _NONE
    if isinstance(stuff, Board) and stuff.banded:
        listed = {PLAIN_BAND: PLAIN, **listed}
    return Sides(*(listed.get(standard.band[side]) for side in SIDES))


def bands_named(standard: Settled) -> Iterator[str]:
    """The codes of the bands that a standard names, each once."""
    codes = dict.fromkeys(standard.band[side] for side in SIDES)
    yield from (code for code in codes if code not in EDGE_WORDS)
