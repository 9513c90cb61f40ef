"""What follows from a change of a kitchen, front by front: each figure before and after."""

from collections import defaultdict
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from typing import TypeAlias

from fronts.figures.cabinet_words import cabinet_words
from fronts.figures.shown_figures import shown_figures
from fronts.rules.differences import finding_differences
from fronts.rules.kitchen import Kitchen
from fronts.rules.merged_jigs import JigPlan, merged_jigs
from fronts.rules.results import Finding, Schedule
from fronts.rules.shown_figures import FigureChanged, ShownFigure, changed_figures

Worked: TypeAlias = tuple[Kitchen, Schedule]
"""A kitchen with its schedule."""

_FIRST = (
    "what", "width", "height", "thickness", "made from", "gap left", "gap right", "gap top",
    "gap bottom", "side offset", "jig", "packers", "front's bottom", "side shims", "bottom shims",
    "slide", "box", "hinges", "on the door", "plates",
)  # fmt: skip
"""What is told first of a front; all else follows from these."""


@dataclass(frozen=True, slots=True)
class Follows:
    """What is otherwise about one front, and how many figures more are."""

    label: str
    figures: tuple[FigureChanged, ...]
    more: int


@dataclass(frozen=True, slots=True)
class WhatFollows:
    """Everything that follows: fronts, and findings that came and went (stops and checks)."""

    fronts: tuple[Follows, ...]
    came: tuple[Finding, ...]
    went: tuple[Finding, ...]

    def __bool__(self) -> bool:
        return bool(self.fronts or self.came or self.went)


def what_follows(was: Worked, now: Worked) -> WhatFollows:
    """From one kitchen to another; notes are left out."""
    findings = finding_differences(was[1], now[1])
    return WhatFollows(
        fronts=tuple(_fronts(was, now)),
        came=tuple(each for each in findings.came if each.level != "note"),
        went=tuple(each for each in findings.went if each.level != "note"),
    )


def _fronts(was: Worked, now: Worked) -> Iterator[Follows]:
    jigs_were, jigs_are = (merged_jigs(schedule, kitchen) for kitchen, schedule in (was, now))
    before, after = _by_cabinet(was[1], jigs_were), _by_cabinet(now[1], jigs_are)
    for cabinet in dict.fromkeys([*after, *before]):
        if before.get(cabinet) == after.get(cabinet):
            continue
        one = _figures(was, cabinet, jigs_were)
        other = _figures(now, cabinet, jigs_are)
        for label in dict.fromkeys([*other, *one]):
            found = _front(label, one.get(label, ()), other.get(label, ()))
            if found.figures or found.more:
                yield found


def _by_cabinet(schedule: Schedule, jigs: JigPlan) -> Mapping[str, object]:
    """What a cabinet's figures come from, to see which cabinets differ at all."""
    fittings = {each.front: each for each in schedule.fittings}
    found: defaultdict[str, list[object]] = defaultdict(list)
    for front in schedule.fronts:
        found[front.cabinet] += [front, fittings.get(front.label), jigs.shifts.get(front.label)]
    return found


def _figures(worked: Worked, label: str, jigs: JigPlan) -> Mapping[str, tuple[ShownFigure, ...]]:
    """The figures of the cabinet's fronts by the fronts' labels."""
    kitchen, schedule = worked
    cabinet = next((each for each in kitchen.cabinets if each.label == label), None)
    if cabinet is None:
        return {}
    words = cabinet_words(schedule, kitchen, cabinet, jigs)
    figures = shown_figures(words)
    return {
        front.label: tuple(each for each in figures if each.of == front.label)
        for front in words.fronts
    }


def _front(label: str, was: tuple[ShownFigure, ...], now: tuple[ShownFigure, ...]) -> Follows:
    changed = changed_figures(was, now)
    first = [each for each in changed if each.name in _FIRST]
    first.sort(key=lambda each: _FIRST.index(each.name))
    if not was or not now:
        first = [replace(each, name=f"{'new' if now else 'gone'}: {each.name}") for each in first]
    return Follows(label, tuple(first), len(changed) - len(first))
