"""Laws of merged jigs: no plan has fewer, and what they move spoils nothing."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import product

from hypothesis import given, settings
from hypothesis import strategies as st

from fronts.rules.fitting_results import Fitting
from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.merged_jigs import merged_jigs
from fronts.rules.practice import PRACTICE
from fronts.rules.results import Schedule
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Standard
from tests.rules.laws import KITCHEN_LAW
from tests.rules.pull_outs import WIDE_PLAY, apart, pull_out
from tests.rules.small_kitchens import (
    BOX,
    all_round,
    cabinet,
    inch,
    kitchen,
    opening,
)

INSET = Standard(mount="inset", inset_gap=all_round("1/8"))


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


def _in_rows(rows: Sequence[Sequence[tuple[int, str]]]) -> Kitchen:
    """A wall for each row of pull-outs: how high each box stands in 64ths, and its width."""
    return kitchen(*(
        pull_out(f"{at}{n}", f"W{at}", f"{rise}/64", width=width, x=inch("18") * n)
        for at, row in enumerate(rows)
        for n, (rise, width) in enumerate(row)
    ))  # fmt: skip


_ROWS = st.lists(
    st.lists(st.tuples(st.sampled_from(range(30, 35)), st.sampled_from(["14", "13"])), min_size=1,
             max_size=3),
    min_size=1, max_size=4,
)  # fmt: skip


@KITCHEN_LAW
@given(_ROWS)
def test_no_plan_is_better_where_rows_move_as_one(rows: list[list[tuple[int, str]]]) -> None:
    """Every shift that leaves all of a row jigs that can be made is tried with all others'."""
    of = _in_rows(rows)
    before = schedule(of)
    plan = merged_jigs(before, of)
    off = sum((abs(shift) for shift in plan.shifts.values()), Mm(0))
    assert (len(plan.jigs), off) == _best_of_rows(before, of)


def _best_of_rows(before: Schedule, of: Kitchen) -> tuple[int, Mm]:
    def same_width(one: Fitting) -> list[Fitting]:
        return [each for each in before.fittings if each.jig_length == one.jig_length]

    fronts: dict[str, list[Fitting]] = {}
    for front, fitting in zip(before.fronts, before.fittings, strict=True):
        fronts.setdefault(front.wall, []).append(fitting)
    shifts = [
        set.intersection(*(
            {each.jig_thickness - thick for thick in _could_be(each, same_width(each), of)}
            for each in row
        ))
        for row in fronts.values()
    ]  # fmt: skip
    costs = []
    for way in product(*shifts):
        jigs = {
            (each.jig_thickness - shift, each.jig_length)
            for row, shift in zip(fronts.values(), way, strict=True)
            for each in row
        }
        off = sum(
            (len(row) * abs(shift) for row, shift in zip(fronts.values(), way, strict=True)), Mm(0)
        )
        costs.append((len(jigs), off))
    return min(costs)
