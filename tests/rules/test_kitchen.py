"""The snapshot: frozen, comparable, and read by side."""

from dataclasses import FrozenInstanceError, replace

import pytest
from hypothesis import given

from fronts.rules.kinds import SIDES
from fronts.rules.kitchen import Kitchen
from fronts.rules.standard_keys import Sides
from tests.rules.laws import KITCHEN_LAW
from tests.rules.small_kitchens import cabinet, inch, kitchen, opening
from tests.strategies import kitchens


def test_sides_are_read_by_name() -> None:
    """As seen from the front."""
    sides = Sides("l", "r", "t", "b")

    assert [sides[side] for side in SIDES] == ["l", "r", "t", "b"]


def test_a_snapshot_cannot_be_changed() -> None:
    """What a schedule was worked out from stays what it was."""
    of = kitchen(cabinet(opening()))

    with pytest.raises(FrozenInstanceError):
        of.cabinets[0].width = inch("1")  # type: ignore[misc]


@KITCHEN_LAW
@given(kitchens())
def test_equal_kitchens_are_one_key(of: Kitchen) -> None:
    """A snapshot can be kept by what it says."""
    assert hash(replace(of)) == hash(of)
    assert {of: "kept"}[replace(of)] == "kept"
