"""Jigs made as one: how few, what moves by how much, and what must not be spoilt by it."""

from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction
from itertools import product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from fronts.rules.fitting_results import Fitting
from fronts.rules.kitchen import Cabinet, FrontFacts, HandlePlace, Kitchen, Opening
from fronts.rules.lengths import Mm
from fronts.rules.merged_jigs import JigPlan, merged_jigs
from fronts.rules.practice import PRACTICE
from fronts.rules.results import Schedule
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Sides, Standard
from tests.rules.laws import KITCHEN_LAW
from tests.rules.pull_outs import apart, pull_out
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

PLAY = (inch("1/4") - Fraction(164, 1000) * inch("1")) / 2
"""0.043 in: a #8 screw of 0.164 in (ASME B18.6.1) in a hole of 1/4 in."""
WIDE_PLAY = replace(PRACTICE, hole_diameter=inch("3/8"))
"""Play of (3/8 − 0.164)/2 = 0.1055 in, of which a merged jig may take 0.0527 in."""
INSET = Standard(mount="inset", inset_gap=all_round("1/8"))


def plan_of(of: Kitchen) -> JigPlan:
    """The kitchen's jigs as they are made."""
    return merged_jigs(schedule(of), of)


def thicknesses(plan: JigPlan) -> list[Mm]:
    """How thick its jigs are."""
    return [jig.thickness for jig in plan.jigs]


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
    slide = {"slide": "bottom", "slide_width": inch("1 3/4"), "slide_height": inch("15/16")}
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


@st.composite
def _kitchens(draw: st.DrawFn) -> Kitchen:
    """Runs of pull-outs and stacks whose boxes stand nearly as high as one another."""
    cabinets: list[Cabinet] = []
    for wall in "NES":
        x = Mm(0)
        for _ in range(draw(st.integers(0, 3))):
            rises = [f"{draw(st.integers(30, 36))}/64" for _ in range(3)]
            width = draw(st.sampled_from(["14", "13"]))
            boxes = [replace(BOX, width=inch(width), height=inch("5"), rise=inch(r)) for r in rises]
            kind = draw(st.sampled_from(["pull-out", "drawers", "door"]))
            count = {"pull-out": 1, "drawers": 3, "door": 0}[kind]
            hole = opening(kind, boxes=boxes[:count], count=count or None)  # type: ignore[arg-type]
            raised = draw(st.sampled_from(["4", "4 1/64", "6"]))
            one = cabinet(hole, label=f"{wall}{len(cabinets)}", wall=wall, x=x, y=inch(raised))
            cabinets.append(one)
            x += one.width
    standard = draw(st.sampled_from([
        Standard(overlay=all_round("1/2"), gap_between=inch("5/64")),
        Standard(overlay=all_round("1 31/64"), least_gap=inch("1/128")),
        INSET,
        Standard(mount="inset", inset_gap=all_round("5/64")),
    ]))  # fmt: skip
    return kitchen(
        *cabinets, standard=standard, step=draw(st.sampled_from([inch("1/16"), inch("1/64")])),
        practice=draw(st.sampled_from([PRACTICE, WIDE_PLAY])),
    )  # fmt: skip


def _moved(of: Kitchen, shifts: dict[str, Mm]) -> Kitchen:
    """The kitchen with its fronts planned where their jigs set them."""
    labels = iter([front.label for front in schedule(of).fronts])
    return replace(
        of,
        cabinets=tuple(
            replace(one, openings=tuple(
                replace(hole, fronts=tuple(
                    replace(front, shift_y=front.shift_y + shifts.get(next(labels), Mm(0)))
                    for front in hole.fronts
                ))
                for hole in one.openings
            ))
            for one in of.cabinets
        ),
    )  # fmt: skip


@settings(KITCHEN_LAW, max_examples=120)
@given(_kitchens())
def test_what_is_moved_spoils_nothing(of: Kitchen) -> None:
    """The same kitchen, its fronts planned where their jigs set them, has the same findings.

    It wants exactly the jigs that are made, and no front is moved by more than its share.
    """
    before = schedule(of)
    plan = merged_jigs(before, of)
    after = schedule(_moved(of, dict(plan.shifts)))
    assert {(each.code, each.where) for each in after.findings} <= {
        (each.code, each.where) for each in before.findings
    }
    assert after.jigs == plan.jigs
    for label, shift in plan.shifts.items():
        fitting = before.fitting(label)
        assert fitting is not None
        assert 0 < abs(shift) <= fitting.play * of.practice.jig_play / 100


@KITCHEN_LAW
@given(_kitchens())
def test_never_more_jigs_than_the_schedule_has(of: Kitchen) -> None:
    """Every front stands on one, and what is spared is none of those that are made."""
    before = schedule(of)
    plan = merged_jigs(before, of)
    had = {(jig.thickness, jig.length) for jig in before.jigs}
    made = {(jig.thickness, jig.length) for jig in plan.jigs}
    assert len(made) <= len(had)
    assert {front for jig in plan.jigs for front in jig.fronts} == {
        front for jig in before.jigs for front in jig.fronts
    }
    assert not made & set(plan.spared)
    if len(made) == len(had):
        assert plan.shifts == {}


@KITCHEN_LAW
@given(st.lists(st.sampled_from(range(30, 37)), min_size=1, max_size=5), st.booleans())
def test_no_plan_is_better(sixty_fourths: list[int], fine: bool) -> None:
    """Every thickness that each front could be given is tried with every other's."""
    of = apart(*(f"{each}/64" for each in sixty_fourths), step=inch("1/64" if fine else "1/16"))
    before = schedule(of)
    plan = merged_jigs(before, of)
    off = sum((abs(shift) for shift in plan.shifts.values()), Mm(0))
    assert (len(plan.jigs), off) == _best_of_all(before, of)


def _best_of_all(before: Schedule, of: Kitchen) -> tuple[int, Mm]:
    wanted = [each.jig_thickness for each in before.fittings]
    ways = product(*(_could_be(each, before.fittings, of) for each in before.fittings))
    costs = (
        (len(set(way)), sum((abs(a - b) for a, b in zip(way, wanted, strict=True)), Mm(0)))
        for way in ways
    )
    return min(costs)


def _could_be(fitting: Fitting, fittings: Sequence[Fitting], of: Kitchen) -> list[Mm]:
    most = fitting.play / 2
    step = of.job.step
    on_step = [step * n for n in range(int(inch("2") / step))]
    found = {each.jig_thickness for each in fittings} | set(on_step)
    return [each for each in found if abs(each - fitting.jig_thickness) <= most]
