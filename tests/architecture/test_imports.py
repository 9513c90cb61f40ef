"""Who may import whom, as .importlinter says, and what the rules bring along."""

import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
PURE = ("fronts.rules", "fronts.cutting")
KEPT_OUT = ("django", "pint", "weasyprint")


def test_imports_keep_to_the_architecture() -> None:
    """Every module has its place, and imports only from below it."""
    # In a process of its own: the linter sets up logging for itself, and switches others' off.
    lint = "import sys; from importlinter.cli import lint_imports; sys.exit(lint_imports())"
    done = subprocess.run(
        [sys.executable, "-c", lint], cwd=ROOT, capture_output=True, text=True, check=False
    )

    assert done.returncode == 0, done.stdout


@pytest.mark.parametrize("package", PURE)
def test_what_is_pure_brings_nothing_along(package: str) -> None:
    """Importing all modules of a pure package loads neither Django, Pint nor WeasyPrint."""
    folder = ROOT / package.replace(".", "/")
    files = [file.relative_to(ROOT) for file in folder.rglob("*.py") if file.stem != "__init__"]
    modules = [".".join(file.with_suffix("").parts) for file in files]
    code = (
        f"import importlib, sys\n"
        f"for name in {modules!r}: importlib.import_module(name)\n"
        f"print(*[name for name in {KEPT_OUT!r} if name in sys.modules])\n"
    )

    done = subprocess.run(
        [sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True, check=False
    )

    assert modules
    assert done.returncode == 0, done.stderr
    assert done.stdout.split() == []
