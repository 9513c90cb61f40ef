"""What belongs together is given whole or not at all, and each missing part is named."""

import pytest

from fronts.rules.facts import incomplete
from fronts.rules.kitchen import DoorOnHand
from fronts.rules.standard_keys import Standard

GIVEN = 3


def missing(kind: type, *given: str) -> set[str]:
    """The columns that are asked for where these are given."""
    return {name for name, _ in incomplete(kind, dict.fromkeys(given, GIVEN))}


@pytest.mark.parametrize(
    ("given", "asked"),
    [
        ([], set()),
        (["overlay_left", "overlay_top"], {"overlay_right", "overlay_bottom"}),
        (["reveal_between"], {"reveal_left", "reveal_right", "reveal_top", "reveal_bottom"}),
        (["inset_left", "inset_right", "inset_top"], {"inset_bottom"}),
        (["overlay_left", "overlay_right", "overlay_top", "overlay_bottom"], set()),
    ],
)
def test_a_standard_gives_each_side_or_none(given: list[str], asked: set[str]) -> None:
    """An overlay, a reveal or an inset gap."""
    assert missing(Standard, *given) == asked


@pytest.mark.parametrize(
    ("given", "asked"),
    [
        (["knob_x"], {"knob_y"}),
        (["knob_y"], {"knob_x"}),
        (["knob_diameter"], {"knob_x", "knob_y"}),
        (["knob_x", "knob_y"], set()),
    ],
)
def test_a_knob_hole_has_both_its_places(given: list[str], asked: set[str]) -> None:
    """Its diameter has a usual size and need not be given."""
    assert missing(DoorOnHand, *given) == asked


def test_the_message_says_what_to_give() -> None:
    """In the words of the group."""
    told = dict(incomplete(Standard, {"overlay_left": GIVEN}))

    assert told["overlay_top"] == "give every part of the overlay, or none of it"
