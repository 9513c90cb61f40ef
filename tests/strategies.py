"""Kitchens as they come: walls with runs of cabinets, every way to close an opening."""

from dataclasses import replace
from fractions import Fraction
from math import isqrt
from typing import get_args

from hypothesis import strategies as st
from hypothesis.strategies import DrawFn

from fronts.rules.box_facts import Box, BoxToMake, ShelfPins
from fronts.rules.kinds import CabinetBuild, CabinetKind, ClosedBy, Hinged, SlideKind, Unit
from fronts.rules.kitchen import (
    CHOOSE,
    Cabinet,
    FrontFacts,
    KindStandard,
    Kitchen,
    Measured,
    Opening,
)
from fronts.rules.lengths import INCH, Mm, floor_to
from fronts.rules.machine_facts import ANY_MACHINE, Machine
from fronts.rules.validity import belongs, tidied
from tests.strategies_of_shops import (
    GRAIN,
    doors_on_hand,
    jobs,
    lengths,
    practices,
    standards,
    stocks,
)

CLOSED_BY: tuple[ClosedBy, ...] = (
    "door", "pair", "drawer", "drawers", "pull-out", "fixed", "open",
)  # fmt: skip


@st.composite
def kitchens(draw: DrawFn, *, most_cabinets: int = 4) -> Kitchen:
    """Plausible kitchens; each front sized by rule has an overlay or a reveal to go by."""
    unit: Unit = draw(st.sampled_from(("in", "mm")))
    doors = draw(st.lists(doors_on_hand(unit), max_size=3))
    named = tuple(replace(each, label=f"D{index}") for index, each in enumerate(doors, 1))
    return Kitchen(
        job=draw(jobs(unit)),
        standard=draw(standards(unit, laps=True)),
        kind_standards=draw(kind_standards(unit)),
        cabinets=draw(runs(unit, most_cabinets, tuple(each.label for each in named))),
        doors_on_hand=named,
        stock=draw(stocks(unit)),
        practice=draw(practices(unit)),
    )


@st.composite
def kind_standards(draw: DrawFn, unit: Unit) -> tuple[KindStandard, ...]:
    """Mostly none; else what some kinds of cabinet do otherwise."""
    some: tuple[tuple[CabinetKind, ...], ...] = ((), (), ("wall",), ("base", "tall"))
    kinds = draw(st.sampled_from(some))
    return tuple(KindStandard(kind, draw(standards(unit))) for kind in kinds)


@st.composite
def runs(draw: DrawFn, unit: Unit, most: int, doors: tuple[str, ...]) -> tuple[Cabinet, ...]:
    """Cabinets side by side along a wall or two."""
    at = {wall: draw(lengths(unit, -100, 500)) for wall in ("North", "Västra väggen")}
    cabinets: list[Cabinet] = []
    for index in range(draw(st.integers(0, most))):
        wall = draw(st.sampled_from(sorted(at)))
        cabinet = draw(cabinets_of(unit, doors))
        cabinets.append(replace(cabinet, label=f"B{index + 1}", wall=wall, x=at[wall]))
        at[wall] += cabinet.width
    return tuple(cabinets)


@st.composite
def cabinets_of(draw: DrawFn, unit: Unit, doors: tuple[str, ...]) -> Cabinet:
    """One cabinet with its openings above each other."""
    build = draw(st.sampled_from(get_args(CabinetBuild)))
    member = Mm(38) if build == "face-frame" else Mm(18)
    width = draw(lengths(unit, 300, 1000))
    bottom, openings = member, []
    for index in range(draw(st.integers(0, 3))):
        height = draw(lengths(unit, 120, 900))
        around = Opening(
            label="abc"[index],
            x=member,
            y=bottom,
            width=width - 2 * member,
            height=height,
            closed_by=draw(st.sampled_from(get_args(ClosedBy))),
        )
        openings.append(draw(closed(unit, around, doors)))
        bottom += height + member
    return Cabinet(
        label="B",
        kind=draw(st.sampled_from(("base", "wall", "tall"))),
        build=build,
        wall="North",
        x=Mm(0),
        y=draw(st.sampled_from((Mm(0), Mm(100), 4 * INCH, Mm(-20)))),
        width=width,
        height=max(bottom, draw(lengths(unit, 700, 800))),
        depth=draw(lengths(unit, 300, 650)),
        openings=tuple(openings),
        standard=draw(standards(unit)),
    )


@st.composite
def closed(draw: DrawFn, unit: Unit, opening: Opening, doors: tuple[str, ...]) -> Opening:
    """The opening with what closes it, each front decided by itself."""
    least, most = opening.closing.fronts
    count = draw(st.integers(least, min(most, 4)))
    decided = [draw(fronts(unit, opening, count, doors)) for _ in range(count)]
    if draw(st.booleans()):
        boxes = [draw(st.none() | boxes_in(unit, opening, count)) for _ in range(count)]
        decided = [
            replace(front, box=box if opening.closing.on_box else None)
            for front, box in zip(decided, boxes, strict=True)
        ]
    elif opening.closing.on_box and draw(st.booleans()):
        decided = [replace(front, box_to_make=draw(boxes_to_make)) for front in decided]
    return tidied(
        replace(
            opening,
            fronts=tuple(decided),
            measured=draw(st.just(Measured()) | measurements(unit, opening)),
            standard=draw(standards(unit)),
        )
    )


boxes_to_make = st.builds(
    BoxToMake,
    st.sampled_from((None, *get_args(SlideKind))),
    st.integers(0, 3),
    st.none() | st.integers(1, 80).map(Fraction),
)


@st.composite
def boxes_in(draw: DrawFn, unit: Unit, opening: Opening, count: int) -> Box:
    """A box that goes into the opening, with or without its slide and pins."""
    slide = draw(st.sampled_from((None, *get_args(SlideKind))))
    height = floor_to(opening.height / count * Fraction(3, 4), GRAIN[unit])
    row = ShelfPins(
        x=draw(lengths(unit, 25, 60)),
        y=draw(lengths(unit, 25, 100)),
        pitch=draw(st.sampled_from((INCH, Mm(32)))),
        count=draw(st.integers(1, 12)),
        diameter=draw(st.sampled_from((INCH / 4, Mm(5)))),
    )
    return Box(
        width=opening.width - 2 * draw(lengths(unit, 10, 30)),
        height=height,
        front_thickness=draw(lengths(unit, 12, 19)),
        rise=draw(lengths(unit, 0, 30)),
        depth=draw(st.none() | lengths(unit, 250, 550)),
        side_clearance=draw(st.none() | lengths(unit, 5, 30)),
        slide=slide,
        slide_width=draw(lengths(unit, 30, 50)) if slide == "bottom" else None,
        slide_height=draw(lengths(unit, 10, 15)) if slide == "bottom" else None,
        shelf_pins=draw(st.just(()) | st.just((row,))),
    )


@st.composite
def machines(draw: DrawFn, unit: Unit) -> Machine:
    """What a booklet may say, in part or whole."""
    width, height = draw(lengths(unit, 300, 900)), draw(lengths(unit, 300, 900))
    return Machine(
        least_width=draw(st.none() | st.just(width)),
        most_width=draw(st.none() | st.just(width + 20)),
        least_height=draw(st.none() | st.just(height)),
        most_height=draw(st.none() | st.just(height + 50)),
        most_kg=draw(st.none() | st.integers(1, 20).map(Fraction)),
    )


@st.composite
def fronts(
    draw: DrawFn, unit: Unit, opening: Opening, count: int, doors: tuple[str, ...]
) -> FrontFacts:
    """What is decided about one front of so many: often nothing."""
    closing = opening.closing
    shares = lengths(unit, 60, max(61, int(opening.height) // (count + 1)))
    wish = FrontFacts(
        own_height=draw(st.none() | shares) if closing.stack else None,
        thickness=draw(st.none() | lengths(unit, 16, 25)),
        build=draw(st.sampled_from((None, "slab", "five-piece"))),
        material=draw(st.sampled_from((None, "hard maple", "birch plywood", "MDF"))),
        shift_x=draw(st.just(Mm(0)) | lengths(unit, -3, 3)),
        shift_y=draw(st.just(Mm(0)) | lengths(unit, -3, 3)),
        hinged=draw(st.sampled_from(get_args(Hinged))) if closing.hinged else None,
        machine=draw(machines(unit)) if belongs("machine", closing) else ANY_MACHINE,
        room_behind=draw(st.none() | lengths(unit, 30, 100))
        if belongs("room_behind", closing)
        else None,
    )
    match draw(st.sampled_from(("rule", "rule", "choose", "named", "sizes"))):
        case "choose":
            return replace(wish, door_on_hand=CHOOSE)
        case "named" if closing.single and doors:
            return replace(wish, door_on_hand=draw(st.sampled_from(doors)))
        case "sizes" if closing.single:
            over = draw(lengths(unit, -6, 40))
            return replace(wish, width=opening.width + over, height=opening.height + over)
        case _:
            return wish


@st.composite
def measurements(draw: DrawFn, unit: Unit, opening: Opening) -> Measured:
    """What was taken on site: near the nominal sizes, in part or whole."""
    near = lengths(unit, -2, 2)
    across, upright = opening.width, opening.height
    grain = GRAIN[unit]
    diagonal = isqrt(int((across**2 + upright**2) / grain**2)) * grain
    diagonals = draw(st.none() | st.tuples(near, near))
    return Measured(
        width_top=draw(st.none() | near.map(lambda off: across + off)),
        width_bottom=draw(st.none() | near.map(lambda off: across + off)),
        height_left=draw(st.none() | near.map(lambda off: upright + off)),
        height_right=draw(st.none() | near.map(lambda off: upright + off)),
        diagonal_1=None if diagonals is None else diagonal + diagonals[0],
        diagonal_2=None if diagonals is None else diagonal + diagonals[1],
    )
