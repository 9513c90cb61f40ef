"""One trial: the tests that concern a file, run while that file has one thing changed."""

import os
import subprocess
import sys
import tempfile
from collections.abc import Sequence
from pathlib import Path

from shopjobs.bootstrap import ROOT
from tests.mutation.mutants import Mutant

SECONDS = 900
"""Tests that take longer run in circles, which is noticed."""
WIDER = {
    "fronts/rules": (("tests/rules",), ("tests/facts", "tests/jobfile")),
    "fronts/services": (
        ("tests/services", "tests/history"),
        ("tests/jobfile", "tests/pages", "tests/commands", "tests/test_two_shops.py"),
    ),
}
"""What is asked too, one after the other, where a file's own tests notice nothing."""


def concerned(path: str) -> list[list[str]]:
    """Return the tests that concern a file: its own, then its folder's, then what shows it."""
    file = Path(path)
    beside = ROOT / "tests" / file.parent.name
    own = sorted(str(each.relative_to(ROOT)) for each in beside.glob(f"test_{file.stem}*.py"))
    return [*([own] if own else []), *(list(tests) for tests in WIDER[str(file.parent)])]


def noticed(mutant: Mutant) -> bool:
    """Return whether any test that concerns the file fails with the change in it."""
    return not all(passes(tests, mutant) for tests in concerned(mutant.path))


def passes(tests: Sequence[str], mutant: Mutant) -> bool:
    """Return whether the tests pass with the mutant in the place of its file."""
    with tempfile.TemporaryDirectory() as folder:
        changed = Path(folder) / "changed.py"
        changed.write_text(mutant.source, encoding="utf-8")
        # Without what the surroundings want of pytest: other processes import the file unchanged.
        kept = {name: value for name, value in os.environ.items() if not name.startswith("PYTEST")}
        environ = {**kept, "DJANGO_SETTINGS_MODULE": "tests.settings", "TMPDIR": folder}
        command = [sys.executable, "-m", "tests.mutation.changed", mutant.path, str(changed)]
        try:
            done = subprocess.run(
                [*command, *tests], cwd=ROOT, env=environ, capture_output=True, timeout=SECONDS
            )
        except subprocess.TimeoutExpired:
            return False
    return done.returncode == 0
