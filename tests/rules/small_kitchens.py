"""The smallest kitchens that show a rule: one cabinet, one opening, and changes to them."""

from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import Any

from fronts.rules.box_facts import Box
from fronts.rules.fitting_results import Fitting
from fronts.rules.items import NO_ITEMS, Hardware
from fronts.rules.job_facts import JobFacts, Stock
from fronts.rules.kinds import ClosedBy, Hinged, Unit
from fronts.rules.kitchen import Cabinet, DoorOnHand, FrontFacts, Kitchen, Opening
from fronts.rules.lengths import Mm, read
from fronts.rules.practice import PRACTICE, Practice
from fronts.rules.results import Finding, Front
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Sides, Standard
from fronts.rules.wall_facts import Thing, Wall


def inch(text: str) -> Mm:
    """A length as the shop says it in inches."""
    return read(text, "in", signed=True)


def inches(*texts: str) -> tuple[Mm, ...]:
    """Several lengths."""
    return tuple(inch(each) for each in texts)


def all_round(text: str) -> Sides[Mm]:
    """The same on every side."""
    return Sides(*[inch(text)] * 4)


SIXTEENTH = inch("1/16")
HALF_LAP = Standard(overlay=all_round("1/2"))
STOCK = Stock(
    screw_lengths=inches("3/4", "1", "1 1/4", "1 1/2"),
    knob_screw_lengths=inches("1", "1 3/4"),
    knob_thread="8-32",
    knob_thread_depth=inch("1/2"),
    slide_lengths=inches("12", "14", "16", "18", "20", "22", "24"),
)
BOX = Box(
    width=inch("14"),
    height=inch("24"),
    depth=inch("21"),
    front_thickness=inch("3/4"),
    rise=inch("1/2"),
)


def opening(closed_by: ClosedBy = "door", **changes: Any) -> Opening:
    """An opening 15 × 27 1/2 in, an inch and a half from its cabinet's edges.

    What is said of its fronts (`front` of each, `hinged`, and `count`, `heights`, `boxes` from
    the top) goes to them.
    """
    plain = Opening(
        label="a",
        x=inch("1 1/2"),
        y=inch("1 1/2"),
        width=inch("15"),
        height=inch("27 1/2"),
        closed_by=closed_by,
    )
    return closed(plain, **changes)


def closed(
    of: Opening,
    *,
    front: FrontFacts | None = None,
    hinged: Hinged | None = None,
    count: int | None = None,
    heights: Sequence[Mm | None] = (),
    boxes: Sequence[Box | None] = (),
    **changes: Any,
) -> Opening:
    """The opening changed, with what is said of all its fronts and of one after the other."""
    of = replace(of, **changes)
    number = (count or max(len(of.fronts), 1)) if of.closing.stack else of.closing.fronts[0]
    held = (*of.fronts, *[FrontFacts()] * number)[:number]
    if front is not None:
        held = (front,) * number
    fronts = []
    for place, one in enumerate(held):
        if hinged or of.closing.hinged:
            one = replace(one, hinged=hinged or one.hinged or "left")
        if place < len(heights):
            one = replace(one, own_height=heights[place])
        if place < len(boxes):
            one = replace(one, box=boxes[place])
        fronts.append(one)
    return replace(of, fronts=tuple(fronts))


def cabinet(*openings: Opening, **changes: Any) -> Cabinet:
    """A face-frame base cabinet 18 × 30 1/2 × 24 in at the start of the north wall."""
    plain = Cabinet(
        label="B1",
        kind="base",
        build="face-frame",
        wall="North",
        x=inch("0"),
        y=inch("4"),
        width=inch("18"),
        height=inch("30 1/2"),
        depth=inch("24"),
        openings=openings,
    )
    return replace(plain, **changes)


def kitchen(
    *cabinets: Cabinet,
    standard: Standard = HALF_LAP,
    doors: Sequence[DoorOnHand] = (),
    stock: Stock = STOCK,
    practice: Practice = PRACTICE,
    unit: Unit = "in",
    step: Mm = SIXTEENTH,
    others: Sequence[Thing] = (),
    walls: Sequence[Wall] = (),
    hardware: Hardware = NO_ITEMS,
) -> Kitchen:
    """A kitchen of these cabinets, its fronts lapping 1/2 in all round."""
    return Kitchen(
        job=JobFacts(number="T-1", unit=unit, step=step),
        standard=standard,
        cabinets=cabinets,
        doors_on_hand=tuple(doors),
        stock=stock,
        practice=practice,
        others=tuple(others),
        walls=tuple(walls),
        hardware=hardware,
    )


def door(
    label: str = "D1", width: str = "16", height: str = "28 1/2", **changes: Any
) -> DoorOnHand:
    """A slab door on hand, as large as the small opening's front."""
    plain = DoorOnHand(label=label, width=inch(width), height=inch(height), thickness=inch("3/4"))
    return replace(plain, **changes)


def beside(first: Cabinet, **changes: Any) -> Cabinet:
    """The same cabinet again, close to its right."""
    return replace(first, **{"label": "B2", "x": first.left + first.width, **changes})


def replace_opening(of: Kitchen, label: str, change: Callable[[Opening], Opening]) -> Kitchen:
    """The kitchen with every opening of one cabinet changed."""
    return replace(of, cabinets=tuple(
        replace(one, openings=tuple(change(hole) for hole in one.openings))
        if one.label == label else one
        for one in of.cabinets
    ))  # fmt: skip


def findings_of(of: Kitchen, code: str) -> list[Finding]:
    """The findings with this code."""
    return [each for each in schedule(of).findings if each.code == code]


def codes_of(of: Kitchen) -> list[str]:
    """The codes of all findings."""
    return [each.code for each in schedule(of).findings]


def only_front(of: Kitchen) -> Front:
    """The one front of a kitchen."""
    (found,) = schedule(of).fronts
    return found


def only_fitting(of: Kitchen) -> Fitting:
    """The one fitting of a kitchen."""
    (found,) = schedule(of).fittings
    return found
