"""Kitchens whose shop keeps a list of hardware, with boxes to be made, glass, knobs and pulls."""

from dataclasses import replace
from fractions import Fraction
from typing import get_args

from hypothesis import strategies as st
from hypothesis.strategies import DrawFn

from fronts.rules.box_facts import BoxesMadeOf, BoxToMake
from fronts.rules.item_kinds import HandleWay
from fronts.rules.items import (
    Adjustment,
    HandleItem,
    Hardware,
    HingeItem,
    LiftItem,
    SlideItem,
    Span,
)
from fronts.rules.kinds import SlideKind, Unit
from fronts.rules.kitchen import FrontFacts, Kitchen, Opening
from fronts.rules.lengths import Mm
from fronts.rules.validity import belongs
from tests.strategies import kitchens
from tests.strategies_of_shops import lengths

HINGES = (
    HingeItem("H-P", "overlay", fixed_distance=Mm(11), plates=(Mm(0), Mm(3), Mm(9)),
              bore=Span(Mm(3), Mm(7)), usual_bore=Mm(5), adjust=Adjustment(side=Mm(2))),
    HingeItem("H-L", "overlay", frame="face-frame", overlays=(Mm(6), Mm(12)), screws=2),
    HingeItem("H-S", "overlay", overlay_span=Span(Mm(0), Mm(20)), most_door_thickness=Mm(20)),
    HingeItem("H-I", "inset", gap_span=Span(Mm(1), Mm(6)), cup_diameter=Mm(26)),
)  # fmt: skip


@st.composite
def equipped_kitchens(draw: DrawFn, *, most_cabinets: int = 3) -> Kitchen:
    """Plausible kitchens of a shop that has entered what it buys."""
    of = draw(kitchens(most_cabinets=most_cabinets))
    items = draw(hardware(of.job.unit))
    cabinets = tuple(
        replace(one, openings=tuple(draw(fitted_out(hole, items)) for hole in one.openings))
        for one in of.cabinets
    )
    made = draw(boxes_made_of(of.job.unit))
    return replace(of, cabinets=cabinets, hardware=items, boxes_made_of=made)


@st.composite
def hardware(draw: DrawFn, unit: Unit) -> Hardware:
    """A list in some order, with or without something of each kind."""
    least, more = sorted((draw(st.integers(0, 4)), draw(st.integers(0, 40))))
    return Hardware(
        hinges=tuple(draw(st.lists(st.sampled_from(HINGES), unique=True))),
        slides=tuple(
            replace(draw(slides(unit, kind)), code=f"S-{kind}")
            for kind in draw(st.lists(st.sampled_from(get_args(SlideKind)), unique=True))
        ),
        handles=tuple(
            replace(draw(handles(unit)), code=f"K-{index}")
            for index in range(draw(st.integers(0, 2)))
        ),
        lifts=tuple(
            draw(st.lists(st.just(LiftItem("L", Fraction(least), Fraction(more))), max_size=1))
        ),
    )


@st.composite
def slides(draw: DrawFn, unit: Unit, kind: SlideKind) -> SlideItem:
    """A slide that says all that it asks of a box."""
    return SlideItem(
        code="S",
        kind=kind,
        lengths=tuple(draw(st.lists(lengths(unit, 250, 550), min_size=1, max_size=4))),
        load_kg=Fraction(draw(st.integers(5, 60))),
        clearance=draw(lengths(unit, 5, 15)) if kind != "under" else None,
        inside_clearance=draw(lengths(unit, 40, 45)) if kind == "under" else None,
        tolerance=draw(lengths(unit, 0, 2)),
        below=draw(lengths(unit, 6, 15)),
        above=draw(lengths(unit, 6, 15)),
        height=draw(st.none() | lengths(unit, 10, 15)) if kind == "bottom" else None,
        recess=draw(lengths(unit, 10, 15)),
        most_side=draw(st.none() | lengths(unit, 12, 19)),
    )


@st.composite
def handles(draw: DrawFn, unit: Unit) -> HandleItem:
    """A knob, or a pull that lies either way."""
    ways = st.sampled_from(get_args(HandleWay))
    return HandleItem(
        code="K",
        centres=draw(st.none() | lengths(unit, 64, 320)),
        thread=draw(st.sampled_from((None, "M4", "8-32"))),
        projection=draw(st.none() | lengths(unit, 15, 45)),
        door=draw(ways),
        drawer=draw(ways),
    )


@st.composite
def boxes_made_of(draw: DrawFn, unit: Unit) -> BoxesMadeOf:
    """How a shop makes its boxes."""
    return BoxesMadeOf(
        side=draw(lengths(unit, 10, 18)),
        bottom=draw(lengths(unit, 4, 10)),
        groove=draw(lengths(unit, 4, 7)),
        joint=draw(st.sampled_from(("butt", "rabbet", "dado", "through-dovetail"))),
        joint_depth=draw(st.none() | lengths(unit, 4, 7)),
        heights=tuple(draw(st.lists(lengths(unit, 60, 200), max_size=3))),
    )


@st.composite
def fitted_out(draw: DrawFn, opening: Opening, items: Hardware) -> Opening:
    """The opening with hardware chosen for some of its fronts, and some boxes left to be made."""
    return replace(
        opening, fronts=tuple(draw(_chosen(opening, front, items)) for front in opening.fronts)
    )


@st.composite
def _chosen(draw: DrawFn, opening: Opening, front: FrontFacts, items: Hardware) -> FrontFacts:
    front = replace(
        front,
        handle=draw(st.sampled_from((None, *(item.code for item in items.handles)))),
        glass=draw(st.booleans()),
    )
    if belongs("hinge", opening.closing):
        codes = (None, *(item.code for item in items.hinges))
        front = replace(front, hinge=draw(st.sampled_from(codes)))
    if belongs("box_to_make", opening.closing) and draw(st.booleans()):
        kind = draw(st.sampled_from((None, *get_args(SlideKind))))
        shelves, load = draw(st.integers(0, 2)), draw(st.none() | st.just(Fraction(10)))
        front = replace(front, box=None, box_to_make=BoxToMake(kind, shelves, load))
    return front
