"""Which offcuts are worth keeping, and which a plan may use."""

import pytest

from fronts.rules.cutting_groups import cutting_groups
from fronts.rules.lengths import INCH, Mm
from fronts.rules.metric import METRIC_NUMBERS
from fronts.rules.offcuts import (
    OffcutAt,
    OffcutFacts,
    fitting,
    is_worth_keeping,
    number_of,
    offcut_label,
)
from fronts.rules.practice import PRACTICE
from fronts.rules.results import Part


@pytest.mark.parametrize(
    ("length", "width", "kept"),
    [
        (12, 4, True),
        (4, 12, True),
        (11, 11, False),
        (40, 3, False),
        (18, None, True),
        (17, None, False),
    ],
)
def test_what_is_worth_keeping(length: int, width: int | None, kept: bool) -> None:
    across = None if width is None else width * INCH
    assert is_worth_keeping(length * INCH, across, PRACTICE) is kept


@pytest.mark.parametrize("label", ["", "R", "12", "R-1", "R1.0", "R²", "R" + "9" * 30, "r1", "X1"])
def test_what_is_no_number_on_a_piece(label: str) -> None:
    assert number_of(label) is None


def test_a_number_is_read_as_it_is_written() -> None:
    assert offcut_label(12) == "R12"
    assert number_of("R12") == 12


def part(label: str, length: int, width: int, *, stick: bool = False) -> Part:
    return Part(
        label=label, front=label, part="stile" if stick else "slab", material="hard maple",
        length=length * INCH, width=width * INCH, thickness=3 * INCH / 4, count=1,
    )  # fmt: skip


def at(number: int, length: int, width: int, **changes: object) -> OffcutAt:
    facts = {
        "material": "Hard Maple", "thickness": 3 * INCH / 4,
        "length": length * INCH, "width": width * INCH,
    }  # fmt: skip
    return OffcutAt(number, OffcutFacts(**facts | changes))  # type: ignore[arg-type]


def test_only_what_holds_a_part_is_offered_the_largest_first() -> None:
    sheets, sticks = cutting_groups([part("B1.a", 20, 10), part("B2.a", 24, 2, stick=True)])
    offcuts = [
        at(1, 20, 10),
        at(2, 30, 20),
        at(3, 19, 19),
        at(4, 10, 40),
        at(5, 30, 20, thickness=INCH / 2),
        at(6, 30, 20, material="birch"),
        at(7, 30, 2, is_stick=True),
        at(8, 23, 2, is_stick=True),
        at(9, 30, 3, is_stick=True),
    ]
    assert [each.number for each in fitting(offcuts, sheets)] == [2, 4, 1]
    assert [each.number for each in fitting(offcuts, sticks) if each.facts.is_stick] == [7]


def test_metric_shops_have_round_numbers() -> None:
    assert METRIC_NUMBERS["offcut_narrow"] == Mm(100)
