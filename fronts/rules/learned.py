"""What is learned: a shop's real errors, from how its fronts fitted.

A front that is done tells by its gaps, against those that were planned, how far off its place it
stayed and how much too large it is (`truing.py`). Over many fronts the mean says what is wrong
each time, such as a stop that is set off; the spread about it says how closely the shop works.
"""

from collections import defaultdict
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType
from typing import TypeVar

from fronts.rules.fits import Gaps, mean_of
from fronts.rules.hanging_method import HangingMethod
from fronts.rules.kinds import SIDES, Side
from fronts.rules.lengths import Mm
from fronts.rules.samples import Sample, sample_of
from fronts.rules.truing import errors_at, hangs_off

Key = TypeVar("Key")
ENOUGH = 20
"""With fewer fronts it is too early to say anything (common practice, no source).

A spread is known to about 1 part in √(2(n − 1)), of 20 fronts to a sixth of itself.
"""


@dataclass(frozen=True, slots=True)
class Fitted:
    """A front that is done: by whom, how it was hung (None: no longer known), and its gaps."""

    by: str
    method: HangingMethod | None
    gaps: Gaps
    planned: Gaps


@dataclass(frozen=True, slots=True)
class Learned:
    """What some fronts say; None or no entry: nothing was measured.

    `sides` are of gaps, + too wide; `sideways` and `upright` of places, + to the right and up;
    `width` and `height` of sizes, + too large.
    """

    fronts: int
    sides: Mapping[Side, Sample]
    sideways: Sample | None
    upright: Sample | None
    width: Sample | None
    height: Sample | None

    @property
    def is_enough(self) -> bool:
        return self.fronts >= ENOUGH


@dataclass(frozen=True, slots=True)
class WhatIsLearned:
    """All fronts of a shop together, and apart by how they were hung and by whom."""

    together: Learned
    by_method: tuple[tuple[HangingMethod | None, Learned], ...]
    by_person: tuple[tuple[str, Learned], ...]


def what_is_learned(fitted: Iterable[Fitted]) -> WhatIsLearned:
    """What those fronts say of which a gap is known beside a planned one; most fronts first."""
    telling = [each for each in fitted if _known(_errors(each).values())]
    return WhatIsLearned(
        _learned(telling),
        _apart(telling, lambda each: each.method),
        _apart(telling, lambda each: each.by),
    )


def _apart(
    fitted: Sequence[Fitted], key: Callable[[Fitted], Key]
) -> tuple[tuple[Key, Learned], ...]:
    groups: dict[Key, list[Fitted]] = defaultdict(list)
    for each in fitted:
        groups[key(each)].append(each)
    most_first = sorted(groups.items(), key=lambda group: -len(group[1]))
    return tuple((name, _learned(group)) for name, group in most_first)


def _learned(fitted: Sequence[Fitted]) -> Learned:
    errors = [_errors(each) for each in fitted]
    off = [hangs_off(each.gaps, each.planned) for each in fitted]
    sides = {side: sample_of(_known(each[side] for each in errors)) for side in SIDES}
    return Learned(
        fronts=len(fitted),
        sides=MappingProxyType({side: one for side, one in sides.items() if one is not None}),
        sideways=sample_of(_known(each.shift_right for each in off)),
        upright=sample_of(_known(each.shift_up for each in off)),
        width=sample_of(_known(each.wide_by for each in off)),
        height=sample_of(_known(each.high_by for each in off)),
    )


def _errors(each: Fitted) -> dict[Side, Mm | None]:
    """How much too wide each gap is, in the middle of its side."""
    found = {side: errors_at(each.gaps, each.planned, side) for side in SIDES}
    return {side: mean_of(errors) if errors else None for side, errors in found.items()}


def _known(figures: Iterable[Mm | None]) -> list[Mm]:
    return [figure for figure in figures if figure is not None]
