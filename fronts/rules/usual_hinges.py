"""Hinges with everything that the rules need of them: the shop's, or plain invented ones.

What an item leaves out is as the shop's own numbers say. A shop that has entered no hinges
works with three invented ones (common practice, no source): one on a plate for frameless
cabinets, and one each that laps and lies inset as far as the shop's numbers say.
"""

from dataclasses import dataclass
from fractions import Fraction

from fronts.rules.items import HingeItem, Span
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.practice import Practice

FIXED_DISTANCE = Mm(11)
PLATES = (NOTHING, Mm(3), Mm(6), Mm(9))
LESS_BORE, MORE_BORE = Mm(2), Mm(3)
"""Of the invented hinge on a plate: overlays of 5 to 19 mm about a usual B of 5 mm."""


@dataclass(frozen=True, slots=True)
class Hinge:
    """A hinge of the shop's list with nothing left open.

    `side` and `height` are how far its screws move the door, each way.
    """

    item: HingeItem
    plates: tuple[Mm, ...]
    bore: Span
    usual_bore: Mm
    side: Mm
    height: Mm
    screws: int


def hinges_of(items: tuple[HingeItem, ...], practice: Practice) -> tuple[Hinge, ...]:
    """The shop's hinges in its order of preference; the invented ones where it has entered none."""
    return tuple(settled_hinge(item, practice) for item in items or usual_hinges(practice))


def usual_hinges(practice: Practice) -> tuple[HingeItem, ...]:
    """Plain invented hinges for a shop that has entered none, with its own numbers."""
    usual, cup = _usual_bore(practice), practice.cup_diameter
    return (
        HingeItem(
            "H-SIDE", "overlay", "on a plate", frame="frameless", fixed_distance=FIXED_DISTANCE,
            plates=PLATES, bore=Span(usual - LESS_BORE, usual + MORE_BORE), usual_bore=usual,
            cup_diameter=cup,
        ),
        HingeItem(
            "H-LAP", "overlay", "overlay", overlay_span=Span(NOTHING, practice.hinge_overlay_most),
            usual_bore=usual, cup_diameter=cup,
        ),
        HingeItem(
            "H-INSET", "inset", "inset", gap_span=Span(NOTHING, practice.hinge_inset_most),
            usual_bore=usual, cup_diameter=cup,
        ),
    )  # fmt: skip


def settled_hinge(item: HingeItem, practice: Practice) -> Hinge:
    """The item with the shop's numbers where it leaves something out."""
    usual, adjust = _usual_bore(practice), item.adjust
    if item.usual_bore is not None:
        usual = item.usual_bore
    elif item.bore is not None:
        usual = item.bore.nearest(usual)
    return Hinge(
        item=item,
        plates=item.plates or (NOTHING,),
        bore=item.bore or Span(usual, usual),
        usual_bore=usual,
        side=practice.hinge_adjust_side if adjust.side is None else adjust.side,
        height=practice.hinge_adjust_height if adjust.height is None else adjust.height,
        screws=int(practice.hinge_screws) if item.screws is None else item.screws,
    )


def _usual_bore(practice: Practice) -> Fraction:
    return practice.cup_from_edge - practice.cup_diameter / 2
