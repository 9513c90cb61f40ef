"""A shop moves: every value of every row is there again, under other keys."""

import os
import pickle
import subprocess
import sys
from io import BytesIO, StringIO
from pathlib import Path

import pytest
from django.core.management import call_command

from fronts.rules.fingerprint import fingerprint, parts_fingerprint
from fronts.selectors.schedules import schedule_of
from shopjobs.models import Job, Person, Shop
from shopjobs.services.shop_files.exporting import shop_export
from shopjobs.services.shop_files.importing import shop_import
from shopjobs.services.shop_files.tables import shop_tables
from tests.shop_files.whole_shop import Rows, rows_in

ROOT = Path(__file__).resolve().parents[2]
SIGN_IN = {"username", "password"}
READ_ALL = """
import pickle, sys, django
django.setup()
from tests.factories import NOW, CabinetFactory
from tests.shop_files.whole_shop import all_rows
sys.stdout.buffer.write(pickle.dumps(all_rows()))
"""


@pytest.fixture
def elsewhere(tmp_path: Path) -> str:
    """The address of another installation's database."""
    url = f"sqlite:///{tmp_path}/elsewhere.sqlite3"
    manage(url, "migrate", "--verbosity", "0")
    return url


def manage(url: str, *arguments: str) -> str:
    """Run a command of another installation and return what it says."""
    return python(url, "manage.py", *arguments).decode()


def python(url: str, *arguments: str) -> bytes:
    """Run Python beside another installation's database."""
    environ = {
        **os.environ, "DATABASE_URL": url, "DJANGO_SETTINGS_MODULE": "shopjobs.settings",
        "SHOPJOBS_UPLOADS": f"{url.removeprefix('sqlite:///')}-uploads",
    }  # fmt: skip
    command = [sys.executable, *arguments]
    done = subprocess.run(command, cwd=ROOT, env=environ, capture_output=True)
    assert done.returncode == 0, done.stderr.decode()
    return done.stdout


def rows_elsewhere(url: str) -> Rows:
    """Every row of another installation's database."""
    rows: Rows = pickle.loads(python(url, "-c", READ_ALL))
    return rows


def exported(shop: Shop, to: Path, **options: bool) -> str:
    """Write the shop's file and return what the command says."""
    out = StringIO()
    call_command("export_shop", shop.name, to=to, stdout=out, **options)
    return out.getvalue()


def told_apart(rows: Rows) -> Rows:
    """The rows without what a move within one installation must change."""
    kept = {
        "shopjobs.shop": {"name"},
        "shopjobs.person": SIGN_IN,
    }
    return {
        label: [
            {name: value for name, value in row.items() if name not in kept.get(label, ())}
            for row in several
        ]
        for label, several in rows.items()
    }


def test_every_table_is_tried(ours: Shop) -> None:
    """A table without a row in this shop would be carried untried: give it one."""
    rows = rows_in(ours)
    between = {label for label, table in shop_tables().items() if table._meta.auto_created}

    assert {label for label in rows if not rows[label]} == between


@pytest.mark.thorough
def test_into_another_installation(
    ours: Shop, theirs: Shop, elsewhere: str, tmp_path: Path
) -> None:
    """Everything is there, to the last digit, password hashes and times included."""
    before, file = rows_in(ours), tmp_path / "ours.shop"
    count = sum(len(rows) for rows in before.values())

    said = exported(ours, file)
    told = manage(elsewhere, "import_shop", str(file))

    assert said == f"{file} holds Alder Row Cabinets: {count} rows\n"
    assert told == f"Alder Row Cabinets is here: {count} rows\n"
    assert rows_elsewhere(elsewhere) == before
    (job,) = Job.objects.filter(shop=ours)
    out = StringIO()
    call_command("export_job", job.number, shop=ours.name, stdout=out)
    assert manage(elsewhere, "export_job", job.number, "--shop", ours.name) == out.getvalue()


@pytest.mark.thorough
def test_there_and_back_is_the_same_file(ours: Shop, elsewhere: str, tmp_path: Path) -> None:
    """What the other installation writes of it holds the same lines, keys aside."""
    file, back = tmp_path / "ours.shop", tmp_path / "back.shop"
    exported(ours, file)
    before = rows_in(ours)

    manage(elsewhere, "import_shop", str(file))
    manage(elsewhere, "export_shop", ours.name, "--to", str(back))
    Job.objects.filter(shop=ours).delete()
    Shop.objects.filter(pk=ours.pk).delete()
    with back.open("rb") as opened:
        arrival = shop_import(file=opened)

    assert rows_in(arrival.shop) == before


def test_beside_itself_under_another_name(ours: Shop, theirs: Shop, tmp_path: Path) -> None:
    """Only the shop's name and how people sign in differ; nobody else's row is touched."""
    file, before, beside = tmp_path / "ours.shop", rows_in(ours), rows_in(theirs)
    exported(ours, file)
    out = StringIO()

    options = {"name": "Cedar Yard", "without_people": True}
    call_command("import_shop", str(file), stdout=out, **options)

    arrived = Shop.objects.get(name="Cedar Yard")
    assert told_apart(rows_in(arrived)) == told_apart(before)
    assert (rows_in(ours), rows_in(theirs)) == (before, beside)
    assert Shop.objects.count() == 3
    first, *others = out.getvalue().splitlines()
    assert first.startswith("Cedar Yard is here: ")
    assert others == [
        f"{person.username} signs in as {person.username}-2"
        for person in Person.objects.filter(shop=ours).order_by("pk")
    ]
    assert not any(person.has_usable_password() for person in arrived.people.all())
    assert all(person.has_usable_password() for person in ours.people.all())


def test_what_is_worked_out_is_the_same(ours: Shop, theirs: Shop, tmp_path: Path) -> None:
    """Schedules, and the short names that are printed on sheets."""
    packed = BytesIO()
    shop_export(shop=ours, to=packed, with_people=False)
    packed.seek(0)

    arrival = shop_import(file=packed, name="Cedar Yard")

    old, new = (schedule_of(Job.objects.get(shop=shop)) for shop in (ours, arrival.shop))
    assert new == old
    assert fingerprint(new) == fingerprint(old)
    assert parts_fingerprint(new.parts) == parts_fingerprint(old.parts)


def test_a_file_without_people_holds_no_password(ours: Shop, tmp_path: Path) -> None:
    """Their names go along, since records say who did what; their hashes don't."""
    packed = BytesIO()
    shop_export(shop=ours, to=packed, with_people=False)
    for person in ours.people.all():
        person.username += "-before"
        person.save(update_fields=["username"])
    packed.seek(0)

    arrival = shop_import(file=packed, name="Cedar Yard")

    assert arrival.renamed == {}
    assert [person.has_usable_password() for person in arrival.shop.people.all()] == [False, False]
    assert [person.role for person in arrival.shop.people.order_by("pk")] == ["owner", "installer"]


def test_nobody_becomes_the_installations_own(ours: Shop) -> None:
    """Who may do anything where the shop comes from may do here what their role says."""
    ours.people.update(is_superuser=True, is_staff=True)
    packed = BytesIO()
    shop_export(shop=ours, to=packed)
    Job.objects.filter(shop=ours).delete()
    ours.delete()
    packed.seek(0)

    arrival = shop_import(file=packed)

    people = arrival.shop.people.order_by("pk")
    assert [(each.is_superuser, each.is_staff, each.role) for each in people] == [
        (False, False, "owner"), (False, False, "installer"),
    ]  # fmt: skip
