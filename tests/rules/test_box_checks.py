"""What is wrong with a box where it stands, at its limits."""

import re
from dataclasses import replace

import pytest

from fronts.rules.kitchen import Measured
from tests.rules.small_kitchens import BOX, cabinet, findings_of, inch, kitchen, opening

# An opening 15 × 27 1/2 in in a cabinet 24 in deep.
BOXES: list[tuple[str, dict[str, str], list[str]]] = [
    ("as wide as its opening", {"width": "15"}, []),
    ("wider", {"width": "15 1/64"}, ["15 1/64 in wide, does not pass an opening of 15 in"]),
    ("against the right side", {"side_clearance": "1"}, []),
    ("past the right side", {"side_clearance": "1 1/64"},
     ["14 in wide, does not pass an opening of 15 in"]),
]  # fmt: skip


@pytest.mark.parametrize(
    ("changes", "told"), [row[1:] for row in BOXES], ids=[row[0] for row in BOXES]
)
def test_a_box_goes_where_it_was_measured(changes: dict[str, str], told: list[str]) -> None:
    """Through its opening, else it is said what is in whose way."""
    box = replace(BOX, **{name: inch(size) for name, size in changes.items()})  # type: ignore[arg-type]

    findings = findings_of(kitchen(cabinet(opening("pull-out", boxes=(box,)))), "box-does-not-fit")

    assert [re.sub("^B1.a: its box,? ", "", each.message) for each in findings] == [
        f"{words}." for words in told
    ]


def test_a_tapering_opening_is_as_wide_as_its_narrow_end() -> None:
    """The front laps the greater width; the box must pass the lesser."""
    taper = Measured(width_top=inch("15"), width_bottom=inch("14 3/4"))
    wide = opening("pull-out", measured=taper, boxes=(replace(BOX, width=inch("15 1/64")),))

    (found,) = findings_of(kitchen(cabinet(wide)), "box-does-not-fit")

    assert found.message.endswith("does not pass an opening of 14 3/4 in.")


STACKS: list[tuple[str, str, list[str]]] = [
    ("apart", "8", []),
    ("touching", "7", []),
    ("overlapping", "6 1/2", ["1/2 in"]),
    ("by a hair", "6 127/128", ["1/128 in"]),
]


@pytest.mark.parametrize(
    ("rise", "by"), [row[1:] for row in STACKS], ids=[row[0] for row in STACKS]
)
def test_boxes_of_a_stack_have_each_their_own_height(rise: str, by: list[str]) -> None:
    """The lower is 6 in high and hangs 1 in up, so the upper begins at 7 in or above."""
    lower = replace(BOX, height=inch("6"), rise=inch("1"))
    upper = replace(lower, rise=inch(rise))

    found = findings_of(
        kitchen(cabinet(opening("drawers", count=2, boxes=(upper, lower)))), "boxes-overlap"
    )

    assert [
        each.message.partition("overlap by ")[2].partition(" in height")[0] for each in found
    ] == by
