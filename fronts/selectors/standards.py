"""What of the house standard is in force somewhere, and which level says it."""

from collections.abc import Sequence
from dataclasses import dataclass, fields
from typing import TypeAlias

from fronts.facts.rows import column_names, columns_of
from fronts.models import Cabinet, JobStandard, KindStandard, Opening, ShopStandard
from fronts.rules.lengths import Mm
from fronts.rules.standard_keys import Standard
from fronts.rules.standards import DEFAULTS
from fronts.snapshot.standards import standard_of
from shopjobs.models import Job, Shop

Owner: TypeAlias = Shop | Job | KindStandard | Cabinet | Opening
Level: TypeAlias = tuple[str, Standard]
Said: TypeAlias = Mm | str | None

LAPS = ("overlay", "reveal")
DEFAULT = "default"
KEY_OF = {column: path.partition(".")[0] for path, column in column_names(Standard).items()}
"""The key of the standard that each column belongs to: `overlay_left` to `overlay`."""


@dataclass(frozen=True, slots=True)
class InForce:
    """One column of the standard: its value, and the level that it comes from.

    `level` is "shop", "job", "wall cabinets", "cabinet B1", "opening B1.a" or "default"; ""
    where nobody says it. `beneath` is what would hold if the level that was asked about said
    nothing.
    """

    name: str
    value: Said
    level: str
    own: bool
    beneath: Said
    beneath_level: str

    @property
    def inherited(self) -> bool:
        return not self.own and self.level != ""


def standard_levels(owner: Owner) -> dict[str, InForce]:
    """Every column of the standard as it is in force at this level."""
    levels = _levels(owner)
    own_name = levels[0][0]
    held, beneath = _in_force(levels), _in_force(levels[1:])
    return {
        name: InForce(name, *held[name], held[name][1] == own_name, *beneath[name])
        for name in KEY_OF
    }


def _levels(owner: Owner) -> list[Level]:
    """The levels, nearest first."""
    match owner:
        case Opening():
            return [(f"opening {owner}", standard_of(owner)), *_levels(owner.cabinet)]
        case Cabinet():
            kinds = KindStandard.objects.filter(job=owner.job, kind=owner.kind)
            kind = kinds.first() or KindStandard(job=owner.job, kind=owner.kind)
            return [(f"cabinet {owner.label}", standard_of(owner)), *_levels(kind)]
        case KindStandard():
            return [(str(owner).lower(), standard_of(owner)), *_levels(owner.job)]
        case Job():
            row = JobStandard.objects.filter(job=owner).first()
            return [("job", standard_of(row)), *_levels(owner.shop)]
        case Shop():
            return [("shop", standard_of(ShopStandard.objects.filter(shop=owner).first()))]


def _in_force(levels: Sequence[Level]) -> dict[str, tuple[Said, str]]:
    said: dict[str, object] = {}
    sources: dict[str, str] = {}
    for key in (each.name for each in fields(Standard)):
        said[key], sources[key] = _key_in_force(key, levels)
    columns = columns_of(Standard(**said))  # type: ignore[arg-type]
    return {name: (columns[name], sources[key]) for name, key in KEY_OF.items()}


def _key_in_force(key: str, levels: Sequence[Level]) -> tuple[object, str]:
    for name, standard in levels:
        value = getattr(standard, key)
        if value is not None:
            return value, name
        if key in LAPS and any(getattr(standard, lap) is not None for lap in LAPS):
            return None, ""
    default = getattr(DEFAULTS, key)
    return default, DEFAULT if default is not None else ""
