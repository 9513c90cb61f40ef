"""Making a backup of the whole installation, while it goes on working."""

from datetime import datetime
from pathlib import Path

from django.core.files.storage import default_storage
from django.db import connection

from shopjobs.services.backups import postgresql, sqlite
from shopjobs.services.backups.archive import Writer
from shopjobs.services.backups.manifest import FILES, Manifest
from shopjobs.services.backups.uploads import uploads
from shopjobs.services.installation import application_version, migrations_applied
from shopjobs.services.new_file import new_file
from shopjobs.services.refused import Refused

VENDORS = {"sqlite": sqlite, "postgresql": postgresql}


def backup_make(*, to: Path, at: datetime) -> Path:
    """Write a backup into this file, or into this folder under the moment's name; return it.

    The database comes before the files that its rows name: those are there before their rows.
    A database without tables is another one than meant; a backup of it would save nothing.
    """
    migrations = tuple(migrations_applied())
    if not migrations:
        raise Refused("There is nothing to save: this database has no tables of ours yet.")
    path = to if to.suffix == ".zip" else to / f"shopjobs-{at:%Y%m%dT%H%M%SZ}.zip"
    path.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
    with new_file(path) as file:
        writer = Writer(file)
        VENDORS[connection.vendor].save(writer, path.with_name(f".{path.name}.database"))
        for name in uploads():
            with default_storage.open(name) as opened:
                writer.add(f"{FILES}{name}", opened)
        writer.close(
            Manifest(
                made_at=at.isoformat(timespec="seconds"),
                version=application_version(),
                vendor=connection.vendor,
                migrations=migrations,
                members=writer.members,
            )
        )
    return path
