"""Glass for doors as lines of a cut list: panes by size, and the stops that hold them."""

from dataclasses import dataclass

from fronts.rules.buying_names import STOP
from fronts.rules.results import Schedule


@dataclass(frozen=True, slots=True)
class GlassLine:
    """So many of a pane, or so much stop, and the fronts that it is for."""

    what: str
    count: str
    fronts: tuple[str, ...]


def glass_lines(schedule: Schedule) -> list[GlassLine]:
    """What is ordered or cut to go into frames instead of panels."""
    return [
        GlassLine(need.item, f"{need.need} {need.unit}".strip(), need.fronts)
        for need in schedule.hardware
        if need.kind == "glass" or need.item.startswith(STOP)
    ]
