"""The one name under which a shop buys a thing, whichever job needs it.

An item of the shop's list goes by its code, so that its name may change without its offers
being lost; what comes in sizes, by its code and its size; all else by the words of the order.
"""

import re
from collections.abc import Mapping

from fronts.rules.bought_results import CALLED, BoughtFront
from fronts.rules.items import (
    BandItem,
    HandleItem,
    Hardware,
    HingeItem,
    LiftItem,
    SlideItem,
)
from fronts.rules.kinds import Unit
from fronts.rules.lengths import INCH, Mm, show, show_with_unit
from fronts.rules.results import Need

HINGE, SLIDE, HANDLE, LIFT, BAND = "hinge", "slide", "knob or pull", "lift", "edge band"
CALLED_BY: Mapping[type, str] = {
    HingeItem: HINGE, SlideItem: SLIDE, HandleItem: HANDLE, LiftItem: LIFT, BandItem: BAND,
}  # fmt: skip
TAPE, STOP = "foam tape", "glass stop"
SCREWS = "Screws"
SIXTEENTHS, SIXTY_FOURTHS = 16, 64
"""Slides that are made to inches are whole numbers of the first long, sheets and sticks of the
second (common practice, no source)."""
GROUPS: Mapping[str, str] = {
    "Hinges": r"hinge\b",
    "Slides": rf"{SLIDE} ",
    "Knobs and pulls": rf"{HANDLE}\b",
    "Lifts, stays and tip-outs": rf"(?:{LIFT}|flap stay|tip-out)\b",
    SCREWS: r".*\bscrew\b",
    "Edge bands": rf"{BAND} ",
    "Glass": r"glass\b",
    "Sheets and sticks": r"(?:sheet|stick) ",
    "Bought fronts": r"bought ",
    "Other": "",
}
"""The groups of a shop's list, in its order, with how the names in them begin."""


def name_of_need(need: Need) -> str:
    """What a line of an order is bought as."""
    if need.code is None:
        return need.item
    if need.length:
        return _sized(need.code, need.length)
    return f"{need.kind} {need.code}" if need.kind else need.item


def items_by_name(hardware: Hardware) -> dict[str, str]:
    """What each item of a list is called, by what it is bought as; slides in each length."""
    named: dict[str, str] = {}
    for hinge in hardware.hinges:
        named[f"{HINGE} {hinge.code}"] = hinge.name
        named |= {plate_name(plate, hinge.code): "" for plate in hinge.plates}
    for slide in hardware.slides:
        named |= {_sized(slide.code, slide_length(each)): slide.name for each in slide.lengths}
    named |= {f"{HANDLE} {item.code}": item.name for item in hardware.handles}
    named |= {f"{LIFT} {item.code}": item.name for item in hardware.lifts}
    return named | {f"{BAND} {item.code}": item.name for item in hardware.bands}


def plate_name(plate: Mm, code: str) -> str:
    """The plate of a hinge, as high as it is."""
    return f"hinge plate {show(plate, 'mm')} mm for {code}"


def slide_length(length: Mm) -> str:
    """How long a slide is in its name, whichever unit a job or a shop works in.

    In inches where it is made to inches, else in millimetres: `18 in`, `450 mm`.
    """
    return show_with_unit(length, _made_to(SIXTEENTHS, length))


def _made_to(parts: int, *lengths: Mm) -> Unit:
    """Inches where all the lengths are whole parts of one, else millimetres."""
    whole = all((length / INCH * parts).denominator == 1 for length in lengths)
    return "in" if whole else "mm"


def _sized(code: str, length: str) -> str:
    return f"{SLIDE} {code}, {length}"


def stock_name(
    material: str, thickness: Mm, length: Mm, width: Mm | None, *, is_stick: bool
) -> str:
    """A size of sheet, or of stick as wide as it is ripped: `sheet MDF 3/4 in, 96 × 48 in`.

    In inches where it is made to inches, else in millimetres, whichever unit a job works in.
    """
    across = [each for each in (length, width) if each is not None]
    unit = _made_to(SIXTY_FOURTHS, thickness, *across)
    sizes = " × ".join(show(each, unit) for each in across)
    kind = "stick" if is_stick else "sheet"
    return f"{kind} {material} {show_with_unit(thickness, unit)}, {sizes} {unit}"


def name_of_bought(front: BoughtFront) -> str:
    """Fronts that a maker asks one price for, whatever their size."""
    wood = (front.material, front.species)
    if front.material and front.species.startswith(front.material):
        wood = ("", front.species)  # `hard maple, hard maple, select` says one thing twice.
    told = (front.style, *wood, front.finish)
    words = [CALLED[front.kind], *filter(None, told)]
    return f"bought {', '.join(words)}"


def renamed(name: str, kind: type, was: str, now: str) -> str | None:
    """The name once an item of this kind has another code; None where it is none of its own."""
    called = CALLED_BY[kind]
    if kind is SlideItem:
        start = _sized(was, "")
        return _sized(now, name.removeprefix(start)) if name.startswith(start) else None
    if name == f"{called} {was}":
        return f"{called} {now}"
    plate = re.fullmatch(rf"(hinge plate \S+ mm for ){re.escape(was)}", name)
    return f"{plate[1]}{now}" if plate and kind is HingeItem else None


def group_of(name: str) -> str:
    """The group of a shop's list in which a name stands; screws are told by saying so."""
    if re.match(GROUPS[SCREWS], name):
        return SCREWS
    return next(group for group, start in GROUPS.items() if re.match(start, name))


def is_by_length(name: str) -> bool:
    """Whether it is needed, ordered and counted by length; else by pieces."""
    return name == STOP or name.startswith((f"{BAND} ", f"{TAPE} "))
