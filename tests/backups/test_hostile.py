"""A backup that was damaged, or made up by somebody: one line, exit 2, and nothing is touched."""

import json
import random
import shutil
import zipfile
from collections.abc import Callable, Iterator
from hashlib import sha256
from io import BytesIO, StringIO
from pathlib import Path
from typing import Any

import pytest
from django.core.management import call_command

from shopjobs.services.backups.archive import opened
from shopjobs.services.backups.manifest import FORMAT
from shopjobs.services.installation import application_version
from shopjobs.services.refused import Refused
from tests.backups.conftest import New
from tests.backups.installations import Installation
from tests.commands.test_jobs import refused

pytestmark = pytest.mark.thorough

Parts = dict[str, bytes]
Said = dict[str, Any]


def manifest_of(parts: Parts, **said: Any) -> Said:
    """What a backup with these members says of itself."""
    members = {
        name: {"size": len(content), "sha256": sha256(content).hexdigest()}
        for name, content in parts.items()
    }
    usual = {
        "format": FORMAT, "made_at": "2027-03-01T09:30:00+00:00", "vendor": "sqlite",
        "version": application_version(), "migrations": [], "members": members,
    }  # fmt: skip
    return usual | said


def packed(parts: Parts, said: object, method: int = zipfile.ZIP_DEFLATED) -> BytesIO:
    """An archive with these members and this manifest."""
    file = BytesIO()
    with zipfile.ZipFile(file, "w", method) as archive:
        for name, content in parts.items():
            archive.writestr(name, content)
        archive.writestr("manifest.json", said if isinstance(said, str) else json.dumps(said))
    file.seek(0)
    return file


def told(file: BytesIO, folder: Path) -> str:
    """What is said of an archive as it is read and unpacked; "" where it is taken."""
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir()
    try:
        with opened(file) as archive:
            archive.refuse_unless_room(folder)
            for name in archive.manifest.members:
                archive.unpack(name, folder / name)
    except Refused as refusal:
        return refusal.message
    return ""


PARTS = {"database": b"rows " * 4000, "files/photos/a.jpg": bytes(range(256)) * 40}


def test_a_byte_that_changed_anywhere(tmp_path: Path) -> None:
    """It is noticed, unless it says nothing of what is restored; a short file always is."""
    whole, dice = packed(PARTS, manifest_of(PARTS)).getvalue(), random.Random(11)
    folder = tmp_path / "unpacked"
    noticed = 0
    for _ in range(300):
        place = dice.randrange(len(whole))
        changed = bytes([whole[place] ^ (1 << dice.randrange(8))])
        if told(BytesIO(whole[:place] + changed + whole[place + 1 :]), folder):
            noticed += 1
        else:
            assert {name: (folder / name).read_bytes() for name in PARTS} == PARTS
    for _ in range(60):
        assert told(BytesIO(whole[: dice.randrange(len(whole))]), folder)

    assert told(BytesIO(whole), folder) == ""
    assert noticed > 150


@pytest.mark.parametrize(
    "name",
    ["/etc/passwd", "../outside", "files/../../outside", "files//etc/passwd", "files/a/../b",
     "files/", "files/.", "outside", "files/a\\\\..\\\\\x00b", "database/x", ""],
)  # fmt: skip
def test_a_member_that_would_lie_elsewhere(name: str, tmp_path: Path) -> None:
    """Its name is refused before anything is unpacked, whatever its checksum."""
    said = manifest_of({"database": b"", name: b"x"})

    assert "nothing in it may be called" in told(packed({"database": b""}, said), tmp_path / "in")
    assert [path for path in tmp_path.rglob("*") if path.is_file()] == []


def _symbolic_link() -> BytesIO:
    """A member that calls itself a link: unpacked, it is a file like any other."""
    file = BytesIO()
    link = zipfile.ZipInfo("files/link")
    link.external_attr = 0o120777 << 16
    with zipfile.ZipFile(file, "w") as archive:
        archive.writestr("database", b"")
        archive.writestr(link, "/etc/passwd")
        archive.writestr(
            "manifest.json",
            json.dumps(manifest_of({"database": b"", "files/link": b"/etc/passwd"})),
        )
    file.seek(0)
    return file


def test_a_link_is_no_link(tmp_path: Path) -> None:
    """Nothing is reached through it."""
    assert told(_symbolic_link(), tmp_path / "in") == ""
    assert not (tmp_path / "in" / "files" / "link").is_symlink()


def _twice() -> BytesIO:
    file = packed({"database": b"one"}, manifest_of({"database": b"one"}))
    with zipfile.ZipFile(file, "a") as archive, pytest.warns(UserWarning, match="Duplicate"):
        archive.writestr("database", b"two")
    file.seek(0)
    return file


def _huge() -> BytesIO:
    """An archive of a few bytes that says of a member that it is a petabyte."""
    said = manifest_of({"database": b""})
    said["members"]["database"]["size"] = 10**15
    file = BytesIO()
    with zipfile.ZipFile(file, "w") as archive:
        with archive.open("database", "w", force_zip64=True):
            pass
        archive.writestr("manifest.json", json.dumps(said))
        archive.infolist()[0].file_size = 10**15
    file.seek(0)
    return file


def _bomb() -> BytesIO:
    """A member that unpacks to more than it says."""
    said = manifest_of({"database": b"0"})
    file = BytesIO()
    with zipfile.ZipFile(file, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr("database", b"0" * 50_000_000)
        archive.writestr("manifest.json", json.dumps(said))
        archive.infolist()[0].file_size = 1
    file.seek(0)
    return file


def _other(**said: Any) -> BytesIO:
    return packed({"database": b"x"}, manifest_of({"database": b"x"}, **said))


MADE_UP: tuple[tuple[Callable[[], BytesIO], str], ...] = (
    (lambda: BytesIO(b""), "This is no backup, or it is damaged."),
    (lambda: BytesIO(b"PK\x03\x04" * 99), "This is no backup, or it is damaged."),
    (lambda: packed({"database": b"x"}, "{"), "what it says of itself can't be read"),
    (lambda: packed({"database": b"x"}, "[" * 100_000), "what it says of itself can't be read"),
    (lambda: packed({"database": b"x"}, "[1]"), "it doesn't say what it is"),
    (lambda: packed(PARTS, manifest_of(PARTS), zipfile.ZIP_BZIP2), "packed in another way"),
    (lambda: packed({"database": b"y"}, manifest_of({"database": b"x"})), "not what was saved"),
    (lambda: packed({"database": b"xy"}, manifest_of({"database": b"x"})), "what it says"),
    (lambda: packed(PARTS, manifest_of({"database": PARTS["database"]})), "what it says"),
    (lambda: packed({"database": b"x"}, manifest_of(PARTS)), "what it says"),
    (lambda: packed({}, manifest_of({})), "what it says"),
    (_twice, "doesn't hold what it says"),
    (_huge, "There is no room for this backup: it unpacks to 1,000,000,000,"),
    (_bomb, "This is no backup, or it is damaged."),
    (lambda: _other(format="else"), "it doesn't say what it is"),
    (lambda: _other(members=[]), "it doesn't say what it is"),
    (lambda: _other(members={"database": 7}), "what it says of database can't be read"),
    (lambda: _other(version="99.1"), "made by version 99.1; this is version"),
    (lambda: _other(version="new"), "is no version of this program"),
    (lambda: _other(migrations=["fronts.0999_of_tomorrow"]), "fronts.0999_of_tomorrow"),
)


@pytest.mark.parametrize("number", range(len(MADE_UP)))
def test_what_is_no_backup(number: int, tmp_path: Path) -> None:
    """One line says what is wrong, and at most the disk's room is asked for."""
    make, said = MADE_UP[number]

    line = told(make(), tmp_path / "in")

    assert said in line
    assert "\n" not in line


@pytest.mark.django_db
def test_the_command_says_it_in_a_line(tmp_path: Path) -> None:
    """A missing file, a folder, another kind of database, a file that is no backup."""
    file = tmp_path / "made-up.zip"
    file.write_bytes(_other(vendor="oracle").getvalue())

    (line,) = refused("restore", str(file))
    assert line.startswith("This is a backup of oracle, and this installation is on ")
    assert refused("restore", str(tmp_path)) == [f"{tmp_path}: is a directory"]
    missing = tmp_path / "none.zip"
    assert refused("restore", str(missing)) == [f"{missing}: no such file or directory"]
    with pytest.raises(SystemExit):
        call_command("restore", __file__, stderr=StringIO())


def _with_database(site: Installation, folder: Path, database: bytes) -> Path:
    """A backup of the installation whose database is another, checksums and all."""
    site.manage("backup", "--to", str(folder / "whole.zip"))
    with zipfile.ZipFile(folder / "whole.zip") as archive:
        said = json.loads(archive.read("manifest.json"))
        parts = {name: archive.read(name) for name in said["members"]} | {"database": database}
    file = folder / "made-up.zip"
    file.write_bytes(packed(parts, said | {"members": manifest_of(parts)["members"]}).getvalue())
    return file


def _databases(site: Installation, folder: Path) -> Iterator[bytes]:
    yield b"no database at all"
    site.manage("backup", "--to", str(folder / "source.zip"))
    with zipfile.ZipFile(folder / "source.zip") as archive:
        whole = archive.read("database")
    yield whole[: len(whole) // 2]
    third = len(whole) // 3
    yield whole[:third] + bytes(4096) + whole[third + 4096 :]


def test_a_database_that_is_none(site: Installation, new: New, tmp_path: Path) -> None:
    """With its checksum in order it is found out as it is loaded; rows and files are as before."""
    here = new()
    site.manage("backup", "--to", str(tmp_path / "good.zip"))
    here.manage("restore", str(tmp_path / "good.zip"))
    (here.uploads / "ours.txt").write_text("ours")
    before = here.rows()

    for number, database in enumerate(_databases(site, tmp_path)):
        (tmp_path / str(number)).mkdir()
        file = _with_database(site, tmp_path / str(number), database)
        line = here.refused("restore", str(file), "--replace")
        assert len(line) > 20

    assert here.rows() == before
    assert (here.uploads / "ours.txt").read_text() == "ours"
    assert [path for path in here.uploads.parent.iterdir() if ".restore" in path.name] == []


def test_a_database_of_tomorrow(site: Installation, new: New, tmp_path: Path) -> None:
    """A migration that this version doesn't have is named, and nothing is touched."""
    tomorrow, here = new(), new()
    site.manage("backup", "--to", str(tmp_path / "today.zip"))
    tomorrow.manage("restore", str(tmp_path / "today.zip"))
    tomorrow.python(
        "import django; django.setup()\n"
        "from django.db import connection\n"
        "from django.db.migrations.recorder import MigrationRecorder\n"
        "MigrationRecorder(connection).record_applied('fronts', '0999_of_tomorrow')\n"
    )
    tomorrow.manage("backup", "--to", str(tmp_path / "tomorrow.zip"))

    assert here.refused("restore", str(tmp_path / "tomorrow.zip")) == (
        "This was made by another version, with migrations that this one doesn't have: "
        "fronts.0999_of_tomorrow. Install that version first."
    )
    here.manage("restore", str(tmp_path / "today.zip"))
