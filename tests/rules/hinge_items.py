"""Invented hinges that tests choose from."""

from typing import Any

from fronts.rules.items import Adjustment, HingeItem, Span
from fronts.rules.lengths import Mm
from fronts.rules.practice import PRACTICE
from fronts.rules.usual_hinges import Hinge, settled_hinge
from tests.rules.small_kitchens import inch, inches


def mm(text: str) -> Mm:
    """A length as it reads in millimetres."""
    return inch(f"{text} mm")


def adjusting(side: str) -> Adjustment:
    """So far to the side, each way."""
    return Adjustment(side=mm(side))


def on_plate(code: str = "PLATE", **changes: Any) -> HingeItem:
    """Fixed distance 11 mm, plates 0, 2, 3 and 6, B 3 to 8 mm, usually 5; any cabinet."""
    said: dict[str, Any] = {
        "fixed_distance": mm("11"), "plates": (mm("0"), mm("2"), mm("3"), mm("6")),
        "bore": Span(mm("3"), mm("8")), "usual_bore": mm("5"), "adjust": adjusting("3"),
        **changes,
    }  # fmt: skip
    return HingeItem(code, "overlay", **said)


def listed(code: str = "LIST", **changes: Any) -> HingeItem:
    """For face frames: 1/4, 3/8, 1/2 and 5/8 in at B 3 mm."""
    said: dict[str, Any] = {
        "frame": "face-frame", "overlays": inches("1/4", "3/8", "1/2", "5/8"),
        "usual_bore": mm("3"), "adjust": adjusting("2"), **changes,
    }  # fmt: skip
    return HingeItem(code, "overlay", **said)


def ranging(code: str = "RANGE", **changes: Any) -> HingeItem:
    """1/8 to 1 in at B 3.5 mm, on any cabinet."""
    said: dict[str, Any] = {
        "overlay_span": Span(inch("1/8"), inch("1")), "usual_bore": mm("3.5"),
        "adjust": adjusting("2"), **changes,
    }  # fmt: skip
    return HingeItem(code, "overlay", **said)


def inset(code: str = "INSET", **changes: Any) -> HingeItem:
    """Gaps of 1/16 to 1/8 in at B 4 mm, on any cabinet."""
    said: dict[str, Any] = {
        "gap_span": Span(inch("1/16"), inch("1/8")), "usual_bore": mm("4"),
        "adjust": adjusting("2"), **changes,
    }  # fmt: skip
    return HingeItem(code, "inset", **said)


def settled(*items: HingeItem) -> tuple[Hinge, ...]:
    """The items with the shop's usual numbers where they leave something out."""
    return tuple(settled_hinge(item, PRACTICE) for item in items)
