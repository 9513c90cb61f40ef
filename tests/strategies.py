"""Kitchens as they come: walls with runs of cabinets, every way to close an opening."""

from dataclasses import replace
from datetime import date
from fractions import Fraction
from math import isqrt

from hypothesis import strategies as st
from hypothesis.strategies import DrawFn, SearchStrategy

from fronts.rules.kitchen import (
    CHOOSE,
    Box,
    Cabinet,
    ClosedBy,
    DoorOnHand,
    FrontWish,
    JobFacts,
    Kitchen,
    KnobHole,
    Measured,
    Opening,
    Point,
    Reveal,
    ShelfPins,
    Sides,
    Standard,
    Stock,
    Unit,
)
from fronts.rules.lengths import INCH, Mm, floor_to
from fronts.rules.practice import PRACTICE, Practice

CLOSED_BY: tuple[ClosedBy, ...] = (
    "door", "pair", "drawer", "drawers", "pull-out", "fixed", "open",
)  # fmt: skip
GRAIN: dict[Unit, Mm] = {"in": INCH / 16, "mm": Fraction(1, 2)}
WORDS = "abcdefghijklmnopqrstuvwxyzÅÄÖé 0123456789-"


def lengths(unit: Unit, least: int, most: int) -> SearchStrategy[Mm]:
    """Lengths from `least` to `most` mm as a shop of this unit measures them."""
    grain = GRAIN[unit]
    return st.integers(-(-Mm(least) // grain), Mm(most) // grain).map(lambda n: n * grain)


def words(most: int = 20) -> SearchStrategy[str]:
    """Plain words, none at their ends blank; sometimes nothing."""
    return st.text(WORDS, max_size=most).map(str.strip)


@st.composite
def kitchens(draw: DrawFn, *, most_cabinets: int = 4) -> Kitchen:
    """Plausible kitchens; each front sized by rule has an overlay or a reveal to go by."""
    unit: Unit = draw(st.sampled_from(("in", "mm")))
    doors = draw(st.lists(doors_on_hand(unit), max_size=3))
    named = tuple(replace(each, label=f"D{index}") for index, each in enumerate(doors, 1))
    return Kitchen(
        job=draw(jobs(unit)),
        standard=draw(standards(unit, laps=True)),
        cabinets=draw(runs(unit, most_cabinets, tuple(each.label for each in named))),
        doors_on_hand=named,
        stock=draw(stocks(unit)),
        practice=draw(practices(unit)),
    )


@st.composite
def jobs(draw: DrawFn, unit: Unit) -> JobFacts:
    """Whose kitchen it is."""
    steps = {"in": (16, 32), "mm": (1, 2)}[unit]
    return JobFacts(
        number=draw(st.from_regex(r"[A-Z]-[0-9]{1,4}", fullmatch=True)),
        client=draw(words()),
        site=draw(words()),
        unit=unit,
        step=(INCH if unit == "in" else Mm(1)) / draw(st.sampled_from(steps)),
        fit_on=draw(st.none() | st.dates(date(2026, 1, 1), date(2030, 12, 31))),
    )


@st.composite
def standards(draw: DrawFn, unit: Unit, *, laps: bool = False) -> Standard:
    """What one level says; with `laps` it surely gives an overlay or a reveal."""
    said = st.booleans()
    standard = Standard(
        mount=draw(st.sampled_from((None, "overlay", "inset"))),
        gap_between=draw(st.none() | lengths(unit, 2, 5)),
        least_gap=draw(st.none() | lengths(unit, 1, 2)),
        inset_gap=draw(st.none() | sides(unit, 2, 5)),
        front_thickness=draw(st.none() | lengths(unit, 16, 25)),
        trim_limit=draw(st.none() | lengths(unit, 0, 40)),
        least_stile=draw(st.none() | lengths(unit, 30, 50)),
        skin=draw(st.none() | lengths(unit, 1, 5)),
        bite=draw(st.none() | lengths(unit, 6, 12)),
        hinge_end=draw(st.none() | lengths(unit, 60, 120)),
    )
    if not laps and not draw(said):
        return standard
    if draw(said):
        return replace(standard, overlay=draw(sides(unit, 0, 18)))
    return replace(standard, reveal=Reveal(draw(lengths(unit, 2, 6)), draw(sides(unit, 0, 6))))


@st.composite
def sides(draw: DrawFn, unit: Unit, least: int, most: int) -> Sides[Mm]:
    """A length for each side."""
    length = lengths(unit, least, most)
    return Sides(draw(length), draw(length), draw(length), draw(length))


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
    build = draw(st.sampled_from(("face-frame", "frameless")))
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
            closed_by=draw(st.sampled_from(CLOSED_BY)),
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
    """The opening with what closes it."""
    kind = opening.closed_by
    count = draw(st.integers(1, 4)) if kind == "drawers" else 1
    heights: tuple[Mm | None, ...] = ()
    boxes: tuple[Box | None, ...] = ()
    if kind == "drawers" and draw(st.booleans()):
        least, most = 60, max(61, int(opening.height) // (count + 1))
        heights = tuple(draw(st.none() | lengths(unit, least, most)) for _ in range(count))
    if kind == "drawers" and draw(st.booleans()):
        boxes = tuple(draw(st.none() | boxes_in(unit, opening, count)) for _ in range(count))
    if kind in ("drawer", "pull-out") and draw(st.booleans()):
        boxes = (draw(boxes_in(unit, opening, 1)),)
    return replace(
        opening,
        hinged=draw(st.sampled_from(("left", "right", "top", "bottom")))
        if kind == "door"
        else None,
        count=count,
        heights=heights,
        boxes=boxes,
        front=draw(fronts(unit, opening, doors)),
        measured=draw(st.just(Measured()) | measurements(unit, opening)),
        standard=draw(standards(unit)),
    )


@st.composite
def boxes_in(draw: DrawFn, unit: Unit, opening: Opening, count: int) -> Box:
    """A box that goes into the opening, with or without its slide and pins."""
    slide = draw(st.sampled_from((None, "bottom", "side", "under")))
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
def fronts(draw: DrawFn, unit: Unit, opening: Opening, doors: tuple[str, ...]) -> FrontWish:
    """What is decided about a front: often nothing."""
    wish = FrontWish(
        thickness=draw(st.none() | lengths(unit, 16, 25)),
        build=draw(st.sampled_from((None, "slab", "five-piece"))),
        material=draw(st.sampled_from((None, "hard maple", "birch plywood", "MDF"))),
        shift_x=draw(st.just(Mm(0)) | lengths(unit, -3, 3)),
        shift_y=draw(st.just(Mm(0)) | lengths(unit, -3, 3)),
    )
    single = opening.closed_by not in ("pair", "drawers", "open")
    match draw(st.sampled_from(("rule", "rule", "choose", "named", "sizes"))):
        case "choose":
            return replace(wish, door_on_hand=CHOOSE)
        case "named" if single and doors:
            return replace(wish, door_on_hand=draw(st.sampled_from(doors)))
        case "sizes" if single:
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


@st.composite
def doors_on_hand(draw: DrawFn, unit: Unit) -> DoorOnHand:
    """A door from an old kitchen."""
    framed = draw(st.booleans())
    knob = KnobHole(Mm(40), Mm(60), draw(st.sampled_from((INCH * 3 / 16, Mm(5)))))
    bores = (Point(Mm(22), Mm(90)), Point(Mm(22), Mm(210)))
    return DoorOnHand(
        label="D",
        width=draw(lengths(unit, 250, 600)),
        height=draw(lengths(unit, 300, 900)),
        thickness=draw(lengths(unit, 16, 25)),
        build="five-piece" if framed else "slab",
        stile=draw(st.none() | lengths(unit, 45, 70)) if framed else None,
        rail=draw(st.none() | lengths(unit, 45, 70)) if framed else None,
        panel_thickness=draw(st.none() | lengths(unit, 4, 9)) if framed else None,
        knob_hole=draw(st.none() | st.just(knob)),
        hinge_bores=draw(st.sampled_from(((), bores[:1], bores))),
        bore_diameter=draw(st.sampled_from((Mm(35), INCH * 3 / 8))),
        material=draw(st.none() | st.just("cherry")),
    )


@st.composite
def stocks(draw: DrawFn, unit: Unit) -> Stock:
    """Lengths on the shelf, in the order in which somebody wrote them down."""
    return Stock(
        screw_lengths=tuple(draw(st.lists(lengths(unit, 12, 60), max_size=6))),
        knob_screw_lengths=tuple(draw(st.lists(lengths(unit, 20, 60), max_size=4))),
        knob_thread=draw(st.sampled_from(("8-32", "M4", "1/4-20"))),
        knob_thread_depth=draw(lengths(unit, 6, 15)),
        slide_lengths=tuple(draw(st.lists(lengths(unit, 250, 600), max_size=6))),
    )


@st.composite
def practices(draw: DrawFn, unit: Unit) -> Practice:
    """Common practice, or a shop that differs in a few numbers."""
    if draw(st.booleans()):
        return PRACTICE
    return replace(
        PRACTICE,
        hole_diameter=draw(lengths(unit, 5, 8)),
        lines_seen=draw(lengths(unit, 3, 10)),
        humidity_low=Fraction(draw(st.integers(10, 40))),
        spares=Fraction(draw(st.integers(0, 40)), 4),
    )
