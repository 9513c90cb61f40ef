"""What a failure of the database says of itself, where people can do something about it."""

import errno
import sqlite3
from typing import Literal

from django.db import DatabaseError

Unsaved = Literal["busy", "full", "read_only", "away"]
"""Why nothing could be saved: somebody else is saving, there is no room, nothing may change, or
the store of photos can't be reached."""

_SQLITE: dict[int, Unsaved] = {
    sqlite3.SQLITE_BUSY: "busy",
    sqlite3.SQLITE_LOCKED: "busy",
    sqlite3.SQLITE_FULL: "full",
    sqlite3.SQLITE_READONLY: "read_only",
}
_POSTGRESQL: dict[str, Unsaved] = {
    "55P03": "busy",
    "40P01": "busy",
    "40001": "busy",
    "57014": "busy",
    "53100": "full",
    "25006": "read_only",
}
"""PostgreSQL, Appendix A: lock not available, deadlock detected, serialization failure, query
canceled, which is what a statement that took too long is; disk full; read only transaction."""
_FILES: dict[int, Unsaved] = {
    errno.ENOSPC: "full",
    errno.EDQUOT: "full",
    errno.EROFS: "read_only",
    errno.EHOSTUNREACH: "away",
}


def why_unsaved(failure: BaseException | None) -> Unsaved | None:
    """Why nothing could be saved; None for a failure of any other kind."""
    if isinstance(failure, OSError):
        return _FILES.get(failure.errno or 0)
    if not isinstance(failure, DatabaseError):
        return None
    cause = failure.__cause__
    if isinstance(cause, sqlite3.Error):
        # The lowest eight bits are the result; those above say more of how it came about.
        return _SQLITE.get(getattr(cause, "sqlite_errorcode", 0) & 0xFF)
    return _POSTGRESQL.get(getattr(cause, "sqlstate", None) or "")
