"""Taking back what a revision changed, row by row; and what stands in the way of that."""

from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby

from django.apps import apps
from django.db import IntegrityError
from django.db.models import ForeignKey, Model
from django.db.models.deletion import Collector, RestrictedError

from shopjobs.models import Revision
from shopjobs.row_changes import RowChange, changes_of
from shopjobs.row_values import Values, python_value, row_with, said_of, value_of
from shopjobs.selectors import last_touching, revisions_of
from shopjobs.services.recording import deleted, made, recorded_columns, saved
from shopjobs.services.refused import Refused


@dataclass(frozen=True, slots=True)
class Clash:
    """A row that is no longer as the revision left it, and what was done to it last since.

    `column` is the one that differs, "" where it is the row itself that has come or gone.
    """

    table: str
    key: int
    name: str
    column: str
    since: Revision | None


def clashes(revision: Revision) -> list[Clash]:
    """What others, or the same person, changed since of what taking this back would change."""
    changes = _as_left(changes_of(revision.changes))
    own = {(change.table, change.key) for change in changes}
    gone = {(change.table, change.key) for change in changes if change.after is None}
    found = [clash for change in changes for clash in _clashes(change, revision, own, gone)]
    return list({(clash.table, clash.key, clash.column): clash for clash in found}.values())


def _as_left(changes: Sequence[RowChange]) -> list[RowChange]:
    """The changes, each with what stood in its columns once all of them were made.

    A service may change a row twice: a record lets its front go, and finds the new one. Of a
    row that it made, and then entered more into, all that it says in the end was left.
    """
    left: dict[tuple[str, int], Values] = defaultdict(dict)
    for change in changes:
        left[change.table, change.key] |= change.after or {}

    def as_left(change: RowChange) -> Values | None:
        held = left[change.table, change.key]
        if change.after is None:
            return None
        if change.before is None:
            return {name: value for name, value in held.items() if value not in (None, "")}
        return {name: held[name] for name in change.after}

    return [change._replace(after=as_left(change)) for change in changes]


def take_back(revision: Revision) -> None:
    """Bring back the state before a revision, as a part of the recorded service at work.

    What is as it was already stays; `Refused` where a row can't come back.
    """
    changes = reversed(changes_of(revision.changes))
    for (label, kind), several in groupby(changes, key=_table_and_kind):
        table = _table(label)
        try:
            _TAKE_BACK[kind](table, list(several))
        except RestrictedError as error:
            raise Refused(f"The {table._meta.verbose_name} is in use by now.") from error
        except IntegrityError as error:
            name = table._meta.verbose_name
            raise Refused(f"There is another {name} in its place by now.") from error


def _unmake(table: type[Model], changes: Sequence[RowChange]) -> None:
    deleted(table._base_manager.filter(pk__in=[change.key for change in changes]))


def _bring_back(table: type[Model], changes: Sequence[RowChange]) -> None:
    there = set(
        table._base_manager.filter(pk__in=[change.key for change in changes]).values_list(
            "pk", flat=True
        )
    )
    missing = [change for change in changes if change.key not in there]
    rows = [row_with(table, change.key, change.before or {}) for change in missing]
    _refuse_strays(table, rows)
    for change, row in zip(missing, rows, strict=True):
        if change.name:
            saved(row)
    made(table, [row for change, row in zip(missing, rows, strict=True) if not change.name])


def _change_back(table: type[Model], changes: Sequence[RowChange]) -> None:
    for change in changes:
        row = table._base_manager.filter(pk=change.key).first()
        if row is None:
            raise Refused(f"{change.name or 'What it changed'} is gone. Bring it back first.")
        before, held = change.before or {}, dict(vars(row))
        for column in table._meta.concrete_fields:
            if column.attname in before:
                setattr(row, column.attname, python_value(column, before[column.attname]))
        saved(row, before, held, change.name)


_TAKE_BACK = {"made": _unmake, "deleted": _bring_back, "changed": _change_back}


def _table_and_kind(change: RowChange) -> tuple[str, str]:
    if change.before is None:
        return change.table, "made"
    return change.table, "deleted" if change.after is None else "changed"


def _refuse_strays(table: type[Model], rows: Sequence[Model]) -> None:
    """A row comes back only to what it belonged to."""
    for column in table._meta.concrete_fields:
        if isinstance(column, ForeignKey):
            keys = {getattr(row, column.attname) for row in rows} - {None}
            there = column.related_model._base_manager.filter(pk__in=keys).count()
            if there != len(keys):
                gone = column.related_model._meta.verbose_name
                raise Refused(f"The {gone} that it belongs to is gone. Bring that back first.")


def _clashes(
    change: RowChange,
    revision: Revision,
    own: set[tuple[str, int]],
    gone: set[tuple[str, int]],
) -> Iterator[Clash]:
    """`own` are the rows that the revision touched, `gone` those that it deleted in the end."""
    table = _table(change.table)
    row = table._base_manager.filter(pk=change.key).first()
    if row is None:
        is_changed = change.before is not None and change.after is not None
        if is_changed and (change.table, change.key) not in gone:
            yield _clash(change, revision, "")
    elif change.after is None:
        yield _clash(change, revision, "")
    else:
        for name in _differing(table, row, change):
            yield _clash(change, revision, name)
        if change.before is None:
            yield from _come_since(row, revision, own)


def _differing(table: type[Model], row: Model, change: RowChange) -> Iterator[str]:
    """The columns of a row that do not hold any more what the change left there."""
    after = change.after or {}
    columns = recorded_columns(table)
    if change.before is None:
        now = said_of(row, columns)
        yield from (name for name in {**after, **now} if after.get(name) != now.get(name))
        return
    for column in columns:
        if column.attname in after and value_of(column, row) != after[column.attname]:
            yield column.attname


def _come_since(row: Model, revision: Revision, own: set[tuple[str, int]]) -> Iterator[Clash]:
    """What would go with a row that the revision did not make itself."""
    for each in _going_with(row):
        label, key = each._meta.label_lower, int(each.pk)
        if (label, key) not in own:
            change = RowChange(label, key, None, {}, str(each))
            yield _clash(change, revision, "")


def _going_with(row: Model) -> list[Model]:
    """What would go with a row, or keeps it from going."""
    collector = Collector(using=row._state.db or "default")
    try:
        collector.collect([row])
    except RestrictedError as error:
        return list(error.restricted_objects)
    going: list[Model] = [each for several in collector.data.values() for each in several]
    for several in collector.fast_deletes:
        going += several
    return going


def _clash(change: RowChange, revision: Revision, column: str) -> Clash:
    since = _last_since(revision, change.table, change.key, column)
    return Clash(change.table, change.key, change.name, column, since)


def _last_since(revision: Revision, table: str, key: int, column: str) -> Revision | None:
    """The last revision since that touched the row, in this column where one is named."""
    later = revisions_of(revision.job or revision.shop).filter(pk__gt=revision.pk)
    return last_touching(later, {(table, key)}, column)


def _table(label: str) -> type[Model]:
    return apps.get_model(label)
