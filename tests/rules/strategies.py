"""Kitchens that the usual ones leave out: openings side by side, and whatever a file may hold."""

from dataclasses import replace
from fractions import Fraction
from typing import get_args

from hypothesis import strategies as st
from hypothesis.strategies import DrawFn, SearchStrategy

from fronts.rules.box_facts import Box, ShelfPins
from fronts.rules.job_facts import JobFacts, Stock
from fronts.rules.kinds import CLOSINGS, ClosedBy, Closing, Hinged, Unit
from fronts.rules.kitchen import CHOOSE, Cabinet, DoorOnHand, FrontFacts, Kitchen, Measured, Opening
from fronts.rules.lengths import INCH, Mm
from fronts.rules.practice import PRACTICE, Practice
from fronts.rules.standard_keys import Reveal, Sides, Standard
from fronts.rules.validity import tidied
from tests.strategies import CLOSED_BY, closed
from tests.strategies_of_shops import lengths, standards


@st.composite
def grids(draw: DrawFn) -> Kitchen:
    """One or two cabinets of up to three openings across and two up, all sized by rule."""
    unit: Unit = draw(st.sampled_from(get_args(Unit)))
    first = draw(_grid(unit))
    cabinets = [first]
    if draw(st.booleans()):
        beside = draw(_grid(unit))
        cabinets.append(replace(beside, label="B2", x=first.left + first.width))
    return Kitchen(
        job=JobFacts("T-1", unit=unit, step=INCH / 16 if unit == "in" else Mm(1)),
        standard=draw(standards(unit, laps=True)),
        cabinets=tuple(cabinets),
    )


@st.composite
def _grid(draw: DrawFn, unit: Unit) -> Cabinet:
    member = draw(lengths(unit, 16, 45))
    widths = draw(st.lists(lengths(unit, 150, 500), min_size=1, max_size=3))
    heights = draw(st.lists(lengths(unit, 120, 500), min_size=1, max_size=2))
    openings = []
    for row, height in enumerate(heights):
        for column, width in enumerate(widths):
            of = Opening(
                label=f"{'abc'[column]}{row}",
                x=member + sum((w + member for w in widths[:column]), Mm(0)),
                y=member + sum((h + member for h in heights[:row]), Mm(0)),
                width=width,
                height=height,
                closed_by=draw(st.sampled_from(CLOSED_BY)),
            )
            openings.append(draw(closed(unit, of, ())))
    return Cabinet(
        label="B1",
        kind="base",
        build="frameless",
        wall="North",
        x=draw(lengths(unit, -50, 500)),
        y=Mm(100),
        width=member + sum((w + member for w in widths), Mm(0)),
        height=member + sum((h + member for h in heights), Mm(0)),
        depth=Mm(560),
        openings=tuple(openings),
        standard=draw(standards(unit)),
    )


# What a file may hold: from a hair to 20 m, on no grid.
_extremes = st.sampled_from([INCH / 128, Mm(1, 7), Mm(1), INCH, Mm(900), Mm(20_000)])
size = _extremes | st.fractions(Mm(1, 7), 3000, max_denominator=7)
or_zero = st.just(Mm(0)) | size
place = or_zero | size.map(lambda each: -each)
some_sides = st.builds(Sides, or_zero, or_zero, or_zero, or_zero)


def _maybe(of: SearchStrategy[Mm]) -> SearchStrategy[Mm | None]:
    return st.none() | of


_levels = st.builds(
    Standard,
    mount=st.sampled_from([None, "overlay", "inset"]),
    gap_between=_maybe(or_zero),
    least_gap=_maybe(or_zero),
    inset_gap=st.none() | some_sides,
    front_thickness=_maybe(size),
    trim_limit=_maybe(or_zero),
    least_stile=_maybe(or_zero),
    skin=_maybe(or_zero),
    bite=_maybe(or_zero),
    hinge_end=_maybe(or_zero),
)
_with_overlay = st.builds(lambda level, lap: replace(level, overlay=lap), _levels, some_sides)
_with_reveal = st.builds(
    lambda level, between, end: replace(level, reveal=Reveal(between, end)),
    _levels, or_zero, some_sides,
)  # fmt: skip
wild_standards = _levels | _with_overlay | _with_reveal
_pins = st.builds(ShelfPins, or_zero, or_zero, size, st.integers(1, 500), size)
_boxes = st.builds(
    Box, size, size, size, or_zero,
    depth=_maybe(size), side_clearance=_maybe(or_zero),
    slide=st.sampled_from([None, "bottom", "side", "under"]),
    slide_width=_maybe(size), slide_height=_maybe(size),
    shelf_pins=st.lists(_pins, max_size=2).map(tuple),
)  # fmt: skip
_materials = st.sampled_from([None, "", "oak", "MDF", "birch plywood", "unheard of", "glass"])
_measured = st.builds(
    lambda a, b, c, d, e: Measured(a, b, c, d, *(e or (None, None))),
    _maybe(size), _maybe(size), _maybe(size), _maybe(size), st.none() | st.tuples(size, size),
)  # fmt: skip


@st.composite
def wild_practices(draw: DrawFn) -> Practice:
    """Numbers that a shop may give, sensible or not."""
    counts = st.integers(1, 20)
    humid = sorted(draw(st.lists(st.integers(0, 100), min_size=2, max_size=2)))
    return replace(
        PRACTICE,
        hole_diameter=draw(size), hole_inset=draw(or_zero), hole_to_edge=draw(or_zero),
        hole_clear=draw(or_zero), hole_move=draw(size), ledge_length=draw(or_zero),
        lines_seen=draw(or_zero), filler=draw(or_zero), stile=draw(or_zero), rail=draw(or_zero),
        tongue=draw(or_zero), panel_clearance=draw(or_zero), hinge_half=draw(or_zero),
        humidity_low=Fraction(humid[0]), humidity_high=Fraction(humid[1]),
        site_celsius=Fraction(draw(st.integers(-20, 60))),
        made_at=Fraction(draw(st.integers(0, 30))),
        solid_panels=Fraction(draw(st.integers(0, 1))),
        bumpers=Fraction(draw(st.integers(0, 9)), 2),
        hinges_by_height=((draw(size), draw(counts)),),
        hinges_by_weight=((Fraction(draw(counts)), draw(counts)),),
        slide_classes=(Fraction(draw(counts)),),
        material=draw(st.sampled_from(["MDF", "unheard of"])),
        frame_material=draw(st.sampled_from(["hard maple", "unheard of"])),
    )  # fmt: skip


@st.composite
def _wild_fronts(draw: DrawFn, closing: Closing, doors: tuple[str, ...]) -> FrontFacts:
    """Whatever may be decided about one front, however little it goes together."""
    named = doors if closing.single else ()
    return FrontFacts(
        own_height=draw(_maybe(size)) if closing.stack else None,
        door_on_hand=draw(st.sampled_from([None, CHOOSE, *named])),
        width=draw(_maybe(size)), height=draw(_maybe(size)), thickness=draw(_maybe(size)),
        build=draw(st.sampled_from([None, "slab", "five-piece"])),
        material=draw(_materials) or None,
        shift_x=draw(place), shift_y=draw(place),
        hinged=draw(st.sampled_from([None, *get_args(Hinged)])) if closing.hinged else None,
        box=draw(st.none() | _boxes) if closing.on_box else None,
    )  # fmt: skip


@st.composite
def _wild_openings(draw: DrawFn, label: str, doors: tuple[str, ...]) -> Opening:
    closed_by: ClosedBy = draw(st.sampled_from(CLOSED_BY))
    closing = CLOSINGS[closed_by]
    least, most = closing.fronts
    count = draw(st.integers(least, min(most, 4)))
    return tidied(
        Opening(
            label=label,
            x=draw(or_zero), y=draw(or_zero), width=draw(size), height=draw(size),
            closed_by=closed_by,
            fronts=tuple(draw(_wild_fronts(closing, doors)) for _ in range(count)),
            measured=draw(st.just(Measured()) | _measured),
            standard=draw(st.just(Standard()) | wild_standards),
        )
    )  # fmt: skip


@st.composite
def wild_kitchens(draw: DrawFn) -> Kitchen:
    """Anything whose single sizes a file may hold, however little they go together."""
    doors = tuple(
        DoorOnHand(
            f"D{n}", draw(size), draw(size), draw(size),
            build=draw(st.sampled_from(["slab", "five-piece"])), material=draw(_materials) or None,
        )
        for n in range(draw(st.integers(0, 2)))
    )  # fmt: skip
    labels = tuple(each.label for each in doors)
    cabinets = tuple(
        Cabinet(
            label=f"B{n}",
            kind=draw(st.sampled_from(["base", "wall", "tall"])),
            build="frameless", wall=draw(st.sampled_from(["North", "West"])),
            x=draw(place), y=draw(place), width=Mm(20_000), height=Mm(20_000), depth=draw(size),
            openings=tuple(
                draw(_wild_openings("abc"[o], labels)) for o in range(draw(st.integers(0, 3)))
            ),
            standard=draw(st.just(Standard()) | wild_standards),
        )
        for n in range(draw(st.integers(0, 3)))
    )  # fmt: skip
    few = st.lists(size, max_size=3).map(tuple)
    return Kitchen(
        job=JobFacts("T-1", unit=draw(st.sampled_from(get_args(Unit))), step=draw(_steps)),
        standard=draw(_with_overlay | _with_reveal),
        cabinets=cabinets,
        doors_on_hand=doors,
        stock=Stock(draw(few), draw(few), draw(st.sampled_from(["8-32", "M4"])), draw(size)),
        practice=draw(st.just(PRACTICE) | wild_practices()),
    )


_steps = st.sampled_from([INCH / 128, INCH / 16, Mm(1), Mm(1, 7), INCH])
