"""The README's lines for backups, upgrades and the way back, run as they are printed."""

import os
import re
import shutil
import subprocess
import sys
import time
from configparser import ConfigParser
from pathlib import Path
from shlex import quote

import pytest

from tests.backups.conftest import New
from tests.backups.installations import ROOT, Installation

pytestmark = pytest.mark.thorough

PARTS = ("fronts", "shopjobs", "static", "templates")
RECIPE = "shopjobs/recipe/shopjobs-backup"
DAY = 24 * 3600
TOMORROW = """
from django.db import migrations, models

class Migration(migrations.Migration):
    dependencies = [{after}]
    operations = [
        migrations.AddField(
            "Front", "weighed", models.IntegerField(default=7), preserve_default=False
        ),
        migrations.CreateModel("Weighing", [
            ("id", models.BigAutoField(primary_key=True)),
            ("front", models.ForeignKey("fronts.Front", models.CASCADE)),
        ]),
    ]
"""
"""What the next version adds: a column without which nothing can be saved, and a table."""


def blocks() -> list[list[str]]:
    """The lines of each block of the README's section, in their order."""
    text = (ROOT / "README.md").read_text(encoding="utf-8")
    section = text.split("## Backups, upgrades")[1].split("\n## ")[0]
    return [block.splitlines() for block in re.findall(r"```\n(.*?)```", section, re.DOTALL)]


def run(lines: list[str], folder: Path, environ: dict[str, str]) -> str:
    """Run lines one after another in one shell and return what they said."""
    done = subprocess.run(
        ["bash", "-ec", "\n".join(lines)], cwd=folder, env=environ, capture_output=True, text=True
    )
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout + done.stderr


def activated(site: Installation, **given: str) -> dict[str, str]:
    """An activated environment on the installation's machine, with the site's own settings."""
    path = os.pathsep.join([str(Path(sys.executable).parent), os.environ["PATH"]])
    settings = {"DJANGO_SETTINGS_MODULE": "shopjobs.settings", "VIRTUAL_ENV": sys.prefix}
    return {**site.environ(), **settings, "PATH": path, **given}


def git(folder: Path, *arguments: str) -> None:
    """Run git as somebody."""
    named = ("-c", "user.name=Ada", "-c", "user.email=ada@fronts.example")
    subprocess.run(["git", *named, *arguments], cwd=folder, check=True, capture_output=True)


def commit(folder: Path, words: str) -> None:
    """Commit all that there is."""
    git(folder, "add", "--all", "--force")
    git(folder, "commit", "--quiet", "--message", words)


@pytest.fixture
def checkout(tmp_path: Path) -> Path:
    """A clone of this version; where it comes from, the next one is to be had."""
    origin, clone = tmp_path / "origin", tmp_path / "clone"
    for part in PARTS:
        shutil.copytree(ROOT / part, origin / part, ignore=shutil.ignore_patterns("__pycache__"))
    for name in ("manage.py", "pyproject.toml", ".gitignore"):
        shutil.copy(ROOT / name, origin)
    git(origin, "init", "--quiet")
    commit(origin, "this version")
    git(tmp_path, "clone", "--quiet", str(origin), str(clone))
    last = sorted((origin / "fronts" / "migrations").glob("0*.py"))[-1].stem
    migration = origin / "fronts" / "migrations" / "0999_of_tomorrow.py"
    migration.write_text(TOMORROW.format(after=("fronts", last)), encoding="utf-8")
    pyproject = (origin / "pyproject.toml").read_text(encoding="utf-8")
    newer = re.sub(r'^version = ".*"', 'version = "99.0.0"', pyproject, flags=re.MULTILINE)
    (origin / "pyproject.toml").write_text(newer, encoding="utf-8")
    commit(origin, "the next version")
    return clone


def test_an_upgrade_and_the_way_back(
    site: Installation, new: New, checkout: Path, tmp_path: Path
) -> None:
    """The new version migrates; the old one brings back its own state, and works."""
    _, upgrade, back = blocks()
    here = new()
    site.manage("backup", "--to", str(tmp_path / "start.zip"))
    here.manage("restore", str(tmp_path / "start.zip"))
    before = here.rows()
    shutil.rmtree(here.uploads)  # The site's own settings take none.

    said = run(upgrade, checkout, activated(here))

    assert "Applying fronts.0999_of_tomorrow... OK" in said
    environ = activated(here)
    backup = ["python manage.py backup --to var/newer.zip"]
    run(backup, checkout, environ)

    said = run(back, checkout, environ)

    assert "migrations since: 0." in said
    assert here.rows() == before
    (number,) = [job["number"] for job in before["shopjobs.job"] if job["client"]]
    export = f"python manage.py export_job {quote(number)} --shop 'Alder Row Cabinets'"
    run([export], checkout, environ)
    refusal = "python manage.py restore var/newer.zip --replace 2>&1 || echo left with $?"
    said = run([refusal], checkout, environ)
    assert said.startswith("This was made by version 99.0.0; this is version ")
    assert said.endswith("left with 2\n")


def test_the_timer_is_put_in_place(tmp_path: Path) -> None:
    """The lines put both files where systemd looks, and start the timer that they hold."""
    (nightly, *_), units = blocks(), tmp_path / "units"
    programs = tmp_path / "programs"
    units.mkdir()
    programs.mkdir()
    scripts = {
        "sudo": 'exec "$@"',
        "systemctl": f'[ "$1 $2" = "enable --now" ] && [ -f "{units}/$3" ] && echo "started $3"',
    }
    for name, script in scripts.items():
        (programs / name).write_text(f"#!/bin/sh\n{script}\n")
        (programs / name).chmod(0o755)
    here = {"/etc/systemd/system": str(units), "/var/backups/shopjobs": str(tmp_path / "kept")}
    lines = [_put(line, here).replace("-o shopjobs", f"-o {os.geteuid()}") for line in nightly]
    path = os.pathsep.join([str(programs), os.environ["PATH"]])

    said = run(lines, ROOT, {**os.environ, "PATH": path})

    assert said == "started shopjobs-backup.timer\n"
    assert sorted(file.name for file in units.iterdir()) == [
        "shopjobs-backup.service", "shopjobs-backup.timer",
    ]  # fmt: skip
    assert (tmp_path / "kept").stat().st_mode & 0o777 == 0o700
    assert _unit("timer")["Install"]["WantedBy"] == "timers.target"


def test_a_night(site: Installation, tmp_path: Path) -> None:
    """The service makes a backup, and what is older than 30 days goes; after a failure nothing."""
    kept = tmp_path / "kept"
    kept.mkdir()
    for name, days in (("old.zip", 40), (".draft.zip.77", 40), ("new.zip", 20), ("notes", 40)):
        (kept / name).touch()
        os.utime(kept / name, (time.time() - days * DAY,) * 2)
    service = _unit("service")["Service"]
    here = {
        "/srv/shopjobs/.venv/bin/python": sys.executable,
        "/var/backups/shopjobs": str(kept),
    }
    night = [_put(service[name], here) for name in ("ExecStart", "ExecStartPost")]
    environ = activated(site)

    broken = subprocess.run(
        ["bash", "-ec", "\n".join(night)],
        cwd=ROOT,
        env={**environ, "DATABASE_URL": f"sqlite:///{tmp_path}/other.sqlite3"},
        capture_output=True,
        text=True,
    )
    names = {path.name for path in kept.iterdir()}
    run(night, ROOT, environ)

    assert broken.returncode == 2
    assert broken.stderr == "There is nothing to save: this database has no tables of ours yet.\n"
    assert names == {"old.zip", ".draft.zip.77", "new.zip", "notes"}
    (made,) = {path.name for path in kept.iterdir()} - {"new.zip", "notes"}
    assert re.fullmatch(r"shopjobs-\d{8}T\d{6}Z\.zip", made)


def _unit(kind: str) -> ConfigParser:
    unit = ConfigParser(interpolation=None)
    unit.optionxform = str  # type: ignore[assignment,method-assign] # keys keep their capitals
    unit.read(ROOT / f"{RECIPE}.{kind}", encoding="utf-8")
    return unit


def _put(line: str, here: dict[str, str]) -> str:
    for usual, place in here.items():
        line = line.replace(usual, place)
    return line
