"""Writing a shop's file: every row that belongs to it, as of one moment."""

from collections.abc import Iterator
from contextlib import contextmanager
from typing import IO, Any

from django.contrib.auth.hashers import make_password
from django.db import connection, transaction
from django.db.models import Model

from shopjobs.models import Person, Shop
from shopjobs.row_values import Values
from shopjobs.services.installation import application_version, migrations_applied, own_apps
from shopjobs.services.refused import Refused
from shopjobs.services.shop_files.lines import write_lines
from shopjobs.services.shop_files.rows import values_of
from shopjobs.services.shop_files.tables import (
    label_of,
    references,
    rows_of,
    shop_tables,
    target_of,
)

FORMAT = "a shop with all that belongs to it"
READ_AT_ONCE = 200

Keys = dict[str, set[Any]]


def shop_export(*, shop: Shop, to: IO[bytes], with_people: bool = True) -> int:
    """Write the shop's file; return how many rows it holds.

    Without people, nobody's password is in it: they come over by name, since records say
    who measured, fitted and checked.
    """
    with _one_moment():
        return write_lines(to, _lines(shop, with_people=with_people)) - 1


def _lines(shop: Shop, *, with_people: bool) -> Iterator[Any]:
    yield {
        "format": FORMAT,
        "application": application_version(),
        "migrations": migrations_applied(*own_apps()),
        "shop": shop.name,
        "people": with_people,
    }
    keys = {
        label: set(rows_of(shop, table).values_list("pk", flat=True))
        for label, table in shop_tables().items()
    }
    for label, table in shop_tables().items():
        for row in rows_of(shop, table).order_by("pk").iterator(chunk_size=READ_AT_ONCE):
            _refuse_strangers(row, keys)
            yield [label, row.pk, _own_values(row, with_people=with_people)]


def _own_values(row: Model, *, with_people: bool) -> Values:
    values = values_of(row)
    if isinstance(row, Person) and not with_people:
        values["password"] = make_password(None)
    return values


def _refuse_strangers(row: Model, keys: Keys) -> None:
    """Refuse a row that points outside the shop: elsewhere it would point at nothing, or at any."""
    for reference in references(type(row)):
        key = getattr(row, reference.attname)
        if key is not None and key not in keys.get(target_of(reference), ()):
            raise Refused(
                f"{label_of(type(row))} {row.pk} points at {target_of(reference)} {key}, which is "
                "not of this shop; the two can't be taken apart."
            )


@contextmanager
def _one_moment() -> Iterator[None]:
    """Read everything as of one moment, in nobody's way: writers go on meanwhile."""
    if connection.in_atomic_block:
        yield
        return
    if connection.vendor == "sqlite":
        usual = connection.transaction_mode  # type: ignore[attr-defined]
        connection.transaction_mode = "DEFERRED"  # type: ignore[attr-defined]
    try:
        with transaction.atomic():
            if connection.vendor == "postgresql":
                with connection.cursor() as cursor:
                    cursor.execute("SET TRANSACTION ISOLATION LEVEL REPEATABLE READ, READ ONLY")
            yield
    finally:
        if connection.vendor == "sqlite":
            connection.transaction_mode = usual  # type: ignore[attr-defined]
