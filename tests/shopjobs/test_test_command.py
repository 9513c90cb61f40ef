"""How the suite is started."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from shopjobs.bootstrap import ROOT
from shopjobs.management.commands.test import explored, spread

LAW = """
from hypothesis import given, strategies


@given(strategies.integers(0, 10**9))
def test_law(number: int) -> None:
    print("tried", number)
"""


@pytest.mark.parametrize(
    ("words", "pytests"),
    [
        ([], []),
        (["tests/rules", "-k", "door"], ["tests/rules", "-k", "door"]),
        (["--explore"], ["--hypothesis-profile=explore", "--hypothesis-seed=7"]),
        (["-x", "--explore=12"], ["-x", "--hypothesis-profile=explore", "--hypothesis-seed=12"]),
    ],
)
def test_what_is_asked_becomes_pytests_words(words: list[str], pytests: list[str]) -> None:
    """Only `--explore` is ours; everything else goes on as it is."""
    assert explored(words, 7) == pytests


@pytest.mark.parametrize(
    ("words", "cores", "processes"),
    [
        ([], 2, ["--numprocesses=2", "--dist=worksteal"]),
        (["--durations=40", "-x"], 4, ["--numprocesses=4", "--dist=worksteal"]),
        ([], 1, []),
        (["tests/rules"], 2, []),
        (["-k", "door"], 2, []),
        (["-n3"], 2, []),
        (["--pdb"], 2, []),
    ],
)
def test_the_whole_suite_is_spread_over_the_cores(
    words: list[str], cores: int, processes: list[str]
) -> None:
    """What is named, or looked into by hand, runs in one process."""
    assert spread(words, cores) == processes


@pytest.fixture
def law(tmp_path: Path) -> Path:
    """A property test of its own, beside the suite's settings."""
    (tmp_path / "conftest.py").write_text("from tests.conftest import *  # noqa: F403\n", "utf-8")
    file = tmp_path / "test_law.py"
    file.write_text(LAW, "utf-8")
    return file


def tried(law: Path, *words: str) -> list[str]:
    """Run the law and return the examples that it tried, in their order."""
    command = [sys.executable, "-m", "pytest", "-s", "-q", "-p", "no:cacheprovider", str(law)]
    environ = {name: value for name, value in os.environ.items() if not name.startswith("PYTEST")}
    done = subprocess.run(
        [*command, *words], cwd=ROOT, env=environ, capture_output=True, text=True, check=True
    )
    return [line for line in done.stdout.splitlines() if "tried" in line]


@pytest.mark.thorough
def test_the_same_examples_are_tried_each_time(law: Path) -> None:
    """Two runs of the suite are one, whatever else is loaded; a seed gives others."""
    usual = tried(law)

    assert tried(law, "-p", "fronts.rules.schedule", "-p", "fronts.cutting.plan") == usual
    assert tried(law, *explored(["--explore"], 3)) != usual
