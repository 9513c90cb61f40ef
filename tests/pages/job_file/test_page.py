"""A job taken in from a file, and handed out as one."""

import json
from collections.abc import Callable
from io import BytesIO
from typing import Any

import pytest
from django.test import Client

from fronts import jobfile
from fronts.models import Cabinet
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.kitchen_files import SAMPLES, changed, small
from tests.pages.kitchens import furnish

SignIn = Callable[[Person], Client]


def upload(client: Client, text: str | bytes, **fields: str) -> Any:
    """Post a file with this content."""
    file = BytesIO(text.encode() if isinstance(text, str) else text)
    file.name = "kitchen.job.json"
    return client.post("/jobs/import/", {"file": file, **fields})


@pytest.mark.parametrize("username", ["ada", "otto"])
def test_a_file_becomes_a_job(
    username: str, owner: Person, office: Person, signed_in: SignIn
) -> None:
    """The desk takes a file in and is led to the job, which is as the file states it."""
    client = signed_in(Person.objects.get(username=username))
    text = SAMPLES[0].read_text()

    answer = upload(client, text)

    job = Job.objects.get()
    assert answer["Location"] == f"/jobs/{job.pk}/"
    assert kitchen_of(job).cabinets == jobfile.read(text).cabinets
    assert "is taken in" in dom(client.get(answer["Location"])).words


def test_each_fault_is_shown_with_its_place(owner: Person, signed_in: SignIn) -> None:
    """A refused file shows where, what was found and what is wanted; nothing is kept."""
    answer = upload(signed_in(owner), changed("cabinets.0.width", "wide"))

    assert answer.status_code == 422
    (row,) = dom(answer).all("tbody tr")
    assert row.one("th").words == "cabinets[0].width"
    assert "wide" in row.words
    assert not Job.objects.exists()


@pytest.mark.parametrize(
    "content", [b"", b"\xff\xfe\x00", b"[]", b"{", b"null", b"[" * 100_000, b'{"version": 1e999}']
)
def test_what_is_no_job_file_is_refused(content: bytes, owner: Person, signed_in: SignIn) -> None:
    """Any file that is none of ours is answered in words."""
    answer = upload(signed_in(owner), content, number="K-9")

    assert answer.status_code == 422
    assert dom(answer).has("[id='id_file_error']")
    assert not Job.objects.exists()


def test_a_file_that_is_too_large_is_refused(owner: Person, signed_in: SignIn) -> None:
    """No kitchen's file is over 4 MB."""
    answer = upload(signed_in(owner), b" " * (4 * 1024 * 1024 + 1))

    assert answer.status_code == 422
    assert "over 4 MB" in dom(answer).words


def test_no_file_is_asked_for(owner: Person, signed_in: SignIn) -> None:
    """A form without its file says so."""
    answer = signed_in(owner).post("/jobs/import/", {})

    assert answer.status_code == 422
    assert "Choose a job file or notebook." in dom(answer).words


def test_a_number_that_is_taken_is_asked_for_again(
    job: Job, owner: Person, signed_in: SignIn
) -> None:
    """A file never overwrites a job; with another number it is taken in."""
    text = json.dumps(small() | {"job": {"number": job.number, "unit": "in"}})
    client = signed_in(owner)

    refused = upload(client, text)
    assert refused.status_code == 422
    assert dom(refused).has("[id='id_number_error']")
    assert not Cabinet.objects.exists()

    upload(client, text, number="K-2")
    assert Job.objects.get(number="K-2").pk != job.pk


def test_the_installer_takes_nothing_in(installer: Person, signed_in: SignIn) -> None:
    """Jobs are the desk's."""
    assert signed_in(installer).get("/jobs/import/").status_code == 403
    assert upload(signed_in(installer), json.dumps(small())).status_code == 403


@pytest.mark.parametrize("username", ["ada", "otto", "ines"])
def test_a_job_is_handed_out_as_its_file(
    username: str, job: Job, owner: Person, office: Person, installer: Person, signed_in: SignIn
) -> None:
    """The file states the same kitchen, under the job's number made safe for a file's name."""
    furnish(job)
    Job.objects.filter(pk=job.pk).update(number='K/1 "a"')
    job.refresh_from_db()

    answer = signed_in(Person.objects.get(username=username)).get(f"/jobs/{job.pk}/file/")

    assert answer["Content-Disposition"] == 'attachment; filename="K-1-a.job.json"'
    assert jobfile.read(answer.text).cabinets == kitchen_of(job).cabinets


@pytest.mark.parametrize(("count", "status"), [(300, 302), (301, 422)])
def test_a_page_takes_in_so_many_cabinets(
    count: int, status: int, owner: Person, signed_in: SignIn
) -> None:
    """Three hundred cabinets are taken in; one more is refused, and both ways on are named."""
    kitchen = small()
    plain = {**kitchen["cabinets"][0], "openings": []}
    kitchen["cabinets"] = [{**plain, "label": f"B{n}", "wall": f"W{n}"} for n in range(count)]

    answer = upload(signed_in(owner), json.dumps(kitchen))

    assert answer.status_code == status
    assert Job.objects.exists() is (status == 302)
    if status == 422:
        assert "This file has 301 cabinets, and a page takes in 300 at most." in dom(answer).words
        assert "import_job" in dom(answer).words
