"""A kitchen in which every single fact has a value of its own, and all of them fit each other."""

from dataclasses import replace
from typing import Any

from fronts.rules.facts import rows_of
from fronts.rules.job_facts import JobFacts, Stock
from fronts.rules.kitchen import (
    CHOOSE,
    Box,
    Cabinet,
    DoorOnHand,
    FrontFacts,
    Kitchen,
    KnobHole,
    Opening,
    Point,
)
from fronts.rules.practice import inches
from tests.facts.distinct import DOOR, Distinct


def whole_kitchen() -> Kitchen:
    """A stack with all that its fronts may have, and a door that is made from one on hand."""
    new = Distinct()
    bare = Kitchen(job=new.thing(JobFacts, unit="mm"), standard=new.standard("reveal"))
    return replace(bare, stock=new.thing(Stock), **_things(new))


def _things(new: Distinct) -> dict[str, Any]:
    """One thing of each kind; those whose facts must fit each other are named."""
    fitted = {Cabinet: _cabinet, DoorOnHand: _door}
    return {
        fact.name: (fitted[fact.kind](new) if fact.kind in fitted else new.thing(fact.kind),)
        for fact, _ in rows_of(Kitchen)
    }


def _cabinet(new: Distinct) -> Cabinet:
    """Large enough for its openings, whatever their sizes."""
    stack = new.thing(
        Opening, closed_by="drawers", fronts=tuple(_drawer_front(new) for _ in range(2))
    )
    hung = new.thing(FrontFacts, own_height=None, box=None, door_on_hand=DOOR)
    door = new.thing(
        Opening, label="b", x=inches(40), y=inches(50), closed_by="door", fronts=(hung,)
    )
    return new.thing(Cabinet, width=inches(100), height=inches(101), openings=(stack, door))


def _drawer_front(new: Distinct) -> FrontFacts:
    """What a named door is for is a single front; a hinge side is for a door."""
    return new.thing(FrontFacts, box=new.thing(Box), hinged=None, door_on_hand=CHOOSE)


def _door(new: Distinct) -> DoorOnHand:
    """Large enough for its frame, its bores and its knob hole."""
    bores = (Point(inches(1), inches(3)), Point(inches(2), inches(30)))
    door = new.thing(DoorOnHand, label=DOOR, width=inches(41), height=inches(61))
    hole = door.knob_hole or KnobHole(inches(1), inches(1))
    return replace(door, hinge_bores=bores, knob_hole=replace(hole, x=inches(5), y=inches(7)))
