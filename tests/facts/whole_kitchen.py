"""A kitchen in which every single fact has a value of its own, and all of them fit each other."""

from dataclasses import replace
from fractions import Fraction
from typing import Any

from fronts.rules.box_facts import Box, BoxesMadeOf, BoxToMake
from fronts.rules.facts import rows_of
from fronts.rules.items import HandleItem, Hardware, HingeItem, LiftItem, Span
from fronts.rules.job_facts import JobFacts, Stock
from fronts.rules.kitchen import (
    CHOOSE,
    Cabinet,
    DoorOnHand,
    FrontFacts,
    Kitchen,
    KnobHole,
    Opening,
    Point,
)
from fronts.rules.machine_facts import ANY_MACHINE
from fronts.rules.practice import inches
from fronts.rules.wall_facts import Thing, Wall, WallEnd
from tests.facts.distinct import DOOR, Distinct


def whole_kitchen() -> Kitchen:
    """A stack with all that its fronts may have, and a door that is made from one on hand."""
    new = Distinct()
    bare = Kitchen(job=new.thing(JobFacts, unit="mm"), standard=new.standard("reveal"))
    return replace(
        bare,
        stock=new.thing(Stock),
        hardware=whole_hardware(new),
        boxes_made_of=new.thing(BoxesMadeOf),
        **_things(new),
    )


def whole_hardware(new: Distinct) -> Hardware:
    """Items of every kind; a hinge says in one way what it makes, so there is one for each."""
    plain = {
        "overlays": (), "overlay_span": None, "gaps": (), "gap_span": None, "fixed_distance": None,
        "plates": (), "bore": None, "usual_bore": None,
    }  # fmt: skip
    listed = new.thing(HingeItem, code=HINGE, mount="overlay", **plain)
    span, bore = Span(inches(1, 4), inches(3, 4)), Span(inches(1, 8), inches(1, 4))
    return new.thing(
        Hardware,
        hinges=(
            replace(listed, overlays=(inches(3, 8), inches(1, 2))),
            replace(new.thing(HingeItem, mount="overlay", **plain), overlay_span=span),
            replace(new.thing(HingeItem, mount="inset", **plain), gaps=(inches(3, 32),)),
            replace(new.thing(HingeItem, mount="inset", **plain), gap_span=span),
            replace(
                new.thing(HingeItem, mount="overlay", **plain),
                fixed_distance=-inches(7, 16), plates=(inches(1, 8), inches(3, 16)), bore=bore,
                usual_bore=inches(3, 16),
            ),
        ),
        handles=(new.thing(HandleItem, code=HANDLE), new.thing(HandleItem)),
        lifts=(
            new.thing(LiftItem, least=Fraction(1, 2), most=Fraction(3)),
            new.thing(LiftItem, least=Fraction(5, 2), most=Fraction(5)),
        ),
    )  # fmt: skip


HINGE, HANDLE, WALL, BESIDE = "H-1", "K-1", "North", "B1"
"""What other facts name."""


def _things(new: Distinct) -> dict[str, Any]:
    """One thing of each kind; those whose facts must fit each other are named."""
    fitted = {Cabinet: _cabinet, DoorOnHand: _door, Thing: _thing, Wall: _wall}
    return {
        fact.name: (fitted[fact.kind](new) if fact.kind in fitted else new.thing(fact.kind),)
        for fact, _ in rows_of(Kitchen)
    }


def _cabinet(new: Distinct) -> Cabinet:
    """Large enough for its openings, whatever their sizes."""
    stack = new.thing(
        Opening,
        closed_by="drawers",
        fronts=(
            _drawer_front(new, box=new.thing(Box), box_to_make=None),
            _drawer_front(new, box=None, box_to_make=new.thing(BoxToMake)),
        ),
    )
    hung = _single_front(new, door_on_hand=DOOR, hinge=HINGE, machine=ANY_MACHINE, room_behind=None)
    door = new.thing(
        Opening, label="b", x=inches(40), y=inches(50), closed_by="door", fronts=(hung,)
    )
    panel = _single_front(new, door_on_hand=None, hinged=None, hinge=None, room_behind=None)
    machine = new.thing(
        Opening, label="c", x=inches(60), y=inches(50), closed_by="appliance-panel", fronts=(panel,)
    )
    tipping = _single_front(new, door_on_hand=None, hinged=None, hinge=None, machine=ANY_MACHINE)
    sink = new.thing(
        Opening, label="d", x=inches(80), y=inches(50), closed_by="tip-out", fronts=(tipping,)
    )
    return new.thing(
        Cabinet,
        label=BESIDE,
        wall=WALL,
        width=inches(100),
        height=inches(101),
        openings=(stack, door, machine, sink),
    )


def _drawer_front(new: Distinct, **stands_on: Any) -> FrontFacts:
    """What a named door is for is a single front; a hinge side is for a door."""
    return new.thing(
        FrontFacts, hinged=None, hinge=None, handle=HANDLE, door_on_hand=CHOOSE,
        machine=ANY_MACHINE, room_behind=None, **stands_on,
    )  # fmt: skip


def _single_front(new: Distinct, **said: Any) -> FrontFacts:
    """It stands on no box, and shares its opening with none."""
    return new.thing(FrontFacts, own_height=None, box=None, box_to_make=None, handle=HANDLE, **said)


def _thing(new: Distinct) -> Thing:
    """On the wall of the cabinet, after it."""
    return new.thing(Thing, wall=WALL, after=BESIDE)


def _wall(new: Distinct) -> Wall:
    """It meets itself in its corners, for want of another."""
    ends = {end: new.thing(WallEnd, wall=WALL) for end in ("left", "right")}
    return new.thing(Wall, label=WALL, **ends)


def _door(new: Distinct) -> DoorOnHand:
    """Large enough for its frame, its bores and its knob hole."""
    bores = (Point(inches(1), inches(3)), Point(inches(2), inches(30)))
    door = new.thing(DoorOnHand, label=DOOR, width=inches(41), height=inches(61))
    hole = door.knob_hole or KnobHole(inches(1), inches(1))
    return replace(door, hinge_bores=bores, knob_hole=replace(hole, x=inches(5), y=inches(7)))
