"""Which key each row of a file has here; those that are gone get keys that nothing will have."""

from collections.abc import Hashable
from typing import Any

from django.db import connection
from django.db.models import AutoField

from shopjobs.services.installation import own_tables
from shopjobs.services.refused import Refused
from shopjobs.services.shop_files.tables import Table, label_of

RESERVED_AT_ONCE = 50


class NewKeys:
    """New keys by table and old key."""

    def __init__(self) -> None:
        self._tables = {label_of(table): table for table in own_tables()}
        self._keys: dict[tuple[str, Hashable], Any] = {}
        self._reserved: dict[str, list[int]] = {}

    def give(self, label: str, old: Hashable, new: Any) -> None:
        """A row of the file has its key."""
        if (label, old) in self._keys:
            raise Refused(f"{label} {old} is in this file twice.")
        self._keys[label, old] = new

    def of(self, label: str, old: object) -> Any:
        """The key of a row that is here; None as long as there is none."""
        return self._keys.get((label, old)) if isinstance(old, int | str) else None

    def of_any(self, label: str, old: object) -> int:
        """The key of a row that is here, or that history may bring back.

        One that is gone gets a key of its own: its old one may be another shop's row here.
        """
        if label not in self._tables or not isinstance(old, int):
            raise Refused(f"This file's history names {label} {old}, which is no row of a shop.")
        if (label, old) not in self._keys:
            self._keys[label, old] = self._fresh(label)
        return int(self._keys[label, old])

    def _fresh(self, label: str) -> int:
        reserved = self._reserved.setdefault(label, [])
        if not reserved:
            reserved += reserved_keys(self._tables[label], RESERVED_AT_ONCE)
        return reserved.pop(0)


def reserved_keys(table: Table, count: int) -> list[int]:
    """Keys that the database gives to no row from now on, as it counts them itself."""
    name, key = table._meta.db_table, table._meta.pk
    if not isinstance(key, AutoField):
        raise Refused(f"This file's history names rows of {label_of(table)}, which has none.")
    with connection.cursor() as cursor:
        if connection.vendor == "postgresql":
            cursor.execute(
                "SELECT nextval(pg_get_serial_sequence(%s, %s)) FROM generate_series(1, %s)",
                [connection.ops.quote_name(name), key.column, count],
            )
            return [int(number) for (number,) in cursor.fetchall()]
        cursor.execute("SELECT seq FROM sqlite_sequence WHERE name = %s", [name])
        counted = cursor.fetchone()
        if counted is None:
            cursor.execute("INSERT INTO sqlite_sequence (name, seq) VALUES (%s, 0)", [name])
        first = counted[0] + 1 if counted else 1
        cursor.execute("UPDATE sqlite_sequence SET seq = seq + %s WHERE name = %s", [count, name])
    return list(range(first, first + count))
