"""Jigs made as one: how few, what moves by how much, and what must not be spoilt by it."""

from dataclasses import replace
from fractions import Fraction
from typing import Any

import pytest

from fronts.rules.practice import PRACTICE
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Standard
from tests.rules.pull_outs import apart, plan_of, pull_out, thicknesses
from tests.rules.small_kitchens import (
    BOX,
    all_round,
    inch,
    kitchen,
    opening,
)

PLAY = (inch("1/4") - Fraction(164, 1000) * inch("1")) / 2
"""0.043 in: a #8 screw of 0.164 in (ASME B18.6.1) in a hole of 1/4 in."""


def test_two_that_differ_by_less_than_the_play_are_one() -> None:
    """1/64 in apart: the second front sits that much higher, on the first's jig."""
    plan = plan_of(apart("1/2", "33/64"))
    assert thicknesses(plan) == [inch("1")]
    assert plan.jigs[0].fronts == ("B1.a", "B2.a")
    assert plan.shifts == {"B2.a": inch("1/64")}
    assert plan.spared == ((inch("1 1/64"), inch("14")),)
    assert plan.exact


def test_more_than_a_share_of_the_play_stays_two() -> None:
    """1/32 in is within the play of 0.043 in, but more than the half that a jig may take."""
    assert PLAY / 2 < inch("1/32") < PLAY
    plan = plan_of(apart("1/2", "17/32"))
    assert len(plan.jigs) == 2
    assert plan.shifts == {}
    assert plan.spared == ()


def test_the_share_is_the_shop_s_to_say() -> None:
    """With all of the play they are one; with none of it not even 1/64 in is taken."""
    all_of_it = replace(PRACTICE, jig_play=Fraction(100))
    none_of_it = replace(PRACTICE, jig_play=Fraction(0))
    assert len(plan_of(apart("1/2", "17/32", practice=all_of_it)).jigs) == 1
    assert len(plan_of(apart("1/2", "33/64", practice=none_of_it)).jigs) == 2


def test_one_on_the_shop_s_step_between_both() -> None:
    """1/32 in apart, neither serves the other; the mark of the rule between them serves both."""
    plan = plan_of(apart("1/2", "17/32", step=inch("1/64")))
    assert thicknesses(plan) == [inch("1 1/64")]
    assert plan.shifts == {"B1.a": inch("-1/64"), "B2.a": inch("1/64")}
    assert plan.spared == ((inch("1"), inch("14")), (inch("1 1/32"), inch("14")))


def test_a_jig_stays_as_long_as_its_box_is_wide() -> None:
    """Its ends show the side offset."""
    of = kitchen(pull_out("B1", "W1", "1/2"), pull_out("B2", "W2", "33/64", width="13"))
    assert len(plan_of(of).jigs) == 2


def test_the_least_shift_of_all() -> None:
    """Two want one jig and one another: the one moves, whichever stands first."""
    assert plan_of(apart("33/64", "1/2", "1/2")).shifts == {"B1.a": inch("1/64")}
    assert plan_of(apart("1/2", "33/64", "33/64")).shifts == {"B1.a": inch("-1/64")}


def test_a_line_over_boxes_of_two_widths_moves_as_a_whole() -> None:
    """One jig is spared for each width; both fronts sit higher by as much."""
    row = pull_out("B1", "W1", "33/64")
    wider = replace(pull_out("B2", "W1", "33/64", width="13"), x=row.width)
    elsewhere = [
        pull_out(f"C{n}{width}", f"V{n}{width}", "1/2", width=width)
        for n in range(2)
        for width in ("14", "13")
    ]
    plan = plan_of(kitchen(row, wider, *elsewhere))
    assert len(plan.jigs) == 2
    assert plan.shifts == {"B1.a": inch("1/64"), "B2.a": inch("1/64")}


def test_two_of_one_line_are_never_made_one() -> None:
    """They would miss their line by what their jigs differ."""
    row = pull_out("B1", "W1", "1/2")
    assert len(plan_of(kitchen(row, replace(pull_out("B2", "W1", "33/64"), x=row.width))).jigs) == 2


def test_packers_are_merged_with_packers_and_stay_packers() -> None:
    """Under 1/4 in no jig is made; packers serve boxes of any width."""
    laps = Standard(overlay=all_round("3/16"))
    of = kitchen(
        pull_out("B1", "W1", "1/32"), pull_out("B2", "W2", "3/64", width="13"),
        pull_out("B3", "W3", "1/16"), standard=laps,
    )  # fmt: skip
    assert [each.method for each in schedule(of).fittings] == ["packers", "packers", "jig"]
    plan = plan_of(of)
    assert [each.fronts for each in plan.packers] == [("B1.a", "B2.a")]
    assert thicknesses(plan) == [inch("1/4")]


def test_a_slot_never_cuts_a_jig_through() -> None:
    """1 in would end in the slot of 1 in; 1 1/64 in, which has two fronts' shift, does not."""
    slide: dict[str, Any] = {
        "slide": "bottom",
        "slide_width": inch("1 3/4"),
        "slide_height": inch("15/16"),
    }
    cabinets = [
        pull_out("B1", "W1", "1/2"),
        replace(
            pull_out("B2", "W2", "33/64"),
            openings=(opening("pull-out", boxes=(replace(BOX, rise=inch("33/64"), **slide),)),),
        ),
    ]
    cabinets.append(pull_out("B3", "W3", "1/2"))
    plan = plan_of(kitchen(*cabinets))
    assert thicknesses(plan) == [inch("1 1/64")]
    assert plan.jigs[0].slot is not None
    assert plan.shifts.keys() == {"B1.a", "B3.a"}


def test_too_many_ways_leave_lines_as_planned(monkeypatch: pytest.MonkeyPatch) -> None:
    """The plan says that it is not known to be the fewest."""
    row = pull_out("B1", "W1", "33/64")
    wider = replace(pull_out("B2", "W1", "33/64", width="13"), x=row.width)
    of = kitchen(row, wider, pull_out("C1", "V1", "1/2"), pull_out("C2", "V2", "1/2", width="13"))
    assert plan_of(of).exact
    monkeypatch.setattr("fronts.rules.merged_jigs.MOST_WAYS", 1)
    plan = plan_of(of)
    assert not plan.exact
    assert not {"B1.a", "B2.a"} & plan.shifts.keys()
