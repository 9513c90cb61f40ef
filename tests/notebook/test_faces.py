"""Faces in words: what is read, in which ways it may be said, and that it is said back."""

import pytest

from fronts.notebook import Face, NotUnderstood, face_words, read_face
from fronts.notebook.face import Cell, Row
from fronts.rules.lengths import INCH, Mm

PAIR = Cell("pair")


def inches(*sizes: float | None) -> tuple[Mm | None, ...]:
    """Sizes of a stack."""
    return tuple(None if size is None else Mm(size) * INCH for size in sizes)


READ: list[tuple[str, Face]] = [
    ("pair", (Row((PAIR,)),)),
    ("DOOR Left", (Row((Cell("door", "left"),)),)),
    ("door, right", (Row((Cell("door", "right"),)),)),
    ("pull–out", (Row((Cell("pull-out"),)),)),
    ("pull-out", (Row((Cell("pull-out"),)),)),
    ("lift-up over tip-out 6", (Row((Cell("lift-up"),)), Row((Cell("tip-out"),), 6 * INCH))),
    ("drawer 6 over pair", (Row((Cell("drawer"),), 6 * INCH), Row((PAIR,)))),
    ("drawer 6 high, over, pair", (Row((Cell("drawer"),), 6 * INCH), Row((PAIR,)))),
    ("drawer 5 1/2+1/2 over pair", (Row((Cell("drawer"),), 6 * INCH), Row((PAIR,)))),
    ("drawer 12 wide 6", (Row((Cell("drawer", width=12 * INCH),), 6 * INCH),)),
    ("drawer 6, 12 wide", (Row((Cell("drawer", width=12 * INCH),), 6 * INCH),)),
    ("drawer 6 high 12 wide", (Row((Cell("drawer", width=12 * INCH),), 6 * INCH),)),
    ("open beside open 6", (Row((Cell("open"), Cell("open")), 6 * INCH),)),
    ("3 drawers", (Row((Cell("drawers", heights=(None,) * 3),)),)),
    ("3 drawers 5, 6, 7", (Row((Cell("drawers", heights=inches(5, 6, 7)),)),)),
    ("3 drawers, 5, 6, 7", (Row((Cell("drawers", heights=inches(5, 6, 7)),)),)),
    ("3 drawers 5,6,7", (Row((Cell("drawers", heights=inches(5, 6, 7)),)),)),
    ("3 drawers 5, ,", (Row((Cell("drawers", heights=inches(5, None, None)),)),)),
    ("3 drawers , , 7 1/2", (Row((Cell("drawers", heights=inches(None, None, 7.5)),)),)),
    ("2 drawers ,", (Row((Cell("drawers", heights=(None, None)),)),)),
    ("1 drawers 6", (Row((Cell("drawers", heights=inches(6)),)),)),
    (
        "3 drawers 5, , over pair",
        (Row((Cell("drawers", heights=inches(5, None, None)),)), Row((PAIR,))),
    ),
    ("3 drawers, over pair", (Row((Cell("drawers", heights=(None,) * 3),)), Row((PAIR,)))),
    (
        "3 drawers 5, 6, 7, beside pair",
        (Row((Cell("drawers", heights=inches(5, 6, 7)), PAIR)),),
    ),
    (
        "3 drawers, 5, , 7, beside pair 20",
        (Row((Cell("drawers", heights=inches(5, None, 7)), PAIR), 20 * INCH),),
    ),
]


@pytest.mark.parametrize(("said", "face"), READ, ids=[said for said, _ in READ])
def test_a_face_is_read(said: str, face: Face) -> None:
    """In any case, with commas between things, sizes in any order."""
    assert read_face(said, "in") == face
    assert read_face(face_words(face, "in"), "in") == face


SAID_BACK = [
    ("DRAWER 6 HIGH, over PAIR", "drawer 6 over pair"),
    ("drawer 6 12 wide beside open", "drawer 6 12 wide beside open"),
    ("open beside drawer 12 wide 6", "open 6 beside drawer 12 wide"),
    ("3 drawers beside pair 20 over door top", "3 drawers beside pair 20 over door top"),
    ("4 drawers 5,,7.5,9", "4 drawers 5, , 7 1/2, 9"),
    ("3 drawers 5 , , over open", "3 drawers 5, , over open"),
    ("3 drawers , 5 ,", "3 drawers , 5,"),
]


@pytest.mark.parametrize(("said", "back"), SAID_BACK, ids=[said for said, _ in SAID_BACK])
def test_a_face_is_said_in_few_words(said: str, back: str) -> None:
    """As a shop would write it."""
    assert face_words(read_face(said, "in"), "in") == back


SINK = read_face("fixed 6 over pair", "in")


@pytest.mark.parametrize("name", ["Sink front", "sink  FRONT", "3 tier"])
def test_a_saved_face_stands_in_by_its_name(name: str) -> None:
    """In any case, with any spaces; a name may begin with a number."""
    assert read_face(name, "in", {"Sink front": SINK, "3 Tier": SINK}) == SINK


def test_our_own_words_come_before_a_saved_name() -> None:
    """A shop can't make a word mean something else."""
    assert read_face("pair", "in", {"pair": SINK}) == (Row((PAIR,)),)


def test_a_saved_face_is_a_whole_face() -> None:
    """It is no row or cell of another; the names are among what may stand there."""
    saved = {"Sink front": SINK}
    with pytest.raises(NotUnderstood, match="wanted over, beside"):
        read_face("drawer Sink front", "in", saved)
    with pytest.raises(NotUnderstood, match="Sink front"):
        read_face("Sinkfront", "in", saved)
