"""What a kind is like is asked of its row in the table, never told from its word."""

import ast
from pathlib import Path

import pytest

from fronts.rules import kinds

ROOT = Path(__file__).resolve().parents[2]
TABLES = (
    kinds.CLOSINGS, kinds.FRONT_KINDS, kinds.CABINET_KINDS, kinds.CABINET_BUILDS,
    kinds.FRONT_BUILDS, kinds.MOUNTS,
)  # fmt: skip
WORDS = {str(word) for table in TABLES for word in table}
HOME = ROOT / "fronts" / "rules" / "kinds.py"


def _words(node: ast.expr) -> set[str]:
    """The kinds that an expression spells out, where it spells out nothing but kinds."""
    spelt = {
        part.value
        for part in ast.walk(node)
        if isinstance(part, ast.Constant) and isinstance(part.value, str)
    }
    return spelt if spelt <= WORDS else set()


def comparisons(source: str) -> list[str]:
    """The lines of a file that compare something with the word of a kind."""
    lines = source.splitlines()
    found = []
    for node in ast.walk(ast.parse(source)):
        sides: list[ast.expr] = []
        if isinstance(node, ast.Compare):
            sides = [node.left, *node.comparators]
        elif isinstance(node, ast.MatchValue):
            sides = [node.value]
        if any(_words(side) for side in sides):
            found.append(lines[sides[0].lineno - 1].strip())
    return found


def test_no_kind_is_told_by_its_word() -> None:
    """A new kind is a new row: nothing but the table itself knows kinds by their words."""
    files = [
        path
        for path in (ROOT / "fronts").rglob("*.py")
        if path != HOME and "migrations" not in path.parts
    ]

    found = [
        f"{path.relative_to(ROOT)}: {line}"
        for path in files
        for line in comparisons(path.read_text(encoding="utf-8"))
    ]

    assert found == []


@pytest.mark.parametrize(
    "line",
    ['if kind == "fixed": pass', 'kind in ("door", "pair")', '"wall" != kind', '"tall" in kinds'],
)
def test_a_comparison_with_a_word_is_noticed(line: str) -> None:
    """Alone, among several, and on either side."""
    assert comparisons(line) == [line]


def test_a_case_is_a_comparison_too() -> None:
    """So is a branch that matches the word."""
    assert comparisons('match kind:\n    case "open":\n        pass') == ['case "open":']
