"""What is wrong with a box where it stands, at its limits."""

from dataclasses import replace

import pytest

from tests.rules.small_kitchens import BOX, cabinet, findings_of, inch, kitchen, opening

# An opening 15 × 27 1/2 in in a cabinet 24 in deep.
BOXES = [
    ("as wide as its opening", {"width": "15"}, 0),
    ("wider", {"width": "15 1/64"}, 1),
    ("against the right side", {"side_clearance": "1"}, 0),
    ("past the right side", {"side_clearance": "1 1/64"}, 1),
    ("up to the opening's top", {"rise": "3 1/2"}, 0),
    ("past its top", {"rise": "3 33/64"}, 1),
    ("as deep as its cabinet", {"depth": "24"}, 0),
    ("deeper", {"depth": "24 1/64"}, 1),
    ("wider and deeper", {"width": "16", "depth": "25"}, 2),
]


@pytest.mark.parametrize(
    ("changes", "told"), [row[1:] for row in BOXES], ids=[row[0] for row in BOXES]
)
def test_a_box_goes_where_it_was_measured(changes: dict[str, str], told: int) -> None:
    """Through its opening, and into its cabinet."""
    box = replace(BOX, **{name: inch(size) for name, size in changes.items()})  # type: ignore[arg-type]

    of = kitchen(cabinet(opening("pull-out", boxes=(box,))))

    assert len(findings_of(of, "box-does-not-fit")) == told


STACKS = [("apart", "8", []), ("touching", "7", []), ("overlapping", "6 1/2", ["1/2 in"])]


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
