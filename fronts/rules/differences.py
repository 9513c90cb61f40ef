"""What differs between two schedules of one kitchen: front by front, item by item."""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from typing import Any, TypeAlias

from fronts.rules.hardware import needs_by_item
from fronts.rules.results import Finding, Front, Schedule

What: TypeAlias = tuple[str, tuple[str, ...]]
"""A finding's code, and what it is about: by these it is the same one, whatever its figures."""

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


@dataclass(frozen=True, slots=True)
class FindingsDiffer:
    """Findings that came, that went, and that are there as before but with `other` figures."""

    came: tuple[Finding, ...]
    went: tuple[Finding, ...]
    other: tuple[Finding, ...]


def differences(was: Schedule, now: Schedule) -> Differences:
    """From one schedule to another."""
    return Differences(tuple(_fronts(was, now)), tuple(_needs(was, now)))


def finding_differences(was: Schedule, now: Schedule) -> FindingsDiffer:
    """From one schedule to another, each list in its schedule's order: the stops are first."""
    before, after = _by_what(was.findings), _by_what(now.findings)
    stayed = [
        (one, other)
        for what, several in after.items()
        for one, other in zip(before.get(what, ()), several, strict=False)
    ]
    return FindingsDiffer(
        came=tuple(_beyond(now.findings, before)),
        went=tuple(_beyond(was.findings, after)),
        other=tuple(other for one, other in stayed if one.message != other.message),
    )


def _by_what(findings: Iterable[Finding]) -> Mapping[What, list[Finding]]:
    found = defaultdict(list)
    for finding in findings:
        found[finding.code, finding.where].append(finding)
    return found


def _beyond(findings: Iterable[Finding], others: Mapping[What, list[Finding]]) -> Iterator[Finding]:
    """Those of the findings that have none of the others to go with."""
    seen: defaultdict[What, int] = defaultdict(int)
    for finding in findings:
        what = finding.code, finding.where
        seen[what] += 1
        if seen[what] > len(others.get(what, ())):
            yield finding


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
