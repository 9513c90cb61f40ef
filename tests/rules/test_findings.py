"""Every finding: the smallest kitchen that raises it, and a near miss that does not.

The limits are the house standard's and the shop's own numbers: common practice, no source,
but for the middle rail (Architectural Woodwork Standards, 1st ed. 2009).
"""

import ast
from pathlib import Path

import pytest
from hypothesis import given

from fronts import rules
from fronts.rules.kitchen import Kitchen
from fronts.rules.schedule import LEVELS, schedule
from fronts.rules.standard_keys import Standard
from tests.rules import (
    finding_cases_bands,
    finding_cases_boxes,
    finding_cases_fixing,
    finding_cases_grain,
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
from tests.strategies_of_hardware import equipped_kitchens

RULES = Path(*rules.__path__)
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
    *finding_cases_grain.CASES,
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
    """The near miss does not raise it, or where the case says so at a lower level only."""
    levels = [finding.level for finding in findings_of(case.spares, case.code)]

    assert levels == ([case.eased] if case.eased else [])


def test_every_finding_has_a_case_at_each_of_its_levels() -> None:
    """Whatever the rules can raise is in the tables above, with its near miss."""
    raised = {
        (level, ast.literal_eval(code))
        for file in RULES.glob("*.py")
        for node in ast.walk(ast.parse(file.read_text(encoding="utf-8")))
        if isinstance(node, ast.Call) and ast.unparse(node.func) == "Finding"
        for (where, code) in [node.args[:2]]
        for level in _levels_in(where)
    }

    assert {(case.level, case.code) for case in CASES} == raised


def _levels_in(said: ast.expr) -> set[str]:
    """What a level is written as: one, one of two, or a name that stands for stop or check."""
    words = {node.value for node in ast.walk(said) if isinstance(node, ast.Constant)}
    return {str(word) for word in words} & set(LEVELS) or {"stop", "check"}


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
@given(kitchens() | equipped_kitchens())
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
