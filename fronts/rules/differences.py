"""What differs between two schedules of one kitchen: front by front, item by item."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from fronts.rules.hardware import needs_by_item
from fronts.rules.results import Front, Schedule

FACTS = (
    "kind", "width", "height", "thickness", "x", "y", "hinged", "plane", "build", "material",
    "door_on_hand", "trim", "hinges", "hinge_centres", "hinge_words", "knobs", "knob_screw",
)  # fmt: skip
"""What of a front counts as a difference, in the order in which it is told."""


@dataclass(frozen=True, slots=True)
class FactDiffers:
    """A fact of a front, by its name in `Front`, and its two values."""

    name: str
    was: Any
    now: Any


@dataclass(frozen=True, slots=True)
class FrontDiffers:
    """A front that came (`was` is None), went (`now` is None), or has other facts."""

    label: str
    was: Front | None
    now: Front | None
    facts: tuple[FactDiffers, ...]


@dataclass(frozen=True, slots=True)
class NeedDiffers:
    """How many of an item are needed, before and after."""

    item: str
    was: int
    now: int


@dataclass(frozen=True, slots=True)
class Differences:
    """Everything that differs."""

    fronts: tuple[FrontDiffers, ...]
    needs: tuple[NeedDiffers, ...]


def differences(was: Schedule, now: Schedule) -> Differences:
    """From one schedule to another."""
    return Differences(tuple(_fronts(was, now)), tuple(_needs(was, now)))


def _fronts(was: Schedule, now: Schedule) -> Iterator[FrontDiffers]:
    before = {front.label: front for front in was.fronts}
    after = {front.label: front for front in now.fronts}
    for label in dict.fromkeys([*before, *after]):
        one, other = before.get(label), after.get(label)
        facts = () if one is None or other is None else tuple(_facts(one, other))
        if one is None or other is None or facts:
            yield FrontDiffers(label, one, other, facts)


def _facts(was: Front, now: Front) -> Iterator[FactDiffers]:
    for name in FACTS:
        one, other = getattr(was, name), getattr(now, name)
        if one != other:
            yield FactDiffers(name, one, other)


def _needs(was: Schedule, now: Schedule) -> Iterator[NeedDiffers]:
    before, after = needs_by_item(was), needs_by_item(now)
    for item in dict.fromkeys([*before, *after]):
        one, other = before.get(item, 0), after.get(item, 0)
        if one != other:
            yield NeedDiffers(item, one, other)
