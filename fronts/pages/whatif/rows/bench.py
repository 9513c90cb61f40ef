"""Jigs and shims that would be needed, or not any more, and for which fronts."""

from collections.abc import Iterator

from fronts.figures.jigs import made_jig_lines, shim_line
from fronts.figures.what_follows import Worked
from fronts.pages.whatif.rows.fronts import NOTHING, Cell
from fronts.rules.kitchen import Kitchen
from fronts.rules.merged_jigs import merged_jigs
from fronts.rules.results import Schedule


def bench_changes(was: Worked, now: Worked) -> list[Cell]:
    """Each that would serve other fronts, by its name; nothing where it would serve none."""
    before, after = dict(_served(*was)), dict(_served(*now))
    cells = [
        Cell(name, before.get(name, NOTHING), after.get(name, NOTHING))
        for name in dict.fromkeys([*before, *after])
    ]
    return [cell for cell in cells if cell.differs]


def _served(kitchen: Kitchen, schedule: Schedule) -> Iterator[tuple[str, str]]:
    """Each jig that is made and the shims of each thickness, with the fronts that they serve."""
    unit = schedule.job.unit
    for block in made_jig_lines(merged_jigs(schedule, kitchen), unit):
        yield f"jig {block.name}", ", ".join(block.fronts)
    for shim in schedule.shims:
        strip = shim_line(shim, unit)
        yield f"shims {strip.thickness}", ", ".join(strip.fronts)
