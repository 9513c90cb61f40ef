"""The cut list in words: parts by material, doors on hand to trim, jigs and shims."""

from dataclasses import dataclass

from fronts.figures.fronts import AS_IT_IS, FrontLine, front_line, trims_of
from fronts.figures.glass import GlassLine, glass_lines
from fronts.figures.jigs import JigLine, ShimLine, made_jig_lines, shim_line
from fronts.figures.parts import PartLine, part_lines
from fronts.rules.cutting_groups import CuttingGroup, cutting_groups
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import show
from fronts.rules.materials import has_grain
from fronts.rules.merged_jigs import merged_jigs
from fronts.rules.results import Schedule


@dataclass(frozen=True, slots=True)
class GroupRows:
    """The sizes of one material and thickness; `grained` where it has a grain."""

    key: str
    material: str
    grained: bool
    thickness: str
    width: str
    sticks: bool
    count: int
    lines: tuple[PartLine, ...]


@dataclass(frozen=True, slots=True)
class DoorRow:
    """A door on hand, the front that it becomes, and what is sawn off it."""

    door: str
    front: FrontLine
    trims: str


@dataclass(frozen=True, slots=True)
class CutList:
    """All that is sawn for a kitchen; `spared` jigs are not made, since others serve."""

    groups: tuple[GroupRows, ...]
    glass: tuple[GlassLine, ...]
    doors: tuple[DoorRow, ...]
    jigs: tuple[JigLine, ...]
    spared: int
    shims: tuple[ShimLine, ...]

    @property
    def is_empty(self) -> bool:
        """Whether there is nothing at all to saw."""
        return not (self.groups or self.doors or self.jigs or self.shims)


def cut_list(schedule: Schedule, kitchen: Kitchen) -> CutList:
    """The cut list of a kitchen and its schedule, in the job's unit."""
    unit, plan = schedule.job.unit, merged_jigs(schedule, kitchen)
    return CutList(
        groups=tuple(_group(each, unit) for each in cutting_groups(schedule.parts)),
        glass=tuple(glass_lines(schedule)),
        doors=tuple(_doors(schedule, unit)),
        jigs=made_jig_lines(plan, unit),
        spared=len(plan.spared),
        shims=tuple(shim_line(shim, unit) for shim in schedule.shims),
    )


def _group(group: CuttingGroup, unit: str) -> GroupRows:
    return GroupRows(
        key=group.key,
        material=group.material,
        grained=has_grain(group.material),
        thickness=show(group.thickness, unit),
        width="" if group.width is None else show(group.width, unit),
        sticks=group.sticks,
        count=group.count,
        lines=tuple(part_lines(group.parts, unit)),
    )


def _doors(schedule: Schedule, unit: str) -> list[DoorRow]:
    rows = []
    for use in schedule.doors_on_hand:
        front = schedule.front(use.front)
        trims = trims_of(use.trim, unit) or AS_IT_IS
        rows.append(DoorRow(use.door, front_line(front, unit), trims))
    return rows
