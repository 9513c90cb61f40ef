"""Installations for tests: each a database of its own, used by commands as a person uses them."""

import os
import pickle
import subprocess
import sys
from collections.abc import Iterator, Mapping
from contextlib import closing, contextmanager
from dataclasses import dataclass, field
from itertools import count
from pathlib import Path
from urllib.parse import quote

import psycopg
import pytest
from django.db import connection
from psycopg import sql

from tests.shop_files.whole_shop import Rows

ROOT = Path(__file__).resolve().parents[2]
NUMBERS = count(1)
READ_ALL = """
import pickle, sys, django
django.setup()
from tests.shop_files.whole_shop import all_rows
sys.stdout.buffer.write(pickle.dumps(all_rows()))
"""
FURNISH = """
import django
django.setup()
from fractions import Fraction
from tests.shop_files.whole_shop import whole_shop
whole_shop("Alder Row Cabinets", Fraction(9, 10))
"""


@dataclass(frozen=True, kw_only=True)
class Installation:
    """One installation, by the address of its database and its folder for uploads.

    `told` is what else its surroundings say.
    """

    url: str
    uploads: Path
    told: Mapping[str, str] = field(default_factory=dict)

    def run(self, *arguments: str) -> "subprocess.CompletedProcess[str]":
        """Run a command and return what came of it."""
        return subprocess.run(
            [sys.executable, "manage.py", *arguments],
            cwd=ROOT,
            env=self.environ(),
            capture_output=True,
            text=True,
        )

    def manage(self, *arguments: str) -> str:
        """Run a command that must succeed and return what it says."""
        done = self.run(*arguments)
        assert done.returncode == 0, done.stderr
        return done.stdout

    def refused(self, *arguments: str) -> str:
        """Run a command that must refuse, and return its one line."""
        done = self.run(*arguments)
        assert (done.returncode, done.stdout) == (2, "")
        (line,) = done.stderr.splitlines()
        return line

    def python(self, code: str) -> bytes:
        """Run Python beside its database."""
        command = [sys.executable, "-c", code]
        done = subprocess.run(command, cwd=ROOT, env=self.environ(), capture_output=True)
        assert done.returncode == 0, done.stderr.decode()
        return done.stdout

    def rows(self) -> Rows:
        """Every row of its shop."""
        rows: Rows = pickle.loads(self.python(READ_ALL))
        return rows

    def environ(self) -> dict[str, str]:
        """The surroundings of its commands."""
        return {
            **os.environ,
            "DATABASE_URL": self.url,
            "DJANGO_SETTINGS_MODULE": "tests.backups.settings",
            "SHOPJOBS_SECRET_KEY": "only-for-tests-" * 5,
            "UPLOADS_OF_THE_TEST": str(self.uploads),
            **self.told,
        }


@contextmanager
def installation(vendor: str, folder: Path) -> Iterator[Installation]:
    """A new one whose database has nothing in it, not even tables; it is gone afterwards."""
    uploads = folder / f"uploads-{next(NUMBERS)}"
    if vendor == "sqlite":
        yield Installation(url=f"sqlite:///{folder}/{uploads.name}.sqlite3", uploads=uploads)
        return
    if connection.vendor != vendor:
        pytest.skip(f"DATABASE_URL names no {vendor} server")
    name = f"shopjobs_backup_{os.getpid()}_{next(NUMBERS)}"
    with closing(_server()) as server:
        server.execute(sql.SQL("CREATE DATABASE {}").format(sql.Identifier(name)))
        try:
            yield Installation(url=_address(name), uploads=uploads)
        finally:
            server.execute(sql.SQL("DROP DATABASE {} WITH (FORCE)").format(sql.Identifier(name)))


def _server() -> "psycopg.Connection[tuple[object, ...]]":
    said = connection.settings_dict
    return psycopg.connect(
        host=said["HOST"] or None,
        port=said["PORT"] or None,
        user=said["USER"] or None,
        password=said["PASSWORD"] or None,
        dbname="postgres",
        autocommit=True,
    )


def _address(name: str) -> str:
    said = connection.settings_dict
    person = quote(said["USER"], safe="")
    if said["PASSWORD"]:
        person += ":" + quote(said["PASSWORD"], safe="")
    port = f":{said['PORT']}" if said["PORT"] else ""
    return f"postgres://{person}@{quote(said['HOST'], safe='')}{port}/{name}"
