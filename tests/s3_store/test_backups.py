"""A backup holds what lies in the bucket, and brings it back to a bucket or to a folder."""

from pathlib import Path

import pytest

from tests.backups.installations import FURNISH, Installation
from tests.s3_store.store import Store

pytestmark = pytest.mark.thorough

HERE, THERE = "uploads-here", "uploads-there"


def installation(store: Store, folder: Path, place: str, name: str) -> Installation:
    """An installation with nothing in it, which keeps its photos in that place."""
    told = store.environ | {
        "SHOPJOBS_UPLOADS": place, "DJANGO_SETTINGS_MODULE": "tests.s3_store.settings"
    }  # fmt: skip
    return Installation(url=f"sqlite:///{folder}/{name}.sqlite3", uploads=folder, told=told)


@pytest.fixture
def site(store: Store, tmp_path: Path) -> Installation:
    """An installation at work whose photos are in a bucket, with one file more."""
    store.empty_bucket(HERE)
    store.empty_bucket(THERE)
    made = installation(store, tmp_path, f"s3://{HERE}/kitchens", "site")
    made.manage("migrate", "--verbosity", "0")
    made.python(FURNISH)
    store.client().put_object(Bucket=HERE, Key="kitchens/a b/note.txt", Body=b"a note")
    return made


def content(store: Store, bucket: str, folder: str) -> dict[str, bytes]:
    """What lies in a folder of a bucket, by its name there."""
    return {
        name.removeprefix(folder): store.client().get_object(Bucket=bucket, Key=name)["Body"].read()
        for name in store.names(bucket)
        if name.startswith(folder)
    }


def test_everything_comes_back_into_another_bucket(
    site: Installation, store: Store, tmp_path: Path
) -> None:
    """Rows and files; what else was there is gone, what is beside the site's folder stays."""
    held = content(store, HERE, "kitchens/")
    assert len(held) == 3
    file = str(tmp_path / "backup.zip")
    site.manage("backup", "--to", file)

    other = installation(store, tmp_path, f"s3://{THERE}/k", "other")
    client = store.client()
    client.put_object(Bucket=THERE, Key="k/old.txt", Body=b"old")
    client.put_object(Bucket=THERE, Key="another-site/its.txt", Body=b"its own")
    said = other.refused("restore", file)
    assert said == "There is something here already. Say --replace to put this in its place."
    other.manage("restore", file, "--replace")
    assert other.rows() == site.rows()
    assert content(store, THERE, "k/") == held
    assert content(store, THERE, "another-site/") == {"its.txt": b"its own"}


def test_a_folder_takes_what_was_in_a_bucket(
    site: Installation, store: Store, tmp_path: Path
) -> None:
    """And the way back."""
    file = str(tmp_path / "backup.zip")
    site.manage("backup", "--to", file)
    folder = installation(store, tmp_path, str(tmp_path / "photos"), "folder")
    folder.manage("restore", file)
    files = [path for path in (tmp_path / "photos").rglob("*") if path.is_file()]
    found = {str(path.relative_to(tmp_path / "photos")): path.read_bytes() for path in files}
    assert found == content(store, HERE, "kitchens/")


def test_what_fails_leaves_the_bucket_as_it_was(
    site: Installation, store: Store, tmp_path: Path
) -> None:
    """All of a backup or nothing; a file of the same name that is another one is not touched."""
    file = str(tmp_path / "backup.zip")
    site.manage("backup", "--to", file)
    name = next(iter(content(store, HERE, "kitchens/")))
    other = installation(store, tmp_path, f"s3://{THERE}", "other")
    store.client().put_object(Bucket=THERE, Key=name, Body=b"another")
    store.client().put_object(Bucket=THERE, Key="old.txt", Body=b"old")
    said = other.refused("restore", file, "--replace")
    assert "is another file in the bucket than in this backup" in said
    assert content(store, THERE, "") == {name: b"another", "old.txt": b"old"}

    store.client().delete_object(Bucket=THERE, Key=name)
    lost = other.python(LOSE.format(file=file))
    assert lost == b"no database\n"
    assert content(store, THERE, "") == {"old.txt": b"old"}


LOSE = """
import django
django.setup()
from unittest.mock import patch
from shopjobs.services.backups.restoring import backup_restore
with patch("shopjobs.services.backups.sqlite.restore", side_effect=OSError("no database")):
    try:
        backup_restore(file=open({file!r}, "rb"), replace=True)
    except OSError as failed:
        print(failed)
"""
