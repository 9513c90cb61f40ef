"""How a page's views read: fetch, form, one service, answer."""

import ast
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from django.template.loader import get_template

ROOT = Path(__file__).resolve().parents[2]
PAGES = ROOT / "fronts" / "pages"
THE_WAY = PAGES / "shared" / "form_answer.py"
LONGEST_VIEW = 25
TOLD = {"AskFirst", "Refused", "ValidationError"}
"""What services raise for people; only the one way puts it into an answer."""


def _modules() -> Iterator[tuple[Path, ast.Module]]:
    for file in sorted(PAGES.rglob("*.py")):
        yield file, ast.parse(file.read_text(encoding="utf-8"))


def _is_view(file: Path) -> bool:
    return "views" in file.relative_to(PAGES).with_suffix("").parts


def test_views_are_short() -> None:
    """What a view does can be seen at once."""
    views = [
        (file, node)
        for file, tree in _modules()
        if _is_view(file)
        for node in ast.walk(tree)
        if isinstance(node, ast.FunctionDef) and node.decorator_list
    ]

    assert len(views) > 20
    assert [
        f"{file.relative_to(ROOT)}: {node.name}"
        for file, node in views
        if (node.end_lineno or 0) - node.lineno >= LONGEST_VIEW
    ] == []


def test_only_the_one_way_checks_a_sent_form() -> None:
    """No view asks a form by itself whether it is valid, but for drawings that keep nothing."""
    found = [
        str(file.relative_to(PAGES))
        for file, tree in _modules()
        if _is_view(file)
        for node in ast.walk(tree)
        if isinstance(node, ast.Attribute) and node.attr == "is_valid"
    ]

    assert sorted(set(found)) == ["measure/views/preview.py"]


def test_only_the_one_way_answers_what_services_refuse() -> None:
    """No view catches a refusal: it would answer otherwise than other pages do."""
    found = [
        f"{file.relative_to(PAGES)}: {caught}"
        for file, tree in _modules()
        if _is_view(file)
        for node in ast.walk(tree)
        if isinstance(node, ast.ExceptHandler) and not _reraises(node)
        for caught in _names(node)
        if caught in TOLD
    ]

    assert found == []
    caught = {
        name
        for node in ast.walk(ast.parse(THE_WAY.read_text(encoding="utf-8")))
        if isinstance(node, ast.ExceptHandler)
        for name in _names(node)
    }
    assert caught == TOLD


def test_each_part_that_a_view_answers_with_is_in_its_template() -> None:
    """One that is not would answer 500, only where htmx asks."""
    asked = {each for _, tree in _modules() for each in _parts(tree)}

    assert len(asked) > 9
    for template, part in sorted(asked):
        get_template(f"{template}#{part}")  # Raises where there is none.


def _parts(tree: ast.Module) -> Iterator[tuple[str, str]]:
    """The template and part of each answer whose names stand in the module."""
    named = {
        target.id: node.value.value
        for node in tree.body
        if isinstance(node, ast.Assign) and isinstance(node.value, ast.Constant)
        for target in node.targets
        if isinstance(target, ast.Name)
    }
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and getattr(node.func, "id", "") == "render_page":
            parts = [each.value for each in node.keywords if each.arg == "partial"]
            said = [_said(each, named) for each in (node.args[1], *parts)]
            if parts and all(said):
                yield said[0], said[1]


def _said(node: ast.expr, named: dict[str, Any]) -> Any:
    """What a literal says, or a name of the module."""
    return named.get(node.id) if isinstance(node, ast.Name) else getattr(node, "value", None)


def _reraises(handler: ast.ExceptHandler) -> bool:
    """A refusal may be put into the page's own words, as long as it stays one."""
    return any(isinstance(node, ast.Raise) for node in ast.walk(handler))


def _names(handler: ast.ExceptHandler) -> Iterator[str]:
    for node in ast.walk(handler.type) if handler.type else ():
        if isinstance(node, ast.Name):
            yield node.id
