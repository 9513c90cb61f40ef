"""Inch and metric entry of the same kitchen agree, exactly."""

from dataclasses import replace
from fractions import Fraction
from pathlib import Path

import pytest
from hypothesis import assume, given

from fronts.jobfile import read, write
from fronts.rules.kinds import Unit
from fronts.rules.kitchen import Kitchen
from fronts.rules.opening_sizes import heights_at_ends, widths_at_ends
from fronts.rules.results import Schedule
from fronts.rules.schedule import schedule
from fronts.rules.tapering import SEEN
from tests.kitchen_files import SAMPLES
from tests.rules.laws import KITCHEN_LAW
from tests.rules.strategies import grids
from tests.strategies import kitchens


def _entered_in(unit: Unit, of: Kitchen) -> Kitchen:
    """The kitchen as read from a file that states it in this unit."""
    return read(write(replace(of, job=replace(of.job, unit=unit))))


def _worded_alike(found: Schedule) -> Schedule:
    """Without the words, which are in the job's unit, and what is bought by the foot or metre."""
    return replace(
        found,
        job=replace(found.job, unit="mm"),
        fronts=tuple(
            replace(e, hinge=e.hinge and replace(e.hinge, reason="")) for e in found.fronts
        ),
        fittings=tuple(replace(e, tape=replace(e.tape, why="")) for e in found.fittings),
        hardware=tuple(
            replace(e, item="", kind="", why="", length="") for e in found.hardware if not e.unit
        ),
        findings=tuple(replace(e, message="") for e in found.findings),
    )


def _tapers_between_the_limits(of: Kitchen) -> bool:
    """Whether a taper is seen in inches (1/16 in, 1.5875 mm) and is not in mm (1.6)."""
    ends = [
        pair
        for cabinet in of.cabinets
        for opening in cabinet.openings
        for pair in (widths_at_ends(opening), heights_at_ends(opening))
    ]
    return any(SEEN["in"] < abs(one - other) / 2 <= SEEN["mm"] for one, other in ends)


@KITCHEN_LAW
@given(kitchens() | grids())
def test_every_number_of_the_schedule_agrees(of: Kitchen) -> None:
    """Sizes, places, jigs, holes, parts, counts and findings; only the words differ."""
    assume(not _tapers_between_the_limits(of))
    inches, metric = (_entered_in(unit, of) for unit in ("in", "mm"))

    assert replace(inches, job=metric.job) == metric
    assert _worded_alike(schedule(inches)) == _worded_alike(schedule(metric))


@pytest.mark.parametrize("sample", SAMPLES, ids=[each.stem for each in SAMPLES])
def test_a_sample_kitchen_agrees(sample: Path) -> None:
    """The sample files, entered again in the other unit."""
    of = read(sample.read_text(encoding="utf-8"))
    other: Unit = "mm" if of.job.unit == "in" else "in"

    assert _worded_alike(schedule(of)) == _worded_alike(schedule(_entered_in(other, of)))


HALF_INCH_LAP = '"overlay": {"left": "%s", "right": "%s", "top": "%s", "bottom": "%s"}'
FILE = """{"version": 1, "job": {"number": "T-1", "unit": "%s", "step": "1/16 in"},
 "standard": {%s, "gap_between": "%s"},
 "cabinets": [{"label": "B1", "kind": "base", "build": "face-frame", "wall": "North", "x": "0",
  "y": "%s", "width": "%s", "height": "%s", "depth": "%s", "openings": [
   {"label": "a", "x": "%s", "y": "%s", "width": "%s", "height": "%s", "closed_by": "pair"}]}]}"""
SAID = {
    "in": ("1/2", "1/8", "4", "36", "30 1/2", "24", "1 1/2", "33 3/128"),
    "mm": ("12.7", "3.175", "101.6", "914.4", "774.7", "609.6", "38.1", "838.7953125"),
}


@pytest.mark.parametrize("unit", ["in", "mm"])
def test_the_same_pair_typed_by_two_shops(unit: str) -> None:
    """33 3/128 in is 838.7953125 mm (25.4 mm an inch): leaves of 16 15/16 in either way."""
    lap, between, y, width, height, depth, member, wide = SAID[unit]
    text = FILE % (unit, HALF_INCH_LAP % ((lap,) * 4), between, y, width, height, depth,
                   member, member, wide, depth)  # fmt: skip
    left, right = schedule(read(text)).fronts

    assert left.width == right.width == Fraction(271, 16) * Fraction("25.4")
    assert left.edges.left.overlay == (Fraction(1, 2) - Fraction(3, 256)) * Fraction("25.4")
