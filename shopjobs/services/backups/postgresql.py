"""PostgreSQL's part of a backup: pg_dump out, and what pg_restore reads of it back in.

Only the installation's own tables go out and come in; others in the same database stay. They
come in through the site's own connection, so that dropping, loading and migrating are one
transaction; psql, whose scripts can start programs, has no part in it.
"""

import os
import re
import shutil
import subprocess
import tempfile
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import IO, cast

from django.db import DatabaseError, OperationalError, connection, transaction
from django.db.backends.utils import CursorWrapper

from shopjobs.services.backups.archive import Writer
from shopjobs.services.backups.bringing_up import bring_up
from shopjobs.services.backups.manifest import DATABASE
from shopjobs.services.installation import tables_there
from shopjobs.services.refused import Refused, first_line

COPY = re.compile(rb"COPY .* FROM stdin;\n")
END_OF_ROWS = b"\\.\n"
AS_SCRIPT = ("--no-owner", "--no-privileges", "--file=-")


def save(writer: Writer, draft: Path) -> None:
    """Add what pg_dump says of the installation's tables; it needs no draft."""
    with connection.cursor() as cursor:
        cursor.execute("SELECT current_schema()")
        (schema,) = cursor.fetchone()
    tables = [f'--table="{schema}"."{name}"' for name in tables_there()]
    asked = ["--format=custom", "--compress=0", *tables]
    arguments, environ = connection.client.settings_to_cmd_args_env(connection.settings_dict, asked)
    with _running("pg_dump", arguments[1:], environ or {}) as output:
        writer.add(DATABASE, output)


def restore(unpacked: Path) -> int:
    """Put a dump in the place of the installation's tables; return how many migrations it took."""
    try:
        with transaction.atomic(), connection.cursor() as cursor:
            cursor.execute("SHOW search_path")
            (search_path,) = cursor.fetchone()
            _drop_tables(cursor)
            with _running("pg_restore", [*AS_SCRIPT, str(unpacked)], {}) as script:
                _run(cursor, script)
            cursor.execute("SELECT set_config('search_path', %s, false)", [search_path])
            # A table whose rows are still to be checked can't be migrated.
            cursor.execute("SET CONSTRAINTS ALL IMMEDIATE")
            count = bring_up()
    except DatabaseError as error:
        first = first_line(error)
        raise Refused(f"The database of this backup can't be used: {first}.") from error
    finally:
        connection.close()  # The script changed settings of the session.
    return count


def _drop_tables(cursor: CursorWrapper) -> None:
    names = [connection.ops.quote_name(name) for name in tables_there()]
    if not names:
        return
    try:
        cursor.execute(f"DROP TABLE {', '.join(names)}")
    except OperationalError as error:
        raise Refused(
            "The database is in use. Stop the server and its workers, then restore again."
        ) from error


def _run(cursor: CursorWrapper, script: IO[bytes]) -> None:
    """Run a script as pg_restore writes it: statements, and rows between COPY and a full stop."""
    statements: list[bytes] = []
    for line in script:
        if COPY.fullmatch(line):
            cursor.execute(b"".join(statements).decode())
            statements = []
            with cursor.copy(line.decode()) as rows:
                for row in iter(script.readline, END_OF_ROWS):
                    if not row:
                        raise Refused("The database of this backup is cut short.")
                    rows.write(row)
        elif not line.startswith(b"\\"):  # A word to psql, which doesn't read this.
            statements.append(line)
    cursor.execute(b"".join(statements).decode())


@contextmanager
def _running(
    program: str, arguments: Sequence[str], environ: dict[str, str]
) -> Iterator[IO[bytes]]:
    """Run one of PostgreSQL's programs and read what it writes; refuse what it refuses."""
    found = shutil.which(program)
    if found is None:
        raise Refused(f"{program} is not installed; it comes with PostgreSQL's client programs.")
    with (
        tempfile.TemporaryFile() as faults,
        subprocess.Popen(
            [found, *arguments],
            stdout=subprocess.PIPE,
            stderr=faults,
            env={**os.environ, **environ},
        ) as process,
    ):
        yield cast(IO[bytes], process.stdout)
        if process.wait():
            faults.seek(0)
            first = faults.read().decode(errors="replace").partition("\n")[0]
            raise Refused(f"{first or program + ' failed'}.")
