"""Stays and lifts: the first that carries weight × height. The usual two are invented."""

from dataclasses import replace
from fractions import Fraction

import pytest

from fronts.rules.items import Hardware, LiftItem
from fronts.rules.kinds import ClosedBy, Hinged
from fronts.rules.kitchen import Kitchen
from fronts.rules.lifts import choose_lift, moment
from fronts.rules.schedule import schedule
from tests.rules.finding_cases import one
from tests.rules.small_kitchens import codes_of, inch, only_front, opening

SMALL = LiftItem("L-1", Fraction(0), Fraction(2), "gas stay")
LARGE = LiftItem("L-2", Fraction(2), Fraction(5))


def _lifted(
    *lifts: LiftItem, closed_by: ClosedBy = "lift-up", hinged: Hinged | None = None
) -> Kitchen:
    """A front 16 in wide and 28 1/2 in high."""
    of = opening(closed_by, hinged=hinged)
    return replace(one(of), hardware=Hardware(lifts=lifts))


def test_it_carries_kilograms_by_metres() -> None:
    """4 kg, half a metre high."""
    assert moment(Fraction(4), inch("25 1/2") / inch("25 1/2") * 500) == 2


@pytest.mark.parametrize(
    ("carried", "code"),
    [("0", "L-1"), ("2", "L-1"), ("2.001", "L-2"), ("5", "L-2"), ("5.001", None)],
)
def test_the_first_that_serves(carried: str, code: str | None) -> None:
    """Both ends of a range belong to it, and the shop's order decides."""
    chosen = choose_lift(Fraction(carried), (SMALL, LARGE))

    assert (chosen.code if chosen else None) == code


def test_the_line_names_the_shops_item() -> None:
    """Once a front, by its code and name."""
    of = _lifted(LiftItem("L-1", Fraction(0), Fraction(50), "gas stay"))
    (line,) = [need for need in schedule(of).hardware if need.kind == "lift"]

    assert (line.item, line.code, line.need) == ("L-1 gas stay", "L-1", 1)
    assert line.fronts == ("B1.a",)


def test_a_shop_without_a_list_has_the_plain_ones() -> None:
    """By what the front weighs and how high it is."""
    of = _lifted()
    front = only_front(of)
    wanted = "stay" if front.weight_kg * front.height <= 3000 else "lift"

    assert [need.item for need in schedule(of).hardware if need.kind == "lift"] == [wanted]


def test_a_door_hinged_at_its_top_has_one_too() -> None:
    """Where one serves; a door at its side has none."""
    strong = LiftItem("L-1", Fraction(0), Fraction(50))
    at_top = _lifted(strong, closed_by="door", hinged="top")
    at_side = _lifted(strong, closed_by="door", hinged="left")

    assert "lift" in [need.kind for need in schedule(at_top).hardware]
    assert "lift" not in [need.kind for need in schedule(at_side).hardware]


def test_only_what_lifts_up_is_stopped() -> None:
    """A door that is hinged at its top may be held open otherwise."""
    weak = LiftItem("L-1", Fraction(0), Fraction("0.1"))

    assert "lift-does-not-serve" in codes_of(_lifted(weak))
    assert codes_of(_lifted(weak, closed_by="door", hinged="top")) == codes_of(
        _lifted(closed_by="door", hinged="top")
    )
