"""A box to be made as it is drawn: not to scale, its stock thicker, so that joints can be seen."""

from dataclasses import dataclass

from fronts.drawings.svg import Px
from fronts.rules.box_kinds import BoxKind
from fronts.rules.item_kinds import Joint

WIDE: Px = 200_00
LONG: Px = 200_00
LONG_FROM_ABOVE: Px = 74_00
STOCK: Px = 22_00
BOTTOM: Px = 12_00
GROOVE: Px = 11_00
RECESS: Px = 16_00
OPEN_RECESS: Px = 28_00
"""The recess of a box on under slides has its slide in it."""

_HIGH: Px = 70_00
_LOW: Px = 46_00
_TIER: Px = 59_00
_MOST_TIERS = 4
"""So many are drawn at most; the table says how many there are."""


@dataclass(frozen=True, slots=True)
class Pocket:
    """What a joint takes out of a side's end: so deep from its inner face, from `near` on to the
    stock's thickness, from its end inwards."""

    depth: Px
    near: Px


@dataclass(frozen=True, slots=True)
class BoxShapeDrawn:
    """Where everything lies on paper: heights upwards from the box's lower edge."""

    high: Px
    side_high: Px
    tiers: tuple[Px, ...]
    recess: Px
    pocket: Pocket
    open_behind: bool

    @property
    def back_from(self) -> Px:
        """The back's lower edge."""
        return self.recess + BOTTOM if self.open_behind else 0

    @property
    def bottom_to(self) -> Px:
        """How far the bottom goes towards the back."""
        return LONG if self.open_behind else LONG - STOCK + GROOVE


def box_shape(kind: BoxKind) -> BoxShapeDrawn:
    """The shape in which boxes of this kind are drawn."""
    tiers = min(1 + kind.shelves, _MOST_TIERS)
    pitch = _TIER if kind.low or kind.shelves else _HIGH
    high = _HIGH if tiers == 1 and not kind.low else max(tiers * pitch, _HIGH)
    return BoxShapeDrawn(
        high=high,
        side_high=_LOW if kind.low else min(high, pitch),
        tiers=tuple(pitch * tier for tier in range(tiers)),
        recess=OPEN_RECESS if kind.open_behind else RECESS,
        pocket=_POCKETS[kind.joint],
        open_behind=kind.open_behind,
    )


_POCKETS: dict[Joint, Pocket] = {
    "butt": Pocket(0, 0),
    "rabbet": Pocket(STOCK // 2, 0),
    "dado": Pocket(STOCK // 2, STOCK // 2),
    "through-dovetail": Pocket(STOCK, 0),
}
"""A dado takes a tongue at the inner half of the front's thickness, since front and back end
flush with the sides; dovetails are cut through a pin."""
