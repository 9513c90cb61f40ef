"""What changed of a row, in words: the names of its columns, what they held and hold."""

from collections.abc import Callable, Sequence
from typing import Any

from django.apps import apps
from django.db.models import Field, ForeignKey

from shopjobs.row_changes import RowChange
from shopjobs.row_values import python_value

Say = Callable[["Field[Any, Any]", Any], str]


def words_of_rows(changes: Sequence[RowChange]) -> str:
    """`K-104: client Ash → Birch`; "" where a row was made or deleted."""
    if any(change.before is None or change.after is None for change in changes):
        return ""
    return "; ".join(words_of(change) for change in changes if change.name)


def words_of(change: RowChange) -> str:
    """What changed of one row that was there before and after."""
    before, after = change.before or {}, change.after or {}
    table = apps.get_model(change.table)
    said = []
    for name in after:
        field = table._meta.get_field(name)
        was, now = plain_words(field, before[name]), plain_words(field, after[name])
        if was != now:  # The same address of another client is another row.
            said.append(f"{field.verbose_name} {was} → {now}")
    return f"{change.name}: {', '.join(said)}"


def plain_words(field: "Field[Any, Any]", value: Any) -> str:
    """A value as a person reads it."""
    if value in (None, ""):
        return "nothing"
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(field, ForeignKey):
        row = field.related_model._base_manager.filter(pk=value).first()
        return "one that is gone" if row is None else str(getattr(row, "shown_name", row))
    held = python_value(field, value)
    chosen = dict(field.flatchoices).get(held)
    return str(held if chosen is None else chosen)
