"""How every service writes rows, so that what it did can be told and taken back.

A service is `recorded`: whatever it saves, makes and deletes through this module becomes one
`Revision`, together with what it told by `tell`; a service that another one calls adds to
that one's. Nothing is kept of a service that failed.
"""

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from contextvars import ContextVar
from dataclasses import dataclass, field
from datetime import datetime
from functools import cache, wraps
from typing import Any, ParamSpec, TypeVar, cast

from django.db import models, transaction
from django.db.models import F
from django.db.models.deletion import Collector
from django.utils import timezone

from shopjobs.models import Job, Person, Revision, Shop
from shopjobs.row_changes import RowChange, Words
from shopjobs.row_values import Values, said_of, value_of
from shopjobs.services.locks import shop_lock

P = ParamSpec("P")
T = TypeVar("T")
Row = TypeVar("Row", bound=models.Model)
LONGEST = 500
UNRECORDED = {
    "shopjobs.job": {"revision", "updated_at"},
    "shopjobs.person": {"password", "last_login"},
    "fronts.printedsheet": {"cabinet"},
}
"""Columns that are no fact: counters, clocks, what nobody may read back, and where paper that
was printed leads, which may be thrown away before a deletion is taken back."""


@dataclass(slots=True, kw_only=True)
class Told:
    """What a service says that it did; `words` finds a finer line in the rows, if it can.

    What `counts` changes the kitchen of the job, or of all the shop's jobs. `went` says what
    went with something that was taken away. What `stays` has a way back of its own, or nothing
    before it: Undo passes it by.
    """

    shop: Shop
    text: str
    at: datetime
    by: Person | None = None
    job: Job | None = None
    about: str = ""
    went: Sequence[str] = ()
    counts: bool = False
    stays: bool = False
    undoes: Revision | None = None
    words: Words | None = None


@dataclass(slots=True)
class Recording:
    """The rows that changed so far, and what was told last."""

    changes: list[RowChange] = field(default_factory=list)
    told: Told | None = None


_RECORDING: ContextVar[Recording | None] = ContextVar("recording", default=None)
_KEPT: ContextVar[list[Revision] | None] = ContextVar("kept", default=None)


def recorded(service: Callable[P, T]) -> Callable[P, T]:
    """Do all of a service or nothing, and keep a revision of what it did."""

    @wraps(service)
    def run(*args: P.args, **kwargs: P.kwargs) -> T:
        with transaction.atomic():
            if _RECORDING.get() is not None:
                return service(*args, **kwargs)
            recording = Recording()
            token = _RECORDING.set(recording)
            try:
                result = service(*args, **kwargs)
                _keep(recording)
            finally:
                _RECORDING.reset(token)
            return result

    return run


@contextmanager
def revisions_kept() -> Iterator[list[Revision]]:
    """The revisions that services keep meanwhile, for whoever offers to take them back."""
    kept: list[Revision] = []
    token = _KEPT.set(kept)
    try:
        yield kept
    finally:
        _KEPT.reset(token)


@contextmanager
def unkept() -> Iterator[None]:
    """Let rows be written of which nothing is kept, since all of it will be rolled back."""
    token = _RECORDING.set(Recording())
    try:
        yield
    finally:
        _RECORDING.reset(token)


def tell(told: Told) -> None:
    """Say what the service at work did; it is kept if anything changed."""
    _recording().told = told


def saved(
    row: Row,
    columns: Iterable[str] | None = None,
    before: Mapping[str, Any] | None = None,
    name: str = "",
) -> Row:
    """Save a row, new or changed.

    `columns` are those that may differ, all where it is None; `before` is what they held by
    the row's own account, and is asked of the database where nothing is given. `name` is what
    the row is called, where that is known without asking.
    """
    if row._state.adding:
        row.save(force_insert=True)
        _record(RowChange(_label(row), row.pk, None, _said(row), str(row)))
        return row
    facts = recorded_columns(type(row))
    names = {each.attname for each in facts} if columns is None else set(columns)
    if not names:
        return row
    differing = [each for each in facts if {each.name, each.attname} & names]
    if before is None:
        held = type(row)._base_manager.get(pk=row.pk)
    else:
        held = type(row)(**{each.attname: before[each.attname] for each in differing})
    row.save(update_fields=names)
    _record_difference(held, row, differing, name)
    return row


def made(table: type[Row], rows: Sequence[Row]) -> None:
    """Save several new rows at once."""
    table._default_manager.bulk_create(rows)
    for row in rows:
        _record(RowChange(_label(row), row.pk, None, _said(row)))


def deleted(rows: Iterable[models.Model]) -> int:
    """Delete rows with all that goes with them, and let go of them what only points at them.

    Returns how many of the rows there were.
    """
    wanted = list(rows)
    if not wanted:
        return 0
    names = {(_label(row), row.pk): str(row) for row in wanted}
    collector = Collector(using=wanted[0]._state.db or "default")
    collector.collect(wanted)
    _record_letting_go(collector)
    for row in _going(collector):
        label, key = _label(row), int(row.pk)
        _record(RowChange(label, key, _said(row), None, names.get((label, key), "")))
    collector.delete()
    return len(wanted)


def _going(collector: Collector) -> Iterable[models.Model]:
    """Whole rows that go, those that point at others first."""
    for several in collector.fast_deletes:
        yield from several
    collector.sort()
    for table, instances in collector.data.items():
        yield from table._base_manager.filter(pk__in=[each.pk for each in instances])


def _record_letting_go(collector: Collector) -> None:
    for (column, value), several in collector.field_updates.items():
        if column.name in UNRECORDED.get(column.model._meta.label_lower, ()):
            continue
        for rows in cast(Iterable[Iterable[models.Model]], several):
            keys = [row.pk for row in rows]
            table = column.model._base_manager.filter(pk__in=keys)
            held = dict(table.values_list("pk", column.attname)) if keys else {}
            for row in rows:
                before, after = {column.attname: held[row.pk]}, {column.attname: value}
                _record(RowChange(_label(row), row.pk, before, after))


def _record_difference(
    held: models.Model, row: models.Model, columns: "Iterable[models.Field[Any, Any]]", name: str
) -> None:
    before: Values = {}
    after: Values = {}
    for column in columns:
        was, now = value_of(column, held), value_of(column, row)
        if was != now:
            before[column.attname], after[column.attname] = was, now
    if after:
        _record(RowChange(_label(row), row.pk, before, after, name or str(row)))


def _said(row: models.Model) -> Values:
    return said_of(row, recorded_columns(type(row)))


@cache
def recorded_columns(table: type[models.Model]) -> "tuple[models.Field[Any, Any], ...]":
    """The columns whose changes are kept."""
    left_out = UNRECORDED.get(table._meta.label_lower, set())
    return tuple(
        column
        for column in table._meta.concrete_fields
        if not column.primary_key and column.name not in left_out
    )


def _label(row: models.Model) -> str:
    return row._meta.label_lower


def _record(change: RowChange) -> None:
    _recording().changes.append(change)


def _recording() -> Recording:
    recording = _RECORDING.get()
    if recording is None:
        raise RuntimeError("rows are written by recorded services only")
    return recording


def _keep(recording: Recording) -> None:
    told, changes = recording.told, recording.changes
    if not changes:
        return
    if told is None:
        raise RuntimeError("a service changed rows without telling what it did")
    if told.counts:
        _count(told)
    line = (told.words(changes) if told.words else "") or told.text
    revision = Revision.objects.create(
        shop=told.shop,
        job=told.job,
        person=told.by,
        at=told.at,
        text=shortened(line),
        about=told.about,
        changes=[change.as_json() for change in changes],
        went=list(told.went),
        can_undo=not told.stays,
        undoes=told.undoes,
    )
    kept = _KEPT.get()
    if kept is not None:
        kept.append(revision)


def _count(told: Told) -> None:
    """One more change, whoever else counts at the same time."""
    jobs = Job.objects.filter(shop=told.shop)
    if told.job is None:
        shop_lock(told.shop.pk)
        jobs.update(revision=F("revision") + 1)
        return
    told.job.updated_at = timezone.now()
    jobs.filter(pk=told.job.pk).update(revision=F("revision") + 1, updated_at=told.job.updated_at)
    told.job.__dict__.pop("revision", None)  # Read again by whoever asks for it.


def shortened(line: str) -> str:
    """A line cut to what is kept of it."""
    return line if len(line) <= LONGEST else line[: LONGEST - 1] + "…"
