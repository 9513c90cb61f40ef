"""Which wall the page shows, and the ways to the others."""

import re
from collections.abc import Mapping
from dataclasses import dataclass

from fronts.models import Cabinet, Opening, Thing
from fronts.notebook import standing_behind
from fronts.pages.shared.wall_addresses import EVERY, WALL, wall_query, walls_in
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import show, write
from fronts.rules.results import Schedule
from fronts.rules.thing_kinds import RUNS
from shopjobs.models import Job

AT = "at"
"""What an address says of the wall that it is about instead of its name: what stands on it."""
_PLACED = re.compile(r"(cabinet|opening-new|opening|thing)-([0-9]{1,18})")


@dataclass(frozen=True, slots=True)
class WallLink:
    """A wall among the tabs; `query` leads to it."""

    says: str
    query: str
    current: bool


def wall_shown(job: Job, kitchen: Kitchen, said: Mapping[str, str]) -> str:
    """The wall that an address is about; else the first one, "" where there is none yet."""
    walls = walls_in(kitchen)
    wall = said.get(WALL, "") or _wall_at(job, said.get(AT, ""))
    if wall == EVERY and walls:
        return EVERY
    return wall if wall in walls else next(iter(walls), "")


def wall_entered(job: Job, kitchen: Kitchen, said: Mapping[str, str]) -> str:
    """The wall on which something is entered: the one that is shown; of all of them the first."""
    wall = wall_shown(job, kitchen, said)
    return next(iter(walls_in(kitchen)), "") if wall == EVERY else wall


def _wall_at(job: Job, key: str) -> str:
    """The wall of what stands at a part of the page: `cabinet-12`."""
    found = _PLACED.fullmatch(key)
    if found is None:
        return ""
    number = int(found[2])
    of_cabinet = Cabinet.objects.filter(job=job, pk=number).values_list("wall", flat=True)
    rows = {
        "cabinet": of_cabinet,
        "opening-new": of_cabinet,
        "thing": Thing.objects.filter(job=job, pk=number).values_list("wall", flat=True),
        "opening": Opening.objects.filter(cabinet__job=job, pk=number).values_list(
            "cabinet__wall", flat=True
        ),
    }[found[1]]
    return rows.first() or ""


def wall_links(kitchen: Kitchen, shown: str) -> list[WallLink]:
    """A tab for each wall, and for all of them where there are several."""
    walls = walls_in(kitchen)
    links = [WallLink(wall, wall_query(wall), wall == shown) for wall in walls]
    every = [WallLink("All walls", wall_query(EVERY), shown == EVERY)] if len(walls) > 1 else []
    return links + every


def lines_go_on(kitchen: Kitchen, wall: str) -> str:
    """What a line for a cabinet goes on with: `wall cabinets 30 high 12 deep 54 up`; "": nothing.

    In the words of a line that says otherwise.
    """
    standing = standing_behind(kitchen, "" if wall == EVERY else wall)
    if standing.kind_now is None:
        return ""
    sizes = standing.usual(standing.kind_now).items()
    said = [f"{write(size, kitchen.job.unit)} {mark}" for mark, size in sizes]
    return " ".join([f"{standing.kind_now} cabinets", *said])


def left_over(schedule: Schedule, wall: str, unit: str) -> list[str]:
    """What the runs of the wall leave of it: `3 1/4 left on the floor`, or how far they go past."""
    rows = next((row for row in schedule.walls if row.label == wall), None)
    if rows is None:
        return []
    return [
        f"{show(abs(run.left_over), unit)} {'left' if run.left_over >= 0 else 'too much'} "
        f"{RUNS[name].lower()}"
        for name, run in rows.runs.items()
        if run.left_over is not None
    ]
