"""What a database itself says of the tables that were made in it."""

from django.db import connection
from django.db.backends.utils import CursorWrapper

from shopjobs.services.installation import own_tables


def made_tables() -> set[tuple[str, ...]]:
    """Each column, each constraint and each index of the project's own tables."""
    names = sorted(table._meta.db_table for table in own_tables())
    ask = {"sqlite": _of_sqlite, "postgresql": _of_postgresql}[connection.vendor]
    with connection.cursor() as cursor:
        return ask(cursor, names)


def _of_sqlite(cursor: CursorWrapper, names: list[str]) -> set[tuple[str, ...]]:
    cursor.execute("SELECT tbl_name, type, sql FROM sqlite_master WHERE sql <> ''")
    return {
        (name, part.strip())
        for name, kind, sql in cursor.fetchall()
        if name in names
        for part in (_parts(sql) if kind == "table" else [sql])
    }


def _of_postgresql(cursor: CursorWrapper, names: list[str]) -> set[tuple[str, ...]]:
    """Without the names that Django makes up: they keep what a table was once called."""
    ours = {
        named.name
        for table in own_tables()
        for named in (*table._meta.constraints, *table._meta.indexes)
    }
    cursor.execute(
        "SELECT table_name, column_name, data_type, character_maximum_length,"
        " numeric_precision, numeric_scale, is_nullable, column_default, identity_generation"
        " FROM information_schema.columns WHERE table_name = ANY(%s)",
        [names],
    )
    columns = {tuple(map(str, row)) for row in cursor.fetchall()}
    cursor.execute(
        "SELECT conrelid::regclass::text, conname, pg_get_constraintdef(oid)"
        " FROM pg_constraint WHERE conrelid::regclass::text = ANY(%s)"
        " UNION ALL"
        " SELECT tablename, indexname, indexdef FROM pg_indexes WHERE tablename = ANY(%s)",
        [names, names],
    )
    return columns | {
        (table, name if name in ours else "", said.replace(name, ""))
        for table, name, said in cursor.fetchall()
    }


def _parts(sql: str) -> list[str]:
    """The columns and constraints of a table, as SQLite keeps what made it."""
    _, _, inside = sql.partition("(")
    depth, parts = 0, [""]
    for sign in inside[: inside.rindex(")")]:
        depth += (sign == "(") - (sign == ")")
        if sign == "," and not depth:
            parts.append("")
        else:
            parts[-1] += sign
    return parts
