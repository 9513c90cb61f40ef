"""The cut list in words: parts by material, doors on hand to trim, jigs and shims."""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass

from fronts.rules.cutting_groups import CuttingGroup, cutting_groups
from fronts.rules.lengths import Mm, show
from fronts.rules.materials import has_grain
from fronts.rules.results import Jig, Part, Schedule, Shim


@dataclass(frozen=True, slots=True)
class SizeRow:
    """Parts of one size; a grain runs along the length."""

    length: str
    width: str
    count: int
    what: str
    labels: str


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
    sizes: tuple[SizeRow, ...]


@dataclass(frozen=True, slots=True)
class DoorRow:
    """A door on hand, the front that it becomes, and what is sawn off it."""

    door: str
    front: str
    size: str
    trims: str


@dataclass(frozen=True, slots=True)
class JigRow:
    """One jig: block, ledges and slot, and the fronts that it serves."""

    block: str
    ledges: str
    slot: str
    fronts: str


@dataclass(frozen=True, slots=True)
class ShimRow:
    """Shims of one thickness: how many at the sides, how many below."""

    thickness: str
    side: int
    bottom: int
    fronts: str


@dataclass(frozen=True, slots=True)
class CutList:
    """All that is sawn for a kitchen."""

    groups: tuple[GroupRows, ...]
    doors: tuple[DoorRow, ...]
    jigs: tuple[JigRow, ...]
    shims: tuple[ShimRow, ...]

    @property
    def is_empty(self) -> bool:
        """Whether there is nothing at all to saw."""
        return not (self.groups or self.doors or self.jigs or self.shims)


def cut_list(schedule: Schedule) -> CutList:
    """The cut list of a schedule, in the job's unit."""
    unit = schedule.job.unit
    return CutList(
        groups=tuple(_group(each, unit) for each in cutting_groups(schedule.parts)),
        doors=tuple(_doors(schedule, unit)),
        jigs=tuple(_jig(each, unit) for each in schedule.jigs),
        shims=tuple(_shim(each, unit) for each in schedule.shims),
    )


def group_name(material: str, thickness: Mm, width: Mm | None, unit: str) -> str:
    """`MDF 3/4`, or for sticks `maple 3/4 × 2 1/4`."""
    sizes = [show(each, unit) for each in (thickness, width) if each is not None]
    return f"{material} {' × '.join(sizes)}"


def _group(group: CuttingGroup, unit: str) -> GroupRows:
    return GroupRows(
        key=group.key,
        material=group.material,
        grained=has_grain(group.material),
        thickness=show(group.thickness, unit),
        width="" if group.width is None else show(group.width, unit),
        sticks=group.sticks,
        count=group.count,
        sizes=tuple(_sizes(group.parts, unit)),
    )


def _sizes(parts: Sequence[Part], unit: str) -> list[SizeRow]:
    same: dict[tuple[Mm, Mm, str], list[Part]] = defaultdict(list)
    for part in parts:
        same[part.length, part.width, part.part].append(part)
    return [
        SizeRow(
            length=show(length, unit),
            width=show(width, unit),
            count=sum(each.count for each in alike),
            what=what,
            labels=", ".join(_label(each) for each in alike),
        )
        for (length, width, what), alike in same.items()
    ]


def _label(part: Part) -> str:
    return f"{part.front} ×{part.count}" if part.count > 1 else part.front


def _doors(schedule: Schedule, unit: str) -> list[DoorRow]:
    rows = []
    for use in schedule.doors_on_hand:
        front = schedule.front(use.front)
        trims = [
            f"{show(trim, unit)} off the {side}"
            for trim, side in ((use.trim_width, "width"), (use.trim_height, "height"))
            if trim
        ]
        size = f"{show(front.width, unit)} × {show(front.height, unit)}"
        rows.append(DoorRow(use.door, use.front, size, " and ".join(trims) or "as it is"))
    return rows


def _jig(jig: Jig, unit: str) -> JigRow:
    ledges = jig.ledges
    block = (show(each, unit) for each in (jig.thickness, jig.length, ledges.block_depth))
    strip = (show(each, unit) for each in (ledges.thickness, ledges.length))
    slot = () if jig.slot is None else (jig.slot.width, jig.slot.depth)
    return JigRow(
        block=" × ".join(block),
        ledges=f"{ledges.count}: {' × '.join(strip)}",
        slot=" × ".join(show(each, unit) for each in slot),
        fronts=", ".join(jig.fronts),
    )


def _shim(shim: Shim, unit: str) -> ShimRow:
    return ShimRow(show(shim.thickness, unit), shim.side, shim.bottom, ", ".join(shim.fronts))
