"""Faces and whole notebooks as somebody might write them."""

from hypothesis import strategies as st
from hypothesis.strategies import DrawFn, SearchStrategy

from fronts.notebook import Face, face_words
from fronts.notebook.face import CELLS, STACK, Cell, Row
from fronts.rules.kinds import CLOSINGS, HINGE_SIDES, Unit
from fronts.rules.lengths import Mm, write
from tests.strategies_of_shops import lengths

UNITS: SearchStrategy[Unit] = st.sampled_from(["in", "mm"])
COMMAS = st.sampled_from([" ", ", ", " , ", "  "])


@st.composite
def cells(draw: DrawFn, unit: Unit) -> Cell:
    """What closes one opening; a stack's heights are small enough for most."""
    closed_by = draw(st.sampled_from([*CELLS, STACK]))
    if CLOSINGS[closed_by].stack:
        heights = draw(st.lists(st.none() | lengths(unit, 60, 150), min_size=1, max_size=4))
        return Cell(closed_by, heights=tuple(heights))
    hinged = draw(st.sampled_from([*HINGE_SIDES])) if CLOSINGS[closed_by].hinged else None
    return Cell(closed_by, hinged, width=draw(st.none() | lengths(unit, 100, 300)))


@st.composite
def faces(draw: DrawFn, unit: Unit) -> Face:
    """One to three rows of one to three cells, whose last row and cell are left to share."""
    rows = []
    for _ in range(draw(st.integers(1, 3))):
        row = draw(st.lists(cells(unit), min_size=1, max_size=3))
        says = any(cell.takes_sizes for cell in row)
        height = draw(st.none() | lengths(unit, 100, 300)) if says else None
        rows.append(Row((*row, Cell("pair")), height))
    return (*rows, Row((Cell("open"),)))


@st.composite
def notebooks(draw: DrawFn, unit: Unit) -> str:
    """A wall or two with cabinets of all kinds and what stands between them."""

    def size(least: int, most: int) -> str:
        return write(draw(lengths(unit, least, most)), unit)

    def sizes(*said: tuple[str, str]) -> str:
        return " ".join(f"{amount} {mark}" for amount, mark in draw(st.permutations(said)))

    lines = [f"wall North {size(5000, 9000)}" if draw(st.booleans()) else "wall North"]
    lines += [
        f"base {sizes((size(1200, 1300), 'high'), (size(500, 700), 'deep'), (size(0, 150), 'up'))}",
        draw(st.sampled_from(["face frame", "frameless", f"face frame {size(30, 50)}"])),
    ]
    for number in range(draw(st.integers(1, 5))):
        own = f" {size(1200, 1400)} high" if draw(st.booleans()) else ""
        comma = draw(COMMAS)
        face = face_words(draw(faces(unit)), unit)
        lines.append(f"B{number}{comma}{size(2400, 2600)}{own}{comma}{face}")
        lines += draw(st.lists(things(unit), max_size=2))
    lines += ["", f"wall {draw(st.sampled_from(['East', 'North']))} # and on", ""]
    hung = sizes((size(1200, 1300), "high"), (size(300, 350), "deep"), (size(1350, 1500), "up"))
    lines += [
        f"wall cabinets {hung}",
        f"W1 {size(2400, 2600)} {face_words(draw(faces(unit)), unit)}",
    ]
    return "\n".join([*lines, *draw(st.lists(things(unit), max_size=2))])


@st.composite
def things(draw: DrawFn, unit: Unit) -> str:
    """A line of something that is no cabinet."""
    width: Mm = draw(lengths(unit, 10, 900))
    above = draw(st.sampled_from(["", "", "upper "]))
    kind = draw(st.sampled_from(["filler", "end panel", "gap", "appliance"]))
    name = draw(st.sampled_from(["", " dishwasher", " window 2", " by the door"]))
    return f"{above}{kind} {write(width, unit)}{name}"
