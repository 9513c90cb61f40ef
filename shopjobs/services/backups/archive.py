"""The archive: a zip file whose manifest holds the SHA-256 of every other member.

A zip file says at its end what it holds, so that the manifest, written last, is read first,
and an archive that was cut short is none. Nothing is unpacked that the manifest doesn't name.
"""

import shutil
import zlib
from collections.abc import Iterator
from contextlib import contextmanager
from hashlib import sha256
from pathlib import Path
from typing import IO
from zipfile import ZIP_DEFLATED, ZIP_STORED, BadZipFile, ZipFile

from shopjobs.services.backups.manifest import DATABASE, Manifest, Member, read_manifest
from shopjobs.services.refused import Refused

MANIFEST = "manifest.json"
LARGEST_MANIFEST = 64 * 1024 * 1024
PIECE = 1024 * 1024
ENCRYPTED = 0x1
DAMAGED = (BadZipFile, EOFError, NotImplementedError, RuntimeError, ValueError, zlib.error)
"""What reading a zip file may raise where it is none, or was changed."""


class Writer:
    """Takes members one after another, in pieces, and writes what they must be at the end."""

    def __init__(self, file: IO[bytes]) -> None:
        self._zip = ZipFile(file, "w", ZIP_DEFLATED)
        self.members: dict[str, Member] = {}

    def add(self, name: str, source: IO[bytes]) -> None:
        """Add all that can be read from a source."""
        digest, size = sha256(), 0
        with self._zip.open(name, "w", force_zip64=True) as member:
            while piece := source.read(PIECE):
                digest.update(piece)
                size += len(piece)
                member.write(piece)
        self.members[name] = Member(size=size, sha256=digest.hexdigest())

    def close(self, manifest: Manifest) -> None:
        """Write the manifest; without it the archive is none."""
        self._zip.writestr(MANIFEST, manifest.as_json())
        self._zip.close()


class Archive:
    """An archive that anybody may have made: what its manifest doesn't vouch for is refused."""

    def __init__(self, archive: ZipFile) -> None:
        self._zip = archive
        self.manifest = read_manifest(self._manifest())
        stated = {name: member.size for name, member in self.manifest.members.items()}
        held = {info.filename: info.file_size for info in archive.infolist()}
        size_of_manifest = held.pop(MANIFEST)
        if held != stated or len(held) + 1 != len(archive.infolist()) or DATABASE not in held:
            raise Refused("This backup is damaged: it doesn't hold what it says.")
        self.size = sum(held.values()) + size_of_manifest

    def unpack(self, name: str, to: Path) -> None:
        """Write a member into a new file; refuse it if it is not what the manifest says."""
        to.parent.mkdir(parents=True, exist_ok=True)
        digest = sha256()
        with told_damage(), self._zip.open(name) as member, to.open("xb") as file:
            while piece := member.read(PIECE):
                digest.update(piece)
                file.write(piece)
        if digest.hexdigest() != self.manifest.members[name].sha256:
            raise Refused(f"This backup is damaged: {name} is not what was saved.")

    def refuse_unless_room(self, folder: Path) -> None:
        """Refuse what is larger than the disk has room for, before any of it is unpacked."""
        free = shutil.disk_usage(folder).free
        if self.size > free:
            raise Refused(
                f"There is no room for this backup: it unpacks to {self.size:,} bytes, and "
                f"{folder} has {free:,} free."
            )

    def _manifest(self) -> bytes:
        for info in self._zip.infolist():
            if info.compress_type not in (ZIP_STORED, ZIP_DEFLATED) or info.flag_bits & ENCRYPTED:
                raise Refused("This is no backup: it is packed in another way.")
        try:
            info = self._zip.getinfo(MANIFEST)
        except KeyError as error:
            raise Refused("This is no backup: it doesn't say what it is.") from error
        if info.file_size > LARGEST_MANIFEST:
            raise Refused("This is no backup: what it says of itself is too long.")
        return self._zip.read(info)


@contextmanager
def opened(file: IO[bytes]) -> Iterator[Archive]:
    """Open an archive for reading."""
    with told_damage():
        archive = ZipFile(file)
    with archive:
        with told_damage():
            read = Archive(archive)
        yield read


@contextmanager
def told_damage() -> Iterator[None]:
    """Refuse what can't be read as a zip file."""
    try:
        yield
    except Refused:
        raise
    except DAMAGED as error:
        raise Refused("This is no backup, or it is damaged.") from error
