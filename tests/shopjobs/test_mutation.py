"""The trials that ask what the tests would notice."""

import ast
from dataclasses import replace

import pytest

from shopjobs.bootstrap import ROOT
from tests.mutation.mutants import mutants_of
from tests.mutation.trial import concerned, passes

RULE = "fronts/rules/opening_sizes.py"
SOURCE = '''
@frozen(slots=True)
def rule(width: Mm | None = 2, *, over: bool = False) -> Mm | None:
    """Words of 3."""
    if width is None or not over:
        return -1
    return min(width - 1, 5) if 0 < width <= 9 else "words of 3"
'''
CHANGES = [
    "2 -> 3", "False -> True",
    "width is None or not over -> width is None and (not over)",
    "width is None -> width is not None", "not over -> over", "-1 -> +1", "1 -> 2",
    "min(width - 1, 5) -> max(width - 1, 5)", "width - 1 -> width + 1", "1 -> 2", "5 -> 6",
    "0 < width <= 9 -> 0 <= width <= 9", "0 < width <= 9 -> 0 < width < 9", "0 -> 1", "9 -> 10",
]  # fmt: skip


def test_every_operator_number_and_truth_is_changed_once() -> None:
    """Each of them alone; types, decorators and words are left as they are."""
    found = mutants_of("rule.py", SOURCE)

    assert sorted(f"{each.before} -> {each.after}" for each in found) == sorted(CHANGES)
    assert len({each.source for each in found}) == len(CHANGES)
    assert {each.line for each in found} == {3, 5, 6, 7}


@pytest.mark.parametrize("wrong", [False, True])
def test_a_change_of_a_rule_is_noticed(wrong: bool) -> None:
    """The rule's own tests pass with the rule as it is, and fail where it leans the other way."""
    source = (ROOT / RULE).read_text(encoding="utf-8")
    leaning = "diagonal_1 * diagonal_1 - diagonal_2 * diagonal_2"
    mutant = next(each for each in mutants_of(RULE, source) if each.before == leaning)
    if not wrong:
        mutant = replace(mutant, source=ast.unparse(ast.parse(source)))

    own, wider, _ = concerned(RULE)

    assert own == ["tests/rules/test_opening_sizes.py"]
    assert wider == ["tests/rules"]
    assert passes(own, mutant) is not wrong
