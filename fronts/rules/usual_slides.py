"""The slides that a rule picks from: the shop's own, or plain invented ones where it has none.

The invented ones come in the lengths that the shop keeps and the load classes that it counts
with, the lightest first, so that the first that carries a box is the lowest class.
"""

from fronts.rules.items import SlideItem
from fronts.rules.kinds import SLIDES, SlideKind
from fronts.rules.kitchen import Kitchen

USUAL_KIND: SlideKind = "side"
"""What a shop makes its boxes for where neither it nor a list says (common practice, no source)."""
ANY_SLIDES = "slides, pair"
"""What is ordered where nobody knows the kind yet."""


def slides_of(kitchen: Kitchen, kind: SlideKind | None) -> tuple[SlideItem, ...]:
    """The slides of a kind in the shop's order; of no kind: plain ones of any."""
    own = kitchen.hardware.slides
    if own and kind is not None:
        return tuple(item for item in own if item.kind == kind)
    return usual_slides(kitchen, kind)


def first_kind(kitchen: Kitchen) -> SlideKind:
    """The kind that the shop prefers: that of the first item on its list."""
    own = kitchen.hardware.slides
    return own[0].kind if own else USUAL_KIND


def usual_slides(kitchen: Kitchen, kind: SlideKind | None) -> tuple[SlideItem, ...]:
    """Invented plain items of a kind, one a load class."""
    return tuple(
        SlideItem(
            code=f"{kind or 'slides'}-{number}", kind=kind or USUAL_KIND,
            lengths=kitchen.stock.slide_lengths, load_kg=carries,
            name=SLIDES[kind].item if kind else ANY_SLIDES,
        )
        for number, carries in enumerate(kitchen.practice.slide_classes, 1)
    )  # fmt: skip
