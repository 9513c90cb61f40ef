"""How the site speaks to its database: Django's settings for SQLite and for PostgreSQL."""

from pathlib import Path
from typing import Any

import dj_database_url

from shopjobs.environment import Environment, embedded_database, keep_private

LOCK_SECONDS = 10
"""So long a change waits for somebody else's before "somebody else is saving" is the answer."""
CONNECT_SECONDS = 10
STATEMENT_SECONDS = 60
"""So long one statement of a web request may take; commands and the worker may take longer."""


def database_settings(environment: Environment, *, root: Path) -> dict[str, Any]:
    """Return Django's settings for the database that the environment names."""
    database: dict[str, Any] = {**dj_database_url.parse(environment.database_url, conn_max_age=60)}
    if database["ENGINE"] == "django.db.backends.sqlite3":
        _make_room(database["NAME"], embedded_database(root))
        database["OPTIONS"] = _sqlite(environment)
    else:
        database["CONN_HEALTH_CHECKS"] = True
        database["OPTIONS"] = _postgresql(environment, database.get("OPTIONS", {}))
    return database


def _make_room(name: str, embedded: Path) -> None:
    if name == str(embedded):
        keep_private(embedded)
    elif name != ":memory:":
        Path(name).parent.mkdir(parents=True, exist_ok=True)


def _sqlite(environment: Environment) -> dict[str, Any]:
    """Set up for several people at once.

    In WAL mode a commit with NORMAL outlives the end of a process, but the last ones before
    a power cut may be missing; with FULL they are not (SQLite's documentation of the pragma).
    """
    return {
        "transaction_mode": "IMMEDIATE",
        "timeout": LOCK_SECONDS,
        "init_command": "PRAGMA journal_mode=WAL;"
        f" PRAGMA synchronous={environment.sqlite_synchronous}; PRAGMA foreign_keys=ON;",
    }


def _postgresql(environment: Environment, asked: dict[str, Any]) -> dict[str, Any]:
    """Wait for locks as long as SQLite does; what the address itself asks for comes after."""
    limits = [f"-c lock_timeout={LOCK_SECONDS}s"]
    if environment.answers_web:
        limits.append(f"-c statement_timeout={STATEMENT_SECONDS}s")
    options = " ".join([*limits, asked.get("options", "")]).strip()
    return {"connect_timeout": CONNECT_SECONDS, **asked, "options": options}
