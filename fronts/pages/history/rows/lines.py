"""A revision as a line: who, when, what, and the values before and after."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime
from itertools import islice

from django.apps import apps
from django.utils import timezone

from fronts.models.kept import Kept
from fronts.services.change_lines import columns_that_changed, doors_in, facts_that_changed
from shopjobs.models import Revision
from shopjobs.row_changes import RowChange, changes_of

MOST_DETAILS = 40


@dataclass(frozen=True, slots=True)
class Detail:
    """One fact of one row, what it was and what it is since."""

    of: str
    called: str
    was: str
    now: str


@dataclass(frozen=True, slots=True)
class HistoryLine:
    """One revision; `action` is the word that takes it back, "" where that can't be."""

    revision: Revision
    who: str
    is_taken_back: bool
    action: str
    details: tuple[Detail, ...]
    more: int


@dataclass(frozen=True, slots=True)
class Day:
    """What was done on one day, the latest first."""

    day: datetime
    lines: tuple[HistoryLine, ...]


def days_of(revisions: Sequence[Revision], taken_back: set[int], unit: str) -> list[Day]:
    """The revisions, the latest first, by day."""
    days: dict[str, list[Revision]] = {}
    for revision in revisions:
        days.setdefault(f"{timezone.localtime(revision.at):%Y-%m-%d}", []).append(revision)
    return [
        Day(several[0].at, tuple(_line(each, taken_back, unit) for each in several))
        for several in days.values()
    ]


def _line(revision: Revision, taken_back: set[int], unit: str) -> HistoryLine:
    changes, gone = changes_of(revision.changes), revision.pk in taken_back
    facts = sum(len(columns_that_changed(change)) for change in changes if change.name)
    return HistoryLine(
        revision=revision,
        who=revision.who,
        is_taken_back=gone,
        action="" if gone or not revision.can_undo else _action(revision, changes),
        details=tuple(islice(_details(changes, unit), MOST_DETAILS)),
        more=max(facts - MOST_DETAILS, 0),
    )


def _action(revision: Revision, changes: Sequence[RowChange]) -> str:
    if revision.undoes_id is not None:
        return "Take back"
    named = [change for change in changes if change.name]
    is_gone = named and all(each.after is None and _is_thing(each) for each in named)
    return "Bring back" if is_gone else "Undo"


def _is_thing(change: RowChange) -> bool:
    """Whether it is a thing of the kitchen, which goes and comes; not what is said of it."""
    return issubclass(apps.get_model(change.table), Kept)


def _details(changes: Sequence[RowChange], unit: str) -> Iterator[Detail]:
    """Facts of rows that have a name of their own, first as they were."""
    doors = doors_in(changes)
    for change in changes:
        if change.name:
            for called, was, now in facts_that_changed(change, unit, doors):
                gone = change.after is None
                new = change.before is None
                yield Detail(change.name, called, "–" if new else was, "–" if gone else now)
