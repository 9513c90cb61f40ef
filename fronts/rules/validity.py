"""Which facts belong together: forms, services and files ask here, and pages show by it.

A fact that a way of closing has no use for is dropped (`tidied`) where somebody changes
their mind, and refused where a file states it.
"""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace
from typing import Any, TypeVar

from fronts.rules.facts import single_facts
from fronts.rules.item_faults import (
    band_faults,
    handle_faults,
    hinge_faults,
    lift_faults,
    slide_faults,
)
from fronts.rules.items import BandItem, HandleItem, HingeItem, LiftItem, SlideItem
from fronts.rules.job_facts import Stock
from fronts.rules.kinds import CLOSINGS, FRONT_BUILDS, FRONT_KINDS, ClosedBy, Closing
from fronts.rules.kitchen import CHOOSE, DoorOnHand, FrontFacts, Measured, Opening, Point
from fronts.rules.machine_facts import ANY_MACHINE, Machine, machine_faults
from fronts.rules.screws import A_THREAD, is_thread
from fronts.rules.standard_keys import Standard
from fronts.rules.thing_kinds import CORNERS
from fronts.rules.wall_facts import Wall


def _on_machine(closing: Closing) -> bool:
    return FRONT_KINDS[closing.front].on_machine


_BELONGS: Mapping[str, Callable[[Closing], bool]] = {
    "hinged": lambda closing: closing.hinged,
    "hinge": lambda closing: FRONT_KINDS[closing.front].swings,
    "own_height": lambda closing: closing.stack,
    "count": lambda closing: closing.stack,
    "box": lambda closing: closing.on_box,
    "box_to_make": lambda closing: closing.on_box,
    "room_behind": lambda closing: FRONT_KINDS[closing.front].tips_out,
    "machine": _on_machine,
    **{name: _on_machine for name, _, _ in single_facts(Machine, "machine_")},
}
"""Facts that only some ways of closing have a use for."""
T = TypeVar("T")
_FRAME = ("stile", "rail", "panel_thickness")


def belongs(fact: str, closing: Closing) -> bool:
    """Whether a way of closing has a use for this fact of an opening or its fronts."""
    asked = _BELONGS.get(fact)
    return asked is None or asked(closing)


def closings_with(fact: str) -> tuple[ClosedBy, ...]:
    """The ways of closing that have a use for this fact."""
    return tuple(name for name, closing in CLOSINGS.items() if belongs(fact, closing))


def builds_with(fact: str) -> tuple[str, ...]:
    """The builds of a door that have a use for this fact: only a frame has stiles."""
    return tuple(name for name, build in FRONT_BUILDS.items() if build.framed or fact not in _FRAME)


def tidied(opening: Opening) -> Opening:
    """The opening without what its way of closing has no use for; its boxes are left to ask."""
    fronts = tuple(tidied_front(front, opening.closing) for front in opening.fronts)
    return opening if fronts == opening.fronts else replace(opening, fronts=fronts)


def tidied_front(front: FrontFacts, closing: Closing) -> FrontFacts:
    """The front without what an opening that is closed so has no use for."""
    hinged = (front.hinged or "left") if closing.hinged else None
    machine = front.machine if belongs("machine", closing) else ANY_MACHINE
    room = front.room_behind if belongs("room_behind", closing) else None
    if (machine, room) != (front.machine, front.room_behind):
        front = replace(front, machine=machine, room_behind=room)
    if not closing.stack:
        return replace(front, hinged=hinged, own_height=None)
    if front.width is not None or front.height is None:
        return replace(front, hinged=hinged)
    # A height without a width is no front that exists: it is the front's part of the stack.
    own_height = front.height if front.own_height is None else front.own_height
    return replace(front, hinged=hinged, own_height=own_height, height=None)


def measured_faults(measured: Measured) -> dict[str, str]:
    """One diagonal says nothing without the other."""
    if (measured.diagonal_1 is None) == (measured.diagonal_2 is None):
        return {}
    missing = "diagonal_2" if measured.diagonal_2 is None else "diagonal_1"
    return {missing: "give both diagonals, or neither"}


def opening_faults(opening: Opening) -> dict[str, str]:
    """What an opening and its fronts can't be; by dotted paths, those of fronts under `fronts`."""
    faults = {f"measured.{path}": said for path, said in measured_faults(opening.measured).items()}
    for front in opening.fronts:
        if (front.box or front.box_to_make) and not opening.closing.on_box:
            faults["fronts"] = "no front that closes it so stands on a box"
        if front.box and front.box_to_make:
            faults["fronts"] = "a front stands on a box that exists or on one to be made, not both"
        for said in front_faults(front, opening.closing).values():
            faults["fronts"] = said
    return faults


def front_faults(front: FrontFacts, closing: Closing) -> dict[str, str]:
    """What a front of an opening that is closed so can't be; by the paths of its facts."""
    faults = {f"machine.{name}": said for name, said in machine_faults(front.machine).items()}
    if front.door_on_hand in (None, CHOOSE) or closing.single:
        return faults
    several = "a named door serves a single front; have doors chosen instead"
    return {"door_on_hand": several, **faults}


def door_faults(door: DoorOnHand) -> dict[str, str]:
    """What is in a door must lie on it, and its frame must leave a panel; by dotted paths."""
    return dict(_door_faults(door))


def _door_faults(door: DoorOnHand) -> Iterator[tuple[str, str]]:
    if door.label == CHOOSE:
        yield "label", f"“{CHOOSE}” has a meaning of its own; call this door otherwise"
    outside = "this place is outside the door"
    if door.knob_hole and door.knob_hole.x > door.width:
        yield "knob_hole.x", outside
    if door.knob_hole and door.knob_hole.y > door.height:
        yield "knob_hole.y", outside
    if any(not lies_on(door, bore) for bore in door.hinge_bores):
        yield "hinge_bores", "a bore lies outside the door"
    if door.stile and 2 * door.stile >= door.width:
        yield "stile", "enter less than half the door's width"
    if door.rail and 2 * door.rail >= door.height:
        yield "rail", "enter less than half the door's height"


def lies_on(door: DoorOnHand, place: Point) -> bool:
    """Whether a place is on the door."""
    return 0 <= place.x <= door.width and 0 <= place.y <= door.height


def wall_faults(wall: Wall) -> dict[str, str]:
    """A corner names the wall that it is made with."""
    return {
        f"{side}.wall": "name the wall that it meets in the corner"
        for side, end in (("left", wall.left), ("right", wall.right))
        if end is not None and end.corner in CORNERS and end.wall is None
    }


def faults_of(thing: Any) -> dict[str, str]:
    """What is wrong with a thing of a kitchen by itself; by dotted paths."""
    find = _FAULTS.get(type(thing))
    return {} if find is None else find(thing)


def tidied_thing(thing: T) -> T:
    """The thing without what it has no use for, being what it is."""
    tidy = _TIDIED.get(type(thing))
    return thing if tidy is None else tidy(thing)


_FAULTS: Mapping[type, Callable[[Any], dict[str, str]]] = {
    DoorOnHand: door_faults,
    Opening: opening_faults,
    HingeItem: hinge_faults,
    SlideItem: slide_faults,
    HandleItem: handle_faults,
    LiftItem: lift_faults,
    BandItem: band_faults,
    Wall: wall_faults,
}
_TIDIED: Mapping[type, Callable[[Any], Any]] = {Opening: tidied}


def stock_faults(stock: Stock) -> dict[str, str]:
    """A thread must be one that screws have."""
    if is_thread(stock.knob_thread):
        return {}
    return {"knob_thread": f"enter {A_THREAD}"}


def standard_faults(standard: Standard) -> dict[str, str]:
    """A level says how far fronts lap in one way only."""
    if standard.overlay is None or standard.reveal is None:
        return {}
    return {"reveal.between": "give the overlay or the reveal, not both"}
