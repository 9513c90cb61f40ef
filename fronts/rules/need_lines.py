"""One front's share of an item of hardware, before shares of the same item are summed."""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from fronts.rules.results import Need

GROUPS = (
    "hinge", "lift", "tip-out", "slides", "knob", "mounting screw", "foam tape", "bumper", "glass",
    "edge band",
)  # fmt: skip
"""The order in which a list of hardware reads."""


@dataclass(frozen=True, slots=True)
class NeedLine:
    """So many of an item for one front, and why; of what is bought by `unit` so much, exactly."""

    group: str
    item: str
    front: str
    count: int | Fraction
    why: str
    spared: bool = True
    code: str | None = None
    kind: str = ""
    unit: str = ""
    is_screw: bool = False
    length: str = ""


def summed(lines: Sequence[NeedLine], share: Fraction) -> tuple[Need, ...]:
    """Lines of one item together, whole ones; `share` of what gets lost is ordered beside it."""
    same: dict[str, list[NeedLine]] = defaultdict(list)
    for line in sorted(lines, key=lambda line: GROUPS.index(line.group)):
        same[line.item].append(line)
    return tuple(_need(item, of_it, share) for item, of_it in same.items())


def _need(item: str, lines: Sequence[NeedLine], share: Fraction) -> Need:
    per_front: dict[str, int | Fraction] = defaultdict(int)
    for line in lines:
        per_front[line.front] += line.count
    first, need = lines[0], ceil(sum(per_front.values()))
    return Need(
        item=item,
        need=need,
        fronts=tuple(per_front),
        why="; ".join(dict.fromkeys(line.why for line in lines)),
        per_front=dict(per_front),
        spares=ceil(need * share) if first.spared else 0,
        code=first.code,
        kind=first.kind,
        unit=first.unit,
        is_screw=first.is_screw,
        group=first.group,
        length=first.length,
    )
