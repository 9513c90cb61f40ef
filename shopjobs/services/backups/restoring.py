"""Bringing a backup back: checked first, then put in place whole, or not at all."""

import tempfile
from dataclasses import dataclass
from pathlib import Path
from typing import IO

from django.db import connection

from shopjobs.services.backups.archive import Archive, opened
from shopjobs.services.backups.making import VENDORS
from shopjobs.services.backups.manifest import DATABASE, FILES, Manifest
from shopjobs.services.backups.uploads import (
    folder_of_uploads,
    takes_uploads,
    uploads,
    uploads_in_place,
)
from shopjobs.services.installation import holds_rows
from shopjobs.services.refused import Refused


@dataclass(frozen=True, slots=True, kw_only=True)
class Restored:
    """What was brought back, and how many migrations it needed."""

    manifest: Manifest
    migrated: int


def backup_restore(*, file: IO[bytes], replace: bool) -> Restored:
    """Check every member of a backup, then let it take the installation's place.

    Where anything is here already, it is refused unless told to `replace` that.
    """
    with opened(file) as archive:
        _refuse_other(archive.manifest)
        if not replace:
            _refuse_over_anything()
        place = _workplace()
        archive.refuse_unless_room(place)
        with tempfile.TemporaryDirectory(prefix=".restore-", dir=place) as folder:
            unpacked = _unpacked(archive, Path(folder))
            with uploads_in_place(unpacked / FILES):
                migrated = VENDORS[connection.vendor].restore(unpacked / DATABASE)
        return Restored(manifest=archive.manifest, migrated=migrated)


def _refuse_other(manifest: Manifest) -> None:
    if manifest.vendor != connection.vendor:
        raise Refused(
            f"This is a backup of {manifest.vendor}, and this installation is on "
            f"{connection.vendor}. A shop moves between them by export_shop and import_shop."
        )
    if manifest.files and not takes_uploads():
        raise Refused("This backup holds uploaded files, and this installation takes none.")


def _refuse_over_anything() -> None:
    if holds_rows() or next(uploads(), None) is not None:
        raise Refused("There is something here already. Say --replace to put this in its place.")


def _workplace() -> Path:
    """A folder on the disk that what is restored will stay on."""
    if uploaded := folder_of_uploads():
        return uploaded.parent
    if connection.vendor == "sqlite":
        return Path(connection.settings_dict["NAME"]).parent
    return Path(tempfile.gettempdir())


def _unpacked(archive: Archive, folder: Path) -> Path:
    (folder / FILES).mkdir()
    for name in archive.manifest.members:
        archive.unpack(name, folder / name)
    return folder
