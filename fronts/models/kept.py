"""Tables that keep the things of a kitchen: which kind each keeps, and what its rows belong to."""

from functools import cache
from typing import Any, ClassVar

from django.apps import apps
from django.db import models


class Kept(models.Model):
    """A table of one kind of thing, a row each.

    `facts` is the kind, each of whose single facts has a column; `owner` names the column of
    the job or the thing that a row belongs to. Snapshots, imports, copies and editors go by
    these two, so that a new kind of thing needs no code of theirs.
    """

    facts: ClassVar[type]
    owner: ClassVar[str]

    class Meta:
        abstract = True


def table_of(kind: type) -> type[Kept]:
    """The table that keeps things of this kind."""
    return _table_of(kind)


@cache
def _table_of(kind: Any) -> type[Kept]:
    return next(table for table in kept_tables() if table.facts is kind)


def kept_tables() -> list[type[Kept]]:
    """Every table that keeps things of a kitchen."""
    return [table for table in apps.get_models() if issubclass(table, Kept)]


@cache
def order_of(table: type[Kept]) -> tuple[str, ...]:
    """How the rows of one owner follow each other: in people's order, where there is one."""
    placed = any(column.name == "position" for column in table._meta.fields)
    return ("position", "pk") if placed else ("pk",)
