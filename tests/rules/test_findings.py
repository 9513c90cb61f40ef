"""Every finding: the smallest kitchen that raises it, and a near miss that does not.

The limits are the house standard's and the shop's own numbers: common practice, no source,
but for the middle rail (Architectural Woodwork Standards, 1st ed. 2009).
"""

import ast
import inspect

import pytest
from hypothesis import given

from fronts.rules.findings import FindingWriter
from fronts.rules.kitchen import Kitchen
from fronts.rules.schedule import LEVELS, schedule
from fronts.rules.standard_keys import Standard
from tests.rules import (
    finding_cases_bands,
    finding_cases_boxes,
    finding_cases_fixing,
    finding_cases_handles,
    finding_cases_hinges,
    finding_cases_kinds,
    finding_cases_openings,
    finding_cases_runs,
    finding_cases_wall,
)
from tests.rules.finding_cases import Case, boxed, lapping, one
from tests.rules.laws import KITCHEN_LAW
from tests.rules.small_kitchens import codes_of, findings_of, inch, kitchen, opening
from tests.strategies import kitchens

CASES = [
    *finding_cases_openings.CASES,
    *finding_cases_wall.CASES,
    *finding_cases_runs.CASES,
    *finding_cases_boxes.CASES,
    *finding_cases_fixing.CASES,
    *finding_cases_hinges.CASES,
    *finding_cases_handles.CASES,
    *finding_cases_kinds.CASES,
    *finding_cases_bands.CASES,
]
each_case = pytest.mark.parametrize(
    "case", CASES, ids=[f"{each.code}: {each.says}" for each in CASES]
)


@each_case
def test_raised(case: Case) -> None:
    """The kitchen raises the finding, at its level, naming its place, in whole sentences."""
    found = findings_of(case.raises, case.code)

    assert (case.level, case.where) in [(each.level, each.where) for each in found]
    assert all(each.message.endswith((".", "?")) for each in found)


@each_case
def test_spared(case: Case) -> None:
    """The near miss does not raise it."""
    assert case.code not in codes_of(case.spares)


def test_every_finding_has_a_case() -> None:
    """Each code that the schedule can raise is in the tables above."""
    sources = [inspect.getsource(topic) for topic in FindingWriter.__mro__[1:-1]]
    calls = [
        node
        for source in sources
        for node in ast.walk(ast.parse(source))
        if isinstance(node, ast.Call)
    ]
    known = {
        call.args[1].value
        for call in calls
        if isinstance(call.func, ast.Name)
        and call.func.id == "Finding"
        and isinstance(call.args[1], ast.Constant)
    }

    assert {each.code for each in CASES} == known


def test_nothing_is_wrong_with_a_plain_kitchen() -> None:
    """A door by itself, a pull-out on its box, and no kitchen at all."""
    assert codes_of(finding_cases_wall.alone()) == []
    assert codes_of(boxed()) == []
    assert codes_of(kitchen()) == []


def test_the_stricter_least_gap_holds_between_two() -> None:
    """One of the two wants 3/16 in; the other would take 1/8."""
    (found,) = findings_of(finding_cases_wall.least_gaps_differ(), "fronts-too-close")

    assert found.message == "B1.a and B2.a are 1/8 in apart; the least gap is 3/16 in."


def test_a_pair_that_is_too_close_in_the_middle() -> None:
    """The gap between may be under the least gap too."""
    tight = Standard(gap_between=inch("1/32"), overlay=lapping(*["1/2"] * 4).overlay)

    (found,) = findings_of(one(opening("pair", standard=tight)), "fronts-too-close")

    assert found.where == ("B1.a.1", "B1.a.2")


def test_overlay_and_inset_fronts_are_not_held_against_each_other() -> None:
    """They lie in different planes; what one laps of the other's opening is said instead."""
    raised = next(each.raises for each in CASES if each.code == "laps-next-opening")

    assert "fronts-too-close" not in codes_of(raised)


@KITCHEN_LAW
@given(kitchens())
def test_findings_name_what_is_there(of: Kitchen) -> None:
    """Places are fronts, openings or cabinets of the kitchen; stops come first; none twice."""
    found = schedule(of)
    known = {each.label for each in found.fronts} | {each.label for each in of.cabinets}
    known |= {f"{each.label}.{o.label}" for each in of.cabinets for o in each.openings}
    levels = [LEVELS.index(each.level) for each in found.findings]

    assert levels == sorted(levels)
    assert len(set(found.findings)) == len(found.findings)
    for each in found.findings:
        assert set(each.where) <= known
        assert each.message.endswith((".", "?"))
