"""`import_job` and `export_job`: a job file into the database, and out again."""

import json
from io import StringIO
from pathlib import Path
from typing import Any

import pytest
from django.core.management import call_command
from hypothesis import HealthCheck, given, settings

from fronts.jobfile import read, write
from fronts.rules.kitchen import Kitchen
from fronts.services.imports import job_import
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Shop
from tests.commands.test_schedule import run
from tests.factories import NOW, ShopFactory
from tests.kitchen_files import FOLDER, SAMPLES, changed, small
from tests.strategies import kitchens

GALLEY = FOLDER / "boathouse-galley.job.json"


def export(number: str, shop: Shop) -> str:
    """The job as a file."""
    out = StringIO()
    call_command("export_job", number, shop=shop.name, stdout=out)
    return out.getvalue()


def refused(*arguments: str, **options: str) -> list[str]:
    """What a command that must refuse says, a line each."""
    errors = StringIO()
    with pytest.raises(SystemExit) as stopped:
        call_command(*arguments, **options, stderr=errors, stdout=StringIO())
    assert stopped.value.code == 2
    return errors.getvalue().splitlines()


@pytest.mark.parametrize("sample", SAMPLES, ids=lambda path: path.name)
def test_in_and_out_is_the_same_file(sample: Path, shop: Shop) -> None:
    """The database keeps every key of a job file to the last digit."""
    out = StringIO()
    call_command("import_job", str(sample), shop=shop.name, stdout=out)
    text = sample.read_text(encoding="utf-8")
    number = json.loads(text)["job"]["number"]
    assert out.getvalue() == f"{shop.name} has job {number}: 2 cabinets\n"
    assert export(number, shop) == text


@settings(
    deadline=None,
    max_examples=25,
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)
@given(kitchens(most_cabinets=3))
def test_any_kitchen_survives_the_database(shop: Shop, kitchen: Kitchen) -> None:
    """Out, in and out again: the same kitchen and the same file."""
    job = job_import(kitchen=kitchen, shop=shop, at=NOW, replace=True)
    kept = kitchen_of(Job.objects.get(pk=job.pk))
    assert kept == kitchen
    assert read(write(kept)) == kitchen


RECORDS: dict[str, list[dict[str, Any]]] = {
    "fits": [
        {"front": "B1.a", "at": "2027-03-12T10:00:00Z", "by": "Kim Ford", "state": "done",
         "gaps": {"left": "1/16", "right": {"top": "3/16", "bottom": "1/8"}, "top": "1/8"},
         "planned": {"left": "1/8", "right": "1/8"}, "note": "planed"},
    ],
    "checks": [
        {"item": "hinge", "need": 2, "at": "2027-03-13T08:30:15.5Z", "by": "Bo", "note": "ordered"},
        {"item": "knob"},
    ],
}  # fmt: skip


def test_records_come_in_and_go_out(shop: Shop, tmp_path: Path) -> None:
    """A second time over the same job, and into another shop: the same file."""
    file = tmp_path / "records.json"
    file.write_text(json.dumps(small() | {"version": 2} | RECORDS), encoding="utf-8")
    call_command("import_job", str(file), shop=shop.name, stdout=StringIO())
    text = export("T-1", shop)
    exported = json.loads(text)
    checks = [dict(check) for check in RECORDS["checks"]]
    checks[0]["at"] = "2027-03-13T08:30:15.500000Z"
    assert (exported["fits"], exported["checks"]) == (RECORDS["fits"], checks)

    file.write_text(text, encoding="utf-8")
    elsewhere = ShopFactory.create(name="Elm End")
    for each in (shop, shop, elsewhere):
        call_command("import_job", str(file), shop=each.name, replace=True, stdout=StringIO())
    assert export("T-1", shop) == export("T-1", elsewhere) == text


def test_a_number_is_given_once(shop: Shop, tmp_path: Path) -> None:
    """A second import is refused, unless it is told to replace the first."""
    call_command("import_job", str(GALLEY), shop=shop.name, stdout=StringIO())
    (line,) = refused("import_job", str(GALLEY), shop=shop.name)
    assert line.startswith("There is already a job BH-7 in this shop.")
    changed_file = tmp_path / "changed.json"
    text = GALLEY.read_text(encoding="utf-8").replace("Rosalind Achterberg", "R. Achterberg")
    changed_file.write_text(text, encoding="utf-8")
    call_command("import_job", str(changed_file), shop=shop.name, replace=True, stdout=StringIO())
    assert export("BH-7", shop) == text
    assert Job.objects.filter(shop=shop).count() == 1


def test_a_refused_file_leaves_nothing_behind(shop: Shop, tmp_path: Path) -> None:
    """Faults are told as for a schedule, and no half job is kept."""
    file = tmp_path / "faulty.json"
    file.write_text(changed("cabinets.0.depth", "0"), encoding="utf-8")
    assert refused("import_job", str(file), shop=shop.name) == [
        'cabinets[0].depth: found "0", wanted a length above zero, like 23 5/8'
    ]
    assert not Job.objects.exists()


def test_a_length_that_cannot_be_kept(shop: Shop, tmp_path: Path) -> None:
    """A third of an inch can be reckoned with, not kept: the line says where it stands."""
    file = tmp_path / "third.json"
    file.write_text(changed("cabinets.0.depth", "23 1/3"), encoding="utf-8")
    (line,) = refused("import_job", str(file), shop=shop.name)
    assert line.startswith("cabinet B1, depth: this length can't be kept exactly")
    assert not Job.objects.exists()


def test_shops_and_jobs_that_are_not_there(shop: Shop, tmp_path: Path) -> None:
    """One clear line each, with the shops to choose from."""
    file = tmp_path / "small.json"
    file.write_text(json.dumps(small()), encoding="utf-8")
    unknown = f"no shop is called Nobody; there are: {shop.name}"
    assert refused("import_job", str(file), shop="Nobody") == [unknown]
    assert refused("export_job", "T-1", shop="Nobody") == [unknown]
    assert refused("export_job", "T-1", shop=shop.name) == [f"{shop.name} has no job T-1"]


def test_another_shops_job_is_not_there(shop: Shop, stranger: object) -> None:
    """Numbers are a shop's own: the same one elsewhere is another job."""
    call_command("import_job", str(GALLEY), shop=shop.name, stdout=StringIO())
    assert refused("export_job", "BH-7", shop="Birch Lane Joiners") == [
        "Birch Lane Joiners has no job BH-7"
    ]


def test_a_database_that_does_not_answer() -> None:
    """No traceback: a line that says what to look at."""
    done = run("export_job", "T-1", "--shop", "Nobody")
    assert done.returncode == 2
    (line,) = done.stderr.decode().splitlines()
    assert line.startswith("the database can't be used (")
