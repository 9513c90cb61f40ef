"""Where cabinets stand, how long each run of a wall is, and what it leaves of the wall.

A run is as long as the end of the last thing in it is from the wall's left end.
"""

from collections.abc import Iterator, Mapping, Sequence

from fronts.rules.findings import FindingWriter
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.results import Finding
from fronts.rules.runs import Placed
from fronts.rules.thing_kinds import RUNS, Run
from fronts.rules.wall_results import CabinetPlace, RunLength, WallRuns


def cabinet_places(kitchen: Kitchen) -> tuple[CabinetPlace, ...]:
    """Where each cabinet of a kitchen that stands has its lower left corner."""
    return tuple(CabinetPlace(one.label, one.left, one.y) for one in kitchen.cabinets)


def wall_runs(
    kitchen: Kitchen, runs: Mapping[str, Mapping[Run, Sequence[Placed]]]
) -> tuple[WallRuns, ...]:
    """Every wall: those that somebody told of as they are listed, then those named alone."""
    lengths = {wall.label: wall.length for wall in kitchen.walls}
    labels = dict.fromkeys((*lengths, *runs))
    return tuple(_runs(label, lengths.get(label), runs.get(label, {})) for label in labels)


def past_wall_findings(walls: Sequence[WallRuns], writer: FindingWriter) -> Iterator[Finding]:
    """Each run that ends past its wall, once."""
    for wall in walls:
        for run, reached in wall.runs.items():
            if reached.left_over is not None and reached.left_over < 0:
                yield writer.run_past_wall(wall.label, run, -reached.left_over)


def _runs(label: str, length: Mm | None, runs: Mapping[Run, Sequence[Placed]]) -> WallRuns:
    reached = {run: max(one.right for one in runs[run]) for run in RUNS if runs.get(run)}
    return WallRuns(
        label,
        {
            run: RunLength(end, None if length is None else length - end)
            for run, end in reached.items()
        },
    )
