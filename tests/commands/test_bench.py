"""`manage.py bench` and the table that it prints."""

import subprocess
import sys
from pathlib import Path

import pytest

from tests.benchmarks.figures import Figure, table

ROOT = Path(__file__).resolve().parents[2]


def bench(*names: str) -> "subprocess.CompletedProcess[str]":
    """Run the command as a person does."""
    command = [sys.executable, "manage.py", "bench", *names]
    return subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False)


@pytest.mark.thorough
def test_a_benchmark_prints_what_it_measured_beside_its_target() -> None:
    """Each line says what, how much, how much it may be, and what part of that it is."""
    done = bench("schedule")

    assert done.returncode == 0, done.stderr
    head, first, *_ = done.stdout.splitlines()
    assert head.split() == ["what", "measured", "target", "ratio"]
    assert first.startswith("schedule of 30 cabinets")
    assert " 25 ms " in first


def test_a_name_that_is_none_is_answered_with_those_there_are() -> None:
    """Nothing is measured."""
    done = bench("kettle")

    assert (done.returncode, done.stdout) == (2, "")
    assert done.stderr.startswith("No benchmark kettle; there are: ")
    assert "schedule" in done.stderr


def test_the_table_says_what_misses_its_target() -> None:
    """A ratio above 1 is no success, and is not left to be noticed."""
    figures = [
        Figure("planing", 30, "ms", 20),
        Figure("sawing", 12.5, "ms", 25),
        Figure("sweeping", 1234, "ms"),
    ]

    assert table(figures).splitlines() == [
        "what      measured  target  ratio",
        "planing      30 ms   20 ms  1.50 missed",
        "sawing     12.5 ms   25 ms  0.50",
        "sweeping  1,234 ms       –  –",
    ]
