"""What the trade takes for granted of every kind. Common practice, no source."""

import pytest

from fronts.rules.kinds import CABINET_KINDS, CLOSINGS, FRONT_KINDS, ClosedBy, FrontKind


@pytest.mark.parametrize(
    ("trait", "kinds"),
    [
        ("opens", {"door", "drawer", "pull-out", "lift-up", "tip-out"}),
        ("swings", {"door", "lift-up"}),
        ("upright", {"door", "pull-out", "appliance-panel"}),
        ("pulled_high", {"pull-out"}),
        ("two_knobs_when_wide", {"drawer"}),
        ("named", {"pull-out", "fixed", "lift-up", "tip-out", "appliance-panel"}),
        ("tips", {"pull-out"}),
        ("needs_lift", {"lift-up"}),
        ("narrow_rails", {"drawer"}),
    ],
)
def test_fronts(trait: str, kinds: set[FrontKind]) -> None:
    assert {kind for kind, traits in FRONT_KINDS.items() if getattr(traits, trait)} == kinds


@pytest.mark.parametrize(
    ("trait", "closings"),
    [
        ("hinged", {"door"}),
        ("across", {"pair"}),
        ("on_box", {"drawer", "drawers", "pull-out"}),
    ],
)
def test_closings(trait: str, closings: set[ClosedBy]) -> None:
    assert {each for each, closing in CLOSINGS.items() if getattr(closing, trait)} == closings


def test_how_many_fronts_close_an_opening() -> None:
    one = {"door", "drawer", "pull-out", "fixed", "lift-up", "tip-out", "appliance-panel"}

    assert {each for each, closing in CLOSINGS.items() if closing.fronts == (1, 1)} == one
    assert CLOSINGS["pair"].fronts == (2, 2)
    assert CLOSINGS["drawers"].fronts[0] == 1
    assert CLOSINGS["open"].fronts == (0, 0)


def test_cabinets() -> None:
    """A tall one stands on the floor, is in the way of both rows, and can fall over."""
    tall = CABINET_KINDS["tall"]

    assert {kind for kind, traits in CABINET_KINDS.items() if traits.hangs} == {"wall"}
    assert {kind for kind, traits in CABINET_KINDS.items() if traits.tips} == {"tall"}
    assert tall.run == "standing"
    assert tall.ends == {"standing", "hung"}
