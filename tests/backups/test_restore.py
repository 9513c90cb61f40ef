"""A backup brings everything back: elsewhere, over something, from an older version."""

import subprocess
import sys
from pathlib import Path

import pytest

from tests.backups.conftest import New
from tests.backups.installations import FURNISH, ROOT, Installation
from tests.kitchen_files import SAMPLES

pytestmark = pytest.mark.thorough

SHOP = "Alder Row Cabinets"
WRITE = """
import django
django.setup()
from itertools import count
from time import sleep
from shopjobs.models import Shop
from shopjobs.services.jobs import job_create
from tests.factories import NOW
shop = Shop.objects.get()
for number in count(1):
    job_create(shop=shop, number=f"W-{number}", at=NOW)
    print(number, flush=True)
    sleep(0.01)
"""
"""Each of its changes is two rows, a job and a line of history: both or neither."""

OLDER = """
import django
django.setup()
from tests.models.steps import migrated
from tests.models.test_front_migration import BEFORE, BOX, STACK, THEN
tables = migrated(*BEFORE)
shop = tables("shopjobs", "Shop").objects.create(name="Alder Row Cabinets")
person = tables("shopjobs", "Person").objects.create(username="ines", shop=shop)
job = tables("shopjobs", "Job").objects.create(shop=shop, number="K-1")
sizes = {"x": 50, "y": 50, "width": 400, "height": 700}
cabinet = tables("fronts", "Cabinet").objects.create(
    job=job, label="B1", kind="base", build="face-frame", wall="North", depth=600, **sizes
)
stack = tables("fronts", "Opening").objects.create(cabinet=cabinet, label="a", **sizes, **STACK)
tables("fronts", "Box").objects.create(opening=stack, index=2, **BOX)
tables("fronts", "FitRecord").objects.create(
    job=job, front="B1.a.2", cabinet="B1", gap_left=3, fitted_by=person, fitted_at=THEN
)
"""
"""A kitchen from before fronts were rows: what migrates has data to carry."""


def saved(site: Installation, folder: Path) -> Path:
    """A backup of the installation."""
    said = site.manage("backup", "--to", str(folder / "backups"))
    (file,) = (folder / "backups").iterdir()
    assert said == f"{file}: {file.stat().st_size:,} bytes\n"
    return file


def uploads_in(site: Installation) -> dict[str, bytes]:
    """The uploaded files, by where they lie."""
    files = (path for path in site.uploads.rglob("*") if path.is_file())
    return {str(path.relative_to(site.uploads)): path.read_bytes() for path in files}


def test_everything_comes_back_elsewhere(site: Installation, new: New, tmp_path: Path) -> None:
    """Rows and files, where nothing was before; and the work goes on from there."""
    elsewhere, file = new(), saved(site, tmp_path)

    said = elsewhere.manage("restore", str(file))

    assert "by version 0.1.0; migrations since: 0." in said
    assert elsewhere.rows() == site.rows()
    assert uploads_in(elsewhere) == uploads_in(site)
    assert set(uploads_in(site)) > {"photos/before planing.jpg", "note.txt"}
    elsewhere.manage("import_job", str(SAMPLES[0]), "--shop", SHOP)
    assert len(elsewhere.rows()["shopjobs.job"]) == len(site.rows()["shopjobs.job"]) + 1
    assert file.stat().st_mode & 0o777 == 0o600
    assert [path for path in elsewhere.uploads.parent.iterdir() if ".restore" in path.name] == []


def test_a_backup_while_people_write(site: Installation, new: New, tmp_path: Path) -> None:
    """It holds every change up to a moment within it, each of them whole, and none after."""
    elsewhere = new()
    writing = subprocess.Popen(
        [sys.executable, "-c", WRITE], cwd=ROOT, env=site.environ(), stdout=subprocess.PIPE
    )
    assert writing.stdout
    with writing:
        try:
            writing.stdout.readline()
            file = saved(site, tmp_path)
        finally:
            writing.terminate()
            written = len(writing.stdout.read().splitlines())

    elsewhere.manage("restore", str(file))

    rows, later = elsewhere.rows(), site.rows()
    jobs, history = rows["shopjobs.job"], rows["shopjobs.revision"]
    made = [job["number"] for job in jobs if job["number"].startswith("W-")]
    assert 0 < len(made) < written <= len(later["shopjobs.job"])
    assert made == [f"W-{number}" for number in range(1, len(made) + 1)]
    assert [line["text"] for line in history if line["text"].startswith("Made job W-")] == [
        f"Made job {number}" for number in made
    ]
    assert jobs == later["shopjobs.job"][: len(jobs)]
    assert {label: rows[label] for label in rows if label.startswith("fronts.")} == {
        label: later[label] for label in later if label.startswith("fronts.")
    }


def test_over_what_is_there(site: Installation, new: New, tmp_path: Path) -> None:
    """Refused, unless it is told to: rows or files are something. Then nothing of it stays."""
    elsewhere, file = new(), saved(site, tmp_path)
    elsewhere.manage("migrate", "--verbosity", "0")
    elsewhere.uploads.mkdir()
    (elsewhere.uploads / "old.txt").touch()
    line = "There is something here already. Say --replace to put this in its place."

    assert elsewhere.refused("restore", str(file)) == line
    (elsewhere.uploads / "old.txt").unlink()
    elsewhere.python(FURNISH.replace(SHOP, "Birch Lane Joiners"))
    assert elsewhere.refused("restore", str(file)) == line
    assert [shop["name"] for shop in elsewhere.rows()["shopjobs.shop"]] == ["Birch Lane Joiners"]

    elsewhere.manage("restore", str(file), "--replace")

    assert elsewhere.rows() == site.rows()
    assert uploads_in(elsewhere) == uploads_in(site)


def test_an_older_backup_is_brought_up_to_date(new: New, tmp_path: Path) -> None:
    """What an earlier version saved becomes what that version's database becomes by itself."""
    older, elsewhere, file = new(), new(), str(tmp_path / "older.zip")
    older.python(OLDER)
    older.manage("backup", "--to", file)

    said = elsewhere.manage("restore", file)

    older.manage("migrate", "--verbosity", "0")
    assert int(said.partition("migrations since: ")[2].partition(".")[0]) >= 4
    assert elsewhere.rows() == older.rows()
    assert len(elsewhere.rows()["fronts.front"]) == 3


def test_ways_in_end(site: Installation, new: New, tmp_path: Path) -> None:
    """A session or calendar address that somebody ended after the backup is not open again."""
    elsewhere = new()
    begin = (
        "import django; django.setup()\n"
        "from shopjobs.sessions import SessionStore\n"
        "SessionStore().create()\n"
        "from django.utils import timezone\n"
        "from fronts.services.calendar_feeds import feed_make\n"
        "from shopjobs.models import Person\n"
        "feed_make(person=Person.objects.first(), at=timezone.now())\n"
    )
    count = (
        "import django; django.setup()\n"
        "from shopjobs.models import Session\n"
        "from fronts.models import CalendarFeed\n"
        "print(Session.objects.count(), CalendarFeed.objects.count())\n"
    )
    site.python(begin)
    file = saved(site, tmp_path)

    elsewhere.manage("restore", str(file))

    assert [int(each) > 0 for each in site.python(count).split()] == [True, True]
    assert [int(each) for each in elsewhere.python(count).split()] == [0, 0]
