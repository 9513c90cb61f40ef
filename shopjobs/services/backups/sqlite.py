"""SQLite's part of a backup: copied and put in place by its online backup API.

Both are one transaction: a copy is of one moment while people go on writing, and what is put
in place is there whole or not at all, even where the process is killed; a server that runs
sees it at its next request.
"""

import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

from django.db import DatabaseError, connection

from shopjobs.database import LOCK_SECONDS
from shopjobs.services.backups.archive import Writer
from shopjobs.services.backups.bringing_up import bring_up
from shopjobs.services.backups.manifest import DATABASE
from shopjobs.services.refused import Refused, first_line

TAKEN = {sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED}


def save(writer: Writer, draft: Path) -> None:
    """Add a copy of the database, made in a draft that is gone afterwards."""
    connection.ensure_connection()
    try:
        with closing(sqlite3.connect(draft)) as copy:
            connection.connection.backup(copy)
            copy.execute("PRAGMA journal_mode=DELETE")  # A file of its own, without a log beside.
        with draft.open("rb") as file:
            writer.add(DATABASE, file)
    except sqlite3.Error as error:
        raise Refused(f"The database can't be copied: {error}.") from error
    finally:
        draft.unlink(missing_ok=True)


def restore(unpacked: Path) -> int:
    """Put a database in the place of the site's; return how many migrations it needed."""
    try:
        _check(unpacked)
        with _site_on(unpacked):
            count = bring_up()
        _put_in_place(unpacked)
    except (sqlite3.Error, DatabaseError) as error:
        first = first_line(error)
        raise Refused(f"The database of this backup can't be used: {first}.") from error
    return count


def _check(file: Path) -> None:
    with closing(sqlite3.connect(file)) as database:
        faults = database.execute("PRAGMA integrity_check(1)").fetchall()
        dangling = database.execute("PRAGMA foreign_key_check").fetchone()
    if faults != [("ok",)] or dangling is not None:
        raise Refused("The database of this backup doesn't hold together.")


@contextmanager
def _site_on(file: Path) -> Iterator[None]:
    """Let the site's connection be to another file for a while."""
    usual = connection.settings_dict["NAME"]
    connection.close()
    connection.settings_dict["NAME"] = str(file)
    try:
        yield
    finally:
        connection.close()
        connection.settings_dict["NAME"] = usual


def _put_in_place(file: Path) -> None:
    site = connection.settings_dict["NAME"]
    with (
        closing(sqlite3.connect(file)) as source,
        closing(sqlite3.connect(site, timeout=LOCK_SECONDS)) as target,
    ):
        source.backup(target, progress=_refuse_if_taken)
        target.execute("PRAGMA wal_checkpoint(TRUNCATE)")


def _refuse_if_taken(status: int, remaining: int, total: int) -> None:
    if status in TAKEN:
        raise Refused("Somebody is saving all the time. Stop the server, then restore again.")
