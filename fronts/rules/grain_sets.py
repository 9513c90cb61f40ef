"""Fronts that should read as one piece: which belong together, which way their grain runs.

All fronts of a set have their grain one way: as the first that says so has it, else up and down
where one of them would have it so by itself, as beneath a drawer front its door has (common
practice, no source).
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from fronts.rules.grain_order import grouped
from fronts.rules.grain_results import GrainPlace, GrainSet
from fronts.rules.laying import Laid
from fronts.rules.lengths import NOTHING, Mm
from fronts.rules.making import Make
from fronts.rules.rect import Rect


@dataclass(frozen=True, slots=True)
class SetOnWall:
    """A set with each front's place, in order; `says_otherwise` are those with grain across."""

    shown: GrainSet
    places: Mapping[str, GrainPlace]
    says_otherwise: tuple[str, ...]


def grained(laid: Sequence[Laid], makes: Sequence[Make]) -> list[Make]:
    """The makes of fronts, among them whole sets, with their grain as their set has it."""
    upright = {
        front.label: _is_upright(fronts)
        for fronts in _named(laid, makes).values()
        for front, _ in fronts
    }
    return [
        replace(make, grain_upright=upright.get(front.label, make.grain_upright))
        for front, make in zip(laid, makes, strict=True)
    ]


def grain_sets(laid: Sequence[Laid], makes: Sequence[Make]) -> tuple[SetOnWall, ...]:
    """Every set that fronts name, as first named; the makes are those of each front by itself."""
    named = _named(laid, makes)
    shifts = _in_one_line(laid) if named else {}
    return tuple(_set(name, fronts, shifts) for name, fronts in named.items())


_Fronts = list[tuple[Laid, Make]]


def _named(laid: Sequence[Laid], makes: Sequence[Make]) -> dict[str, _Fronts]:
    named: dict[str, _Fronts] = {}
    for front, make in zip(laid, makes, strict=True):
        if front.decided.grain_set:
            named.setdefault(front.decided.grain_set, []).append((front, make))
    return named


def _is_upright(fronts: _Fronts) -> bool:
    said = [front.decided.grain for front, _ in fronts if front.decided.grain]
    return said[0] == "upright" if said else any(make.grain_upright for _, make in fronts)


def _set(name: str, fronts: _Fronts, shifts: Mapping[str, Mm]) -> SetOnWall:
    upright = _is_upright(fronts)
    rects = {
        front.label: Rect(front.x + shifts[front.cabinet.wall], front.y, front.width, front.height)
        for front, _ in fronts
    }
    order = grouped([(rect, label) for label, rect in rects.items()]).pieces
    shown = GrainSet(name, upright, order)
    return SetOnWall(
        shown=shown,
        places={
            label: GrainPlace(name, number, len(order), upright, rects[label])
            for number, label in enumerate(order, 1)
        },
        says_otherwise=tuple(
            front.label for front, _ in fronts if front.decided.grain not in (None, shown.way)
        ),
    )


def _in_one_line(laid: Sequence[Laid]) -> dict[str, Mm]:
    """How far each wall's fronts move to the right so that all walls follow one another."""
    on_wall: dict[str, list[Laid]] = {}
    for front in laid:
        on_wall.setdefault(front.cabinet.wall, []).append(front)
    shifts: dict[str, Mm] = {}
    end = NOTHING
    for wall, there in on_wall.items():
        left = min(front.x for front in there)
        shifts[wall] = end - left
        end += max(front.right for front in there) - left
    return shifts
