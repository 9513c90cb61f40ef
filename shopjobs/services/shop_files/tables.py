"""Which tables hold a shop's rows: found by following foreign keys, whatever apps declare them."""

from functools import cache
from typing import Any

from django.db.models import Field, ForeignKey, Model, Q, QuerySet

from shopjobs.models import Shop
from shopjobs.services.installation import own_tables

Table = type[Model]

OF_THE_INSTALLATION = {
    "shopjobs.signinfailure": "counts guesses at names of every shop, for minutes",
    "shopjobs.sentform": "tells a form that comes twice here, for days",
    "shopjobs.fileput": "files that are being put here, for minutes",
    "shopjobs.session": "lets a browser into this installation, and no other",
    "fronts.calendarfeed": "lets a calendar program read this installation, and no other",
    "fronts.sheetset": "is printed again in a minute",
    "fronts.sheetfile": "is printed again in a minute",
    "shopjobs.worker": "says which processes of this installation are at work",
}
"""Tables that stay where they are when a shop moves, each with its reason."""

NAMES_ROWS = {"shopjobs.revision": "its changes name rows of every table by their keys"}
"""Tables that are read last, once every row has its key, each with its reason."""


def label_of(table: Table) -> str:
    """What a table is called in a file."""
    return table._meta.label_lower


@cache
def shop_tables() -> dict[str, Table]:
    """The tables of a shop by their labels, each after those that it points at.

    A table is a shop's where a foreign key leads to one that is. Where tables point at each
    other in a circle, a key that may be empty stands back.
    """
    waiting = [table for table in own_tables() if label_of(table) not in OF_THE_INSTALLATION]
    ordered: dict[str, Table] = {label_of(Shop): Shop}
    first = [table for table in waiting if label_of(table) not in NAMES_ROWS]
    for tables in (first, waiting):
        while reached := _next(ordered, tables):
            ordered |= {label_of(table): table for table in reached}
    return ordered


def plain_fields(table: Table) -> "list[Field[Any, Any]]":
    """The columns that hold a value of their own."""
    return [
        field
        for field in table._meta.concrete_fields
        if not field.primary_key and not isinstance(field, ForeignKey)
    ]


def references(table: Table) -> "list[ForeignKey[Any, Any]]":
    """The columns that point at another row."""
    return [field for field in table._meta.concrete_fields if isinstance(field, ForeignKey)]


def target_of(reference: "ForeignKey[Any, Any]") -> str:
    """The label of the table that a column points at."""
    return label_of(reference.related_model._meta.concrete_model or reference.related_model)


def rows_of(shop: Shop, table: Table) -> QuerySet[Model]:
    """Every row of the table that any foreign key leads from to the shop.

    Rows that a manager hides count too.
    """
    rows: QuerySet[Model] = table._base_manager.all()
    if table is Shop:
        return rows.filter(pk=shop.pk)
    tables = shop_tables()
    before = list(tables)[: list(tables).index(label_of(table))]
    leads_here = Q()
    for reference in references(table):
        if target_of(reference) in before:
            leads_here |= Q(
                **{f"{reference.name}__in": rows_of(shop, tables[target_of(reference)])}
            )
    return rows.filter(leads_here)


def _next(ordered: dict[str, Table], waiting: list[Table]) -> list[Table]:
    return _reached(ordered, waiting, strict=True) or _reached(ordered, waiting, strict=False)


def _reached(ordered: dict[str, Table], waiting: list[Table], *, strict: bool) -> list[Table]:
    """Those that lead to a shop while nothing they point at is still to come.

    Unless `strict`, only what they must point at counts.
    """
    to_come = {label_of(table): table for table in waiting if label_of(table) not in ordered}
    reached = []
    for label, table in to_come.items():
        others = to_come.keys() - {label}
        targets = {target_of(each) for each in references(table)}
        needed = {target_of(each) for each in references(table) if strict or not each.null}
        if targets & ordered.keys() and not needed & others:
            reached.append(table)
    return reached
