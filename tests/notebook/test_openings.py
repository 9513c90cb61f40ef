"""Which openings a face makes: worked out by hand from members, steps and shares."""

from fractions import Fraction

import pytest

from fronts.notebook import openings_of, read_face
from fronts.notebook.openings import Around
from fronts.rules.kinds import Unit
from fronts.rules.lengths import INCH, Mm
from tests.notebook.reading import cabinet, place

INCHES = [
    # a cabinet's width and face (30 1/2 high, members of 1 1/2); its openings: x, y, width, height
    ("18 door left", [("1.5", "1.5", "15", "27.5")]),
    ("36 fixed 6 over pair", [("1.5", "23", "33", "6"), ("1.5", "1.5", "33", "20")]),
    ("36 fixed over pair 20", [("1.5", "23", "33", "6"), ("1.5", "1.5", "33", "20")]),
    ("36 fixed 6 over pair 20 high", [("1.5", "23", "33", "6"), ("1.5", "1.5", "33", "20")]),
    (
        "36 drawer 6 beside drawer over pair",
        [("1.5", "23", "15.75", "6"), ("18.75", "23", "15.75", "6"), ("1.5", "1.5", "33", "20")],
    ),
    (
        "36 drawer beside drawer 6 12 wide over pair",
        [("1.5", "23", "19.5", "6"), ("22.5", "23", "12", "6"), ("1.5", "1.5", "33", "20")],
    ),
    (
        # 33 - 3 members' room of 3 = 30 in three: 10 each
        "36 door left beside open beside door right",
        [("1.5", "1.5", "10", "27.5"), ("13", "1.5", "10", "27.5"), ("24.5", "1.5", "10", "27.5")],
    ),
    (
        # 24 1/2 in three: 8 1/8 each down to the sixteenth, and 8 1/4 for the lowest
        "18 drawer over drawer over drawer",
        [
            ("1.5", "20.875", "15", "8.125"),
            ("1.5", "11.25", "15", "8.125"),
            ("1.5", "1.5", "15", "8.25"),
        ],
    ),
    (
        # 23 less 12 1/16 in three: 3 5/8, 3 5/8 and 3 11/16 for the lowest that shares
        "18 drawer over drawer over drawer over door left 12 1/16",
        [
            ("1.5", "25.375", "15", "3.625"),
            ("1.5", "20.25", "15", "3.625"),
            ("1.5", "15.0625", "15", "3.6875"),
            ("1.5", "1.5", "15", "12.0625"),
        ],
    ),
    (
        # 13 5/16 less three members of 1 1/2 is 8 13/16: 4 3/8 down to the step, then 4 7/16
        "13 5/16 door left beside door right",
        [("1.5", "1.5", "4.375", "27.5"), ("7.375", "1.5", "4.4375", "27.5")],
    ),
    ("18 door left 27 1/2", [("1.5", "1.5", "15", "27.5")]),
    ("18 door left 15 wide", [("1.5", "1.5", "15", "27.5")]),
    ("18 drawer 1 over door left", [("1.5", "28", "15", "1"), ("1.5", "1.5", "15", "25")]),
    ("18 34 high drawer 6 over open", [("1.5", "26.5", "15", "6"), ("1.5", "1.5", "15", "23.5")]),
]  # fmt: skip


@pytest.mark.parametrize(("line", "placed"), INCHES, ids=[line for line, _ in INCHES])
def test_openings_fill_the_cabinet(line: str, placed: list[tuple[str, ...]]) -> None:
    """A member all round and between; shares down to the step, the rest to the last of them."""
    found = [place(opening) for opening in cabinet(f"B1 {line}").openings]

    assert found == [tuple(Fraction(size) * INCH for size in sizes) for sizes in placed]


MILLIMETRES = [
    (
        "600x720x18",
        "drawer 140 over pair",
        [("18", "562", "564", "140"), ("18", "18", "564", "526")],
    ),
    # 800 less four members of 18 is 728: 242, 242 and 244
    (
        "800x720x18",
        "door left beside open beside door right",
        [("18", "18", "242", "684"), ("278", "18", "242", "684"), ("538", "18", "244", "684")],
    ),
    ("600x720x40", "open 25 over open", [("40", "655", "520", "25"), ("40", "40", "520", "575")]),
]


@pytest.mark.parametrize(
    ("around", "face", "placed"), MILLIMETRES, ids=[face for _, face, _ in MILLIMETRES]
)
def test_openings_in_millimetres(around: str, face: str, placed: list[tuple[str, ...]]) -> None:
    """The same in whole millimetres, with panels of 18 or stiles of 40."""
    unit: Unit = "mm"
    width, height, member = (Mm(size) for size in around.split("x"))
    made = openings_of(read_face(face, unit), Around(width, height, member, unit, Mm(1)))

    assert [place(opening) for opening in made] == [
        tuple(Mm(size) for size in sizes) for sizes in placed
    ]


def test_labels_run_from_the_top_and_from_the_left() -> None:
    """a, b, c and on, past z where a cabinet has more."""
    line = "B1 240 drawer beside drawer over pair over open beside open"
    many = cabinet("B1 240 " + " over ".join(["open beside open beside open"] * 10)).openings

    assert [opening.label for opening in cabinet(line).openings] == ["a", "b", "c", "d", "e"]
    assert [opening.label for opening in many][24:] == ["y", "z", "a2", "b2", "c2", "d2"]


def test_what_closes_an_opening_has_its_fronts() -> None:
    """A door its hand, a pair two doors, a stack its heights, an open one none."""
    line = "B1 96 door top beside pair beside 3 drawers 5, , 7 beside open"
    door, pair, stack, opened = cabinet(line).openings

    assert [front.hinged for front in door.fronts] == ["top"]
    assert len(pair.fronts) == 2
    assert [front.own_height for front in stack.fronts] == [5 * INCH, None, 7 * INCH]
    assert opened.fronts == ()
