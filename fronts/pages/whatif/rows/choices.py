"""Choices of laps as rows of a table, the best of them marked, and why it is."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from operator import attrgetter
from typing import TypeAlias
from urllib.parse import urlencode

from fronts.facts.rows import columns_of
from fronts.figures.fronts import AS_IT_IS, trims_of
from fronts.figures.laps import side_words
from fronts.rules.kinds import SIDES, is_inset
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm, show, write
from fronts.rules.standard_keys import Reveal, Sides, Standard
from fronts.rules.suited_standard import (
    Laps,
    Outcome,
    best,
    best_without_more_stops,
    outcome,
    outcomes,
    with_laps,
)

MOST_SHOWN = 30
"""A longer table is read by nobody; the best of it are shown."""
AS_NOW = "As it is now"


@dataclass(frozen=True, slots=True)
class ChoiceRow:
    """A choice and what comes of it; `query` tries it, "" for the standard as it is."""

    words: str
    served: int
    made: int
    trimmed: str
    stops: int
    misses: int
    mark: str
    query: str


@dataclass(frozen=True, slots=True)
class DoorRow:
    """A door on hand, the front that it would be, and what is sawn off."""

    door: str
    front: str
    trims: str


@dataclass(frozen=True, slots=True)
class Suited:
    """All that were tried: the best of them, why it is, and the doors that serve with it.

    `sound` is the best that brings no further stop, where that is another.
    """

    tried: int
    now: ChoiceRow
    rows: tuple[ChoiceRow, ...]
    best: ChoiceRow
    why: str
    more_stops: int
    sound: ChoiceRow | None
    doors: tuple[DoorRow, ...]


def suited(kitchen: Kitchen, tried: Sequence[Laps]) -> Suited:
    """Every choice tried in the kitchen."""
    unit = kitchen.job.unit
    now, found = outcome(kitchen), list(outcomes(kitchen, tried))
    chosen, sound = best(found), best_without_more_stops(found, now)
    shown = found
    if len(found) > MOST_SHOWN:
        shown = sorted(found, key=lambda each: each.merit)[:MOST_SHOWN]
    return Suited(
        tried=len(found),
        now=_row(now, unit, ""),
        rows=tuple(_row(each, unit, _mark(each, chosen, sound)) for each in shown),
        best=_row(chosen, unit, ""),
        why=why(chosen, found),
        more_stops=max(chosen.stops - now.stops, 0),
        sound=_row(sound, unit, "") if sound and chosen.stops > now.stops else None,
        doors=tuple(
            DoorRow(use.door, use.front, trims_of(use.trim, unit) or AS_IT_IS)
            for use in chosen.uses
        ),
    )


Measure: TypeAlias = Callable[[Outcome], Mm | int]
_REASONS: tuple[tuple[Measure, str], ...] = (
    (attrgetter("trimmed"), "least is sawn off them with this one"),
    (attrgetter("stops"), "of those with least sawn off, it has the fewest stops"),
    (attrgetter("misses"), "of those with least sawn off, its lines meet best"),
)


def why(chosen: Outcome, found: Sequence[Outcome]) -> str:
    """By what the best choice is better than all others."""
    alike = [each for each in found if each.served == chosen.served]
    if len(alike) == 1:
        return "With no other do so many doors serve."
    for about, words in _REASONS:
        fewer = [each for each in alike if about(each) == about(chosen)]
        if len(fewer) == 1:
            return f"As many doors serve with {len(alike)} of the choices; {words}."
        alike = fewer
    return f"{len(alike)} choices come out alike; this is the smallest of them."


def laps_query(laps: Laps, unit: str) -> str:
    """The address that tries a choice: what the job's standard would say otherwise."""
    said = columns_of(with_laps(Standard(), laps))
    asked = {
        name: value if isinstance(value, str) else write(value, unit)
        for name, value in said.items()
        if value is not None
    }
    if not is_inset(laps.mount):
        nowhere = Sides(left=laps.across, right=laps.across, top=laps.along, bottom=laps.along)
        reveals = columns_of(Standard(reveal=Reveal(laps.across, nowhere)))
        asked |= {name: "" for name, value in reveals.items() if value is not None}
    return f"?{urlencode(asked)}"


def _mark(each: Outcome, chosen: Outcome, sound: Outcome | None) -> str:
    if each is chosen:
        return "Best"
    return "Best without a further stop" if each is sound else ""


def _row(each: Outcome, unit: str, mark: str) -> ChoiceRow:
    return ChoiceRow(
        words=_words(each.laps, unit) if each.laps else AS_NOW,
        served=each.served,
        made=each.made,
        trimmed=show(each.trimmed, unit),
        stops=each.stops,
        misses=each.misses,
        mark=mark,
        query=laps_query(each.laps, unit) if each.laps else "",
    )


def _words(laps: Laps, unit: str) -> str:
    said = side_words({side: laps.sides[side] for side in SIDES}, unit)
    return f"inset {said}" if is_inset(laps.mount) else said
