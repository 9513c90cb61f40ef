"""What keeps a front from being set off by a jig that is not quite its own."""

from dataclasses import replace

import pytest

from fronts.rules.kitchen import Cabinet, FrontFacts, HandlePlace, Opening
from fronts.rules.lengths import Mm
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Sides, Standard
from tests.rules.pull_outs import WIDE_PLAY, apart, plan_of, pull_out
from tests.rules.small_kitchens import (
    BOX,
    all_round,
    beside,
    cabinet,
    inch,
    inches,
    kitchen,
    opening,
)


def test_a_front_in_line_with_a_door_stays() -> None:
    """Its bottom would be seen to miss the door's by 1/64 in."""
    one = pull_out("B1", "W1", "1/2")
    two = pull_out("B2", "W2", "33/64")
    assert len(plan_of(kitchen(one, two)).jigs) == 1
    doors = [beside(each, label=f"D{each.label}", openings=(opening(),)) for each in (one, two)]
    assert len(plan_of(kitchen(one, doors[0], two, doors[1])).jigs) == 2


def test_fronts_of_one_line_move_together() -> None:
    """Three in a row move down by 1/64 in to where one elsewhere wants its jig."""
    row = pull_out("B1", "W1", "1/2")
    wanted = pull_out("B4", "W2", "33/64")
    others = [beside(row, label=f"B{n}", x=row.width * (n - 1)) for n in (2, 3)]
    few = plan_of(kitchen(row, *others, wanted))
    assert few.shifts == {"B4.a": inch("1/64")}
    elsewhere = [replace(wanted, label=f"C{n}", wall=f"V{n}") for n in range(4)]
    assert set(plan_of(kitchen(row, *others, *elsewhere)).shifts) == {"B1.a", "B2.a", "B3.a"}


@pytest.mark.parametrize(("gap", "jigs"), [("5/64", 1), ("1/16", 2)])
def test_a_least_gap_is_kept(gap: str, jigs: int) -> None:
    """An inset front whose gaps above and below are the least there may be moves neither way."""
    standard = Standard(mount="inset", inset_gap=all_round(gap), least_gap=inch("1/16"))
    of = apart("1/2", "33/64", standard=standard, step=inch("1/64"))
    assert len(plan_of(of).jigs) == jigs


def stack(label: str, wall: str, *rises: str) -> Cabinet:
    """A cabinet with drawers over one another, their boxes standing so high from the top."""
    boxes = [replace(BOX, height=inch("5"), rise=inch(rise)) for rise in rises]
    hole = opening("drawers", boxes=boxes, count=len(boxes))
    return cabinet(hole, label=label, wall=wall)


@pytest.mark.parametrize(
    ("gap", "moved"), [("1/8", "B1"), ("3/32", "B1"), ("11/128", "C1 C2"), ("1/16", "C1 C2")]
)
def test_each_of_two_fronts_takes_half_of_what_their_gap_spares(gap: str, moved: str) -> None:
    """Over the least gap of 1/16 in 1/8 in leaves each 1/32, 3/32 in 1/64, 11/128 in too little.

    Two elsewhere want a jig that is 1/64 in thicker than that of the upper of two drawers: the
    drawer comes down by as much where it may, else those two go up.
    """
    standard = Standard(overlay=all_round("1/2"), gap_between=inch(gap), least_gap=inch("1/16"))
    drawers = stack("B1", "W1", "16", "2")
    upper = schedule(kitchen(drawers, standard=standard)).fittings[0]
    assert upper.method == "jig"
    hole = _wanting(upper.jig_thickness + inch("1/64"))
    alone = [replace(pull_out(f"C{n}", f"V{n}", "1/2"), openings=hole) for n in (1, 2)]
    plan = plan_of(kitchen(drawers, *alone, standard=standard))
    assert len(plan.jigs) == 2
    assert " ".join(label.partition(".")[0] for label in plan.shifts) == moved


def _wanting(thickness: Mm) -> tuple[Opening, ...]:
    """A pull-out whose front laps 1/2 in below and so wants a jig this thick."""
    return (opening("pull-out", boxes=(replace(BOX, rise=thickness - inch("1/2")),)),)


@pytest.mark.parametrize(("shows", "jigs"), [("5/64", 1), ("1/16", 2)])
def test_what_shows_of_the_cabinet_stays_a_gap(shows: str, jigs: int) -> None:
    """A front that ends a least gap under its cabinet's top, and above its bottom, stays."""
    laps = Standard(overlay=all_round(str(inch("1 1/2") - inch(shows)) + " mm"))
    assert len(plan_of(apart("1/2", "33/64", standard=laps, step=inch("1/64"))).jigs) == jigs


@pytest.mark.parametrize(("lap", "jigs"), [("1/32", 1), ("1/128", 2)])
def test_a_front_that_laps_goes_on_to_lap(lap: str, jigs: int) -> None:
    """Their jigs are 1/32 in apart: of a lap of 1/128 in above and below nothing would be left."""
    laps = Standard(overlay=Sides(*inches("1/2", "1/2", lap, lap)))
    of = apart("1/2", "17/32", standard=laps, step=inch("1/64"), practice=WIDE_PLAY)
    assert len(plan_of(of).jigs) == jigs


def _drawer(label: str, wall: str, sizes: tuple[str, str, str], rise: str) -> Cabinet:
    """A drawer in an opening so high above its cabinet's bottom, its knob so high on its front."""
    y, tall, knob = sizes
    knobbed = FrontFacts(handles=(HandlePlace(inch("8"), inch(knob)),))
    box = replace(BOX, height=inch("5"), rise=inch(rise))
    hole = opening("drawer", y=inch(y), height=inch(tall), front=knobbed, boxes=(box,))
    return cabinet(hole, label=label, wall=wall)


@pytest.mark.parametrize(("knob", "jigs"), [("4 1/2", 2), ("5", 1), ("5 1/2", 2)])
def test_knobs_in_one_line_stay_in_it(knob: str, jigs: int) -> None:
    """Drawer fronts of two heights: of those whose knobs are level neither moves by itself.

    Nor where they miss by 1 in, and would by less: that is seen. At 1/2 in they miss anyway.
    """
    low = _drawer("B1", "N", ("4", "12", "6 1/2"), "1/2")
    high = _drawer("B2", "N", ("6", "8", knob), "33/64")
    assert len(plan_of(kitchen(low, replace(high, x=low.width))).jigs) == jigs
    assert len(plan_of(kitchen(low, replace(high, wall="S"))).jigs) == 1


def test_what_the_seasons_leave_is_halved() -> None:
    """A drawer front of solid wood, its grain lying: it grows up and down into its gaps."""
    solid = FrontFacts(material="hard maple", grain="level")
    gaps = Standard(mount="inset", inset_gap=all_round("5/64"), least_gap=inch("1/32"))
    box = replace(BOX, height=inch("5"))
    holes = [
        opening("drawer", height=inch("9"), front=solid, boxes=(replace(box, rise=inch(rise)),))
        for rise in ("1/2", "33/64")
    ]
    cabinets = [cabinet(hole, label=f"B{n}", wall=f"W{n}") for n, hole in enumerate(holes)]
    of = kitchen(*cabinets, standard=gaps, step=inch("1/64"))
    moves = [front.movement for front in schedule(of).fronts]
    assert all(move is not None and 0 < move.least_gap / 2 < inch("1/64") for move in moves)
    assert len(plan_of(of).jigs) == 2
    plain = [replace(one, openings=(replace(one.openings[0], fronts=(
        replace(one.openings[0].fronts[0], material="MDF"),)),)) for one in cabinets]  # fmt: skip
    assert len(plan_of(kitchen(*plain, standard=gaps, step=inch("1/64"))).jigs) == 1
