"""What the page says of a front's laps and gaps, of findings alike, and of stock."""

from dataclasses import replace

import pytest

from fronts.figures.laps import gaps_words, laps_words
from fronts.pages.whatif.rows.findings import finding_rows
from fronts.pages.whatif.rows.parts import parts_changes
from fronts.rules.lengths import Mm
from fronts.rules.results import Edge, Finding
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Sides, Standard
from tests.rules.small_kitchens import all_round, cabinet, inch, kitchen, only_front, opening

LAPS = [
    ("1/2", "1/2", "1/2", "1/2", "1/2 all round"),
    ("1/2", "1/2", "1/4", "1/4", "1/2 left and right, 1/4 top and bottom"),
    ("1/2", "1/4", "1/2", "1/2", "1/2 left, top and bottom, 1/4 right"),
    ("1/4", None, "1/4", "1/4", "1/4 all round"),
    ("-1/8", "-1/8", "-1/8", "-1/8", "inset 1/8 all round"),
    ("-1/8", "-1/8", "-3/16", "-3/16", "inset 1/8 left and right, 3/16 top and bottom"),
    ("1/4", "1/4", "-1/8", "-1/8", "1/4 left and right, −1/8 top and bottom"),
]


def length(text: str | None) -> Mm | None:
    return None if text is None else inch(text)


@pytest.mark.parametrize(
    ("left", "right", "top", "bottom", "words"), LAPS, ids=[row[-1] for row in LAPS]
)
def test_laps(left: str, right: str | None, top: str, bottom: str, words: str) -> None:
    """Sides that are alike are told together."""
    edges = Sides(*(Edge(length(each)) for each in (left, right, top, bottom)))
    front = replace(only_front(kitchen(cabinet(opening()))), edges=edges)

    assert laps_words(front, "in") == words


GAPS = [
    ("1/8", "1/8", "1/8", "1/8", "1/8 all round"),
    ("1/8", None, None, None, "1/8 left"),
    ("1/8", "1/8", None, None, "1/8 left and right"),
    ("1/8", None, "1/8", "2", "1/8 left, top, 2 bottom"),
    ("40", None, None, "1/8", "1/8 bottom"),
    (None, None, None, None, ""),
]


@pytest.mark.parametrize(
    ("left", "right", "top", "bottom", "words"), GAPS, ids=[row[-1] or "none" for row in GAPS]
)
def test_gaps(
    left: str | None, right: str | None, top: str | None, bottom: str | None, words: str
) -> None:
    """Only those that are no wider than a gap is."""
    edges = Sides(*(Edge(None, length(each)) for each in (left, right, top, bottom)))
    front = replace(only_front(kitchen(cabinet(opening()))), edges=edges)

    assert gaps_words(front, "in", inch("3")) == words


def test_findings_alike_are_told_once() -> None:
    """What is said of each is said of all; the others stand as they are."""
    rest = "none of the shop's hinges serves"
    alike = [Finding("stop", "no-hinge", (place,), f"{place}: {rest}") for place in ("a", "b")]
    alone = Finding("note", "lines-miss", ("a", "b"), "a and b miss each other's line")

    rows = finding_rows([alike[0], alone, alike[1]])

    assert [row.message for row in rows] == [f"a, b: {rest}", alone.message]
    assert [row.level for row in rows] == ["stop", "note"]


def test_parts_that_differ() -> None:
    """A door 31 × 48 fills a sheet 96 × 48 by itself; of 30 1/2 × 47 1/2 it holds three."""
    tall = opening(width=inch("30"), height=inch("47"))
    row = [
        cabinet(tall, label=f"B{i}", x=inch("33") * i, width=inch("33"), height=inch("50"))
        for i in range(5)
    ]
    of = kitchen(*row)
    smaller = replace(of, standard=Standard(overlay=all_round("1/4")))

    (change,) = parts_changes(schedule(of), schedule(smaller))

    assert (change.pieces.was, change.pieces.now, change.resized) == ("5", "5", 5)
    assert (change.stock.was, change.stock.now) == ("5 sheets", "2 sheets")
    assert parts_changes(schedule(of), schedule(of)) == []
