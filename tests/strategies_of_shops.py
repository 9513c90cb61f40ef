"""What a shop and its jobs say: lengths, standards, doors on hand, stock, own numbers."""

from dataclasses import replace
from datetime import date
from fractions import Fraction

from hypothesis import strategies as st
from hypothesis.strategies import DrawFn, SearchStrategy

from fronts.rules.job_facts import JobFacts, Stock
from fronts.rules.kinds import FRONT_BUILDS, Unit
from fronts.rules.kitchen import DoorOnHand, KnobHole, Point
from fronts.rules.lengths import INCH, Mm
from fronts.rules.practice import PRACTICE, Practice
from fronts.rules.standard_keys import Reveal, Sides, Standard

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
        front_build=draw(st.sampled_from((None, None, *FRONT_BUILDS))),
        front_material=draw(st.sampled_from((None, None, "cherry", "oak plywood"))),
        front_handle=draw(st.sampled_from((None, None, "K-1", "no such"))),
        front_hinge=draw(st.sampled_from((None, None, "H-1", "no such"))),
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
        hinges_by_height=draw(st.sampled_from((PRACTICE.hinges_by_height, ((Mm(900), 2),)))),
        hinges_by_weight=draw(st.sampled_from((PRACTICE.hinges_by_weight, ((Mm(15, 2), 3),)))),
        slide_classes=draw(st.sampled_from((PRACTICE.slide_classes, (Mm(30), Mm(50))))),
        material=draw(st.sampled_from((PRACTICE.material, "birch plywood"))),
    )
