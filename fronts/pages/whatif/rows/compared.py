"""A kitchen beside what it would be: everything that would come, go or be otherwise."""

from collections.abc import Iterable
from dataclasses import dataclass, replace

from django.utils.safestring import SafeString

from fronts.drawings.elevation import SIDE_BY_SIDE
from fronts.figures.differences import DifferenceLine, need_lines
from fronts.figures.findings import tally
from fronts.pages.shared.drawn_walls import drawn_walls
from fronts.pages.shared.finding_links import FindingRow
from fronts.pages.whatif.rows.bench import bench_changes
from fronts.pages.whatif.rows.findings import finding_rows
from fronts.pages.whatif.rows.fronts import Cell, FrontChange, front_changes
from fronts.pages.whatif.rows.parts import PartsChange, parts_changes
from fronts.rules.differences import differences, finding_differences
from fronts.rules.kitchen import Kitchen
from fronts.rules.results import Front, Schedule
from fronts.rules.runs import stood
from fronts.rules.schedule import schedule
from fronts.rules.standard_keys import Standard


@dataclass(frozen=True, slots=True)
class WallPair:
    """A wall as it is, and as it would be."""

    wall: str
    was: SafeString
    now: SafeString


@dataclass(frozen=True, slots=True)
class Compared:
    """All that would differ; `same` counts the fronts that would stay as they are.

    Of the `walls` on which a front would differ, one at a time is drawn.
    """

    fronts: tuple[FrontChange, ...]
    same: int
    parts: tuple[PartsChange, ...]
    needs: tuple[DifferenceLine, ...]
    bench: tuple[Cell, ...]
    came: tuple[FindingRow, ...]
    went: tuple[FindingRow, ...]
    other: tuple[FindingRow, ...]
    came_tally: str
    went_tally: str
    walls: tuple[str, ...]
    drawn: WallPair | None

    @property
    def is_same(self) -> bool:
        """Whether nothing at all would differ."""
        told = (self.fronts, self.parts, self.needs, self.bench, self.came, self.went, self.other)
        return not any(told)


def compared(kitchen: Kitchen, standard: Standard, wall: str) -> Compared:
    """The kitchen as it is beside what it would be with the standard; nothing is kept.

    The wall is drawn where it would differ, else the first that does.
    """
    kitchen = stood(kitchen)
    changed = replace(kitchen, standard=standard)
    was, now = schedule(kitchen), schedule(changed)
    fronts = front_changes(was, now, kitchen.practice.filler)
    findings = finding_differences(was, now)
    walls = _walls(kitchen, (*was.fronts, *now.fronts), {one.label for one in fronts})
    shown = wall if wall in walls else next(iter(walls), None)
    return Compared(
        fronts=tuple(fronts),
        same=len(now.fronts) - sum(one.label in _labels(now) for one in fronts),
        parts=tuple(parts_changes(was, now)),
        needs=tuple(need_lines(differences(was, now))),
        bench=tuple(bench_changes((kitchen, was), (changed, now))),
        came=finding_rows(findings.came),
        went=finding_rows(findings.went),
        other=finding_rows(findings.other),
        came_tally=tally(findings.came),
        went_tally=tally(findings.went),
        walls=walls,
        drawn=None if shown is None else _drawn(kitchen, changed, was, now, shown),
    )


def _labels(of: Schedule) -> frozenset[str]:
    return frozenset(front.label for front in of.fronts)


def _walls(kitchen: Kitchen, fronts: Iterable[Front], differ: set[str]) -> tuple[str, ...]:
    """The walls on which one of the fronts would differ, in the kitchen's order."""
    wanted = {front.wall for front in fronts if front.label in differ}
    return tuple(wall for wall in kitchen.wall_names if wall in wanted)


def _drawn(kitchen: Kitchen, changed: Kitchen, was: Schedule, now: Schedule, wall: str) -> WallPair:
    before = drawn_walls(was, kitchen, sheet=SIDE_BY_SIDE, walls=[wall])
    after = drawn_walls(now, changed, ids="then", sheet=SIDE_BY_SIDE, walls=[wall])
    return WallPair(wall, before[wall], after[wall])
