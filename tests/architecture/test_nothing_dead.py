"""Nothing stands in the production code that only a test, or nobody, asks for."""

import ast
import re
from collections import Counter
from collections.abc import Iterator

from tests.architecture.files import sources, texts

PRODUCTION = ("fronts", "shopjobs", "templates", "static", "fixtures", "manage.py", ".importlinter")
LOOKED_UP = {"settings.py", "urls.py", "apps.py"}
"""Files whose names Django looks up by itself."""
WORD = re.compile(r"\w+")


def _named(module: ast.Module) -> Iterator[str]:
    """What a module names at its top: functions, classes, constants."""
    for node in module.body:
        match node:
            case ast.FunctionDef(name=name) | ast.ClassDef(name=name):
                yield name
            case ast.Assign(targets=[ast.Name(id=name)]) | ast.AnnAssign(target=ast.Name(id=name)):
                yield name


def test_every_name_is_asked_for() -> None:
    """What a module names is mentioned once more, by the production code itself.

    A word that means several things passes: this finds what is left behind, not every case.
    """
    mentioned = Counter(
        word
        for path, text in texts()
        if path.parts[0] in PRODUCTION and "migrations" not in path.parts
        for word in WORD.findall(text)
    )
    dead = [
        f"{path}: {name}"
        for path, text in sources("fronts", "shopjobs")
        if path.name not in LOOKED_UP
        for name in _named(ast.parse(text))
        if mentioned[name] == 1
    ]

    assert dead == []
