"""What this installation is: its version, its own tables and rows, and the migrations it has."""

import tomllib
from collections.abc import Iterable
from pathlib import Path

from django.apps import apps
from django.conf import settings
from django.db import connection
from django.db.migrations.loader import MigrationLoader
from django.db.migrations.recorder import MigrationRecorder
from django.db.models import Model

from shopjobs.services.refused import Refused


def application_version() -> str:
    """The version that pyproject.toml states."""
    text = (settings.BASE_DIR / "pyproject.toml").read_text(encoding="utf-8")
    return str(tomllib.loads(text)["project"]["version"])


def own_apps() -> list[str]:
    """The labels of the project's own apps: those that lie beside each other at its top."""
    return [
        app.label for app in apps.get_app_configs() if Path(app.path).parent == settings.BASE_DIR
    ]


def own_tables() -> list[type[Model]]:
    """Every table of the project's own apps, those of many-to-many fields included."""
    own = own_apps()
    return [
        table
        for table in apps.get_models(include_auto_created=True)
        if table._meta.app_label in own and table._meta.managed and not table._meta.proxy
    ]


def tables_there() -> list[str]:
    """The installation's tables in the database, those that earlier versions left included."""
    prefixes = tuple(f"{label}_" for label in own_apps())
    known = {
        *connection.introspection.django_table_names(),
        MigrationRecorder.Migration._meta.db_table,
    }
    names = connection.introspection.table_names()
    return sorted(name for name in names if name in known or name.startswith(prefixes))


def holds_rows() -> bool:
    """Whether any table of the project's own has a row; one that isn't made yet has none."""
    there = set(connection.introspection.table_names())
    return any(
        table._base_manager.exists() for table in own_tables() if table._meta.db_table in there
    )


def migrations_applied(*labels: str) -> list[str]:
    """The migrations that the database has had, of these apps or of all, as `app.name`.

    One that stands for several is none of its own: whether a database had it or all of those
    is the same.
    """
    applied = MigrationRecorder(connection).applied_migrations()
    standing_for_several = MigrationLoader(None).replacements
    return sorted(
        f"{app}.{name}"
        for app, name in applied
        if (not labels or app in labels) and (app, name) not in standing_for_several
    )


def refuse_newer(*, version: str, migrations: Iterable[str]) -> None:
    """Refuse what a newer version made, by that version or by the migrations unknown here."""
    here = application_version()
    if _numbers(version) > _numbers(here):
        raise Refused(f"This was made by version {version}; this is version {here}. Upgrade first.")
    refuse_unknown(migrations)


def refuse_unknown(migrations: Iterable[str]) -> None:
    """Refuse a database that has had migrations which this version doesn't have."""
    loader = MigrationLoader(None)
    known = {f"{app}.{name}" for app, name in loader.disk_migrations}
    known |= {
        f"{app}.{name}"
        for migration in loader.disk_migrations.values()
        for app, name in migration.replaces
    }
    unknown = [name for name in migrations if name not in known]
    if unknown:
        raise Refused(
            "This was made by another version, with migrations that this one doesn't have: "
            f"{', '.join(unknown)}. Install that version first."
        )


def _numbers(version: str) -> list[int]:
    parts = version.split(".")
    if not all(part.isascii() and part.isdecimal() for part in parts):
        raise Refused(f"“{version}” is no version of this program.")
    return [int(part) for part in parts]
