"""What a backup says of itself: who made it, of what, and what each member must be."""

import json
import re
from collections.abc import Mapping
from dataclasses import asdict, dataclass
from pathlib import PurePosixPath
from typing import Any

from shopjobs.services.installation import refuse_newer
from shopjobs.services.refused import Refused

FORMAT = "an installation of the kitchen's fronts"
DATABASE = "database"
FILES = "files/"
SHA_256 = re.compile("[0-9a-f]{64}")


@dataclass(frozen=True, slots=True, kw_only=True)
class Member:
    """One file of the archive."""

    size: int
    sha256: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Manifest:
    """`vendor` is the kind of database, `made_at` the moment that the backup began."""

    made_at: str
    version: str
    vendor: str
    migrations: tuple[str, ...]
    members: Mapping[str, Member]

    @property
    def files(self) -> list[str]:
        """The members that people uploaded."""
        return [name for name in self.members if name != DATABASE]

    def as_json(self) -> str:
        """The text of the manifest."""
        return json.dumps({"format": FORMAT, **asdict(self)}, indent=1)


def read_manifest(text: bytes) -> Manifest:
    """Read a manifest that anybody may have written; refuse one of a newer version by name."""
    try:
        said: Any = json.loads(text)
    except (ValueError, RecursionError) as error:
        raise Refused("This is no backup: what it says of itself can't be read.") from error
    match said:
        case {
            "format": str(format_),
            "made_at": str(made_at),
            "version": str(version),
            "vendor": str(vendor),
            "migrations": list(migrations),
            "members": dict(members),
        } if format_ == FORMAT and all(isinstance(each, str) for each in migrations):
            refuse_newer(version=version, migrations=migrations)
            return Manifest(
                made_at=made_at,
                version=version,
                vendor=vendor,
                migrations=tuple(migrations),
                members={name: _member(name, member) for name, member in members.items()},
            )
    raise Refused("This is no backup: it doesn't say what it is.")


def _member(name: str, said: Any) -> Member:
    if name != DATABASE and not is_safe(name):
        raise Refused(f"This is no backup: nothing in it may be called {name!a}.")
    match said:
        case {"size": int(size), "sha256": str(digest)} if size >= 0 and SHA_256.fullmatch(digest):
            return Member(size=size, sha256=digest)
    raise Refused(f"This is no backup: what it says of {name} can't be read.")


def is_safe(name: str) -> bool:
    """Whether it names a file below the folder of uploaded files, and nothing else."""
    below = PurePosixPath(name.removeprefix(FILES))
    leads_out = below.is_absolute() or not below.parts or ".." in below.parts
    if leads_out or name != f"{FILES}{below}" or "\0" in name:
        return False
    return name.encode(errors="replace").decode() == name
