"""The contributor guide's table of places stays true."""

import re
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
GUIDE = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
TABLE = GUIDE.partition("## Where is")[2].partition("\n## ")[0]
PLACES = re.findall(r"`((?:fronts|shopjobs|fixtures|templates|tests)[\w./-]*)`", TABLE)


def test_every_rule_is_in_the_table_once() -> None:
    """Every file of the rules has one line that says what it is for."""
    rules = {f"fronts/rules/{path.name}" for path in (ROOT / "fronts/rules").glob("[a-z]*.py")}
    named = [place for place in PLACES if place.startswith("fronts/rules/")]

    assert sorted(named) == sorted(rules)


def test_every_place_in_the_table_exists() -> None:
    """Every path that the table names is there."""
    assert len(PLACES) > 0
    assert [place for place in PLACES if not (ROOT / place).exists()] == []


def test_every_direct_dependency_has_its_line() -> None:
    """Each package that the project asks for says in the guide what it is for."""
    wanted = re.findall(r'^  "([\w-]+)[\[=]', (ROOT / "pyproject.toml").read_text(), re.MULTILINE)
    named = {name.lower() for name in re.findall(r"[\w-]+", GUIDE)}

    assert [name for name in wanted if name.lower() not in named] == []
