"""Jigs and shims that would be needed, or not any more, and for which fronts."""

from collections.abc import Iterator

from fronts.figures.jigs import jig_line, shim_line
from fronts.pages.whatif.rows.fronts import NOTHING, Cell
from fronts.rules.results import Schedule


def bench_changes(was: Schedule, now: Schedule) -> list[Cell]:
    """Each that would serve other fronts, by its name; nothing where it would serve none."""
    before, after = dict(_served(was)), dict(_served(now))
    cells = [
        Cell(name, before.get(name, NOTHING), after.get(name, NOTHING))
        for name in dict.fromkeys([*before, *after])
    ]
    return [cell for cell in cells if cell.differs]


def _served(schedule: Schedule) -> Iterator[tuple[str, str]]:
    """Each jig and the shims of each thickness, with the fronts that they are for."""
    unit = schedule.job.unit
    for jig in schedule.jigs:
        block = jig_line(jig, unit)
        yield f"jig {block.name}", ", ".join(block.fronts)
    for shim in schedule.shims:
        strip = shim_line(shim, unit)
        yield f"shims {strip.thickness}", ", ".join(strip.fronts)
