"""What a phone without a signal asks of the site."""

from collections.abc import Callable

from django.test import Client

from shopjobs.models import Job, Person
from tests.factories import CabinetFactory, JobFactory, OpeningFactory

SignIn = Callable[[Person], Client]


def test_the_worker_holds_for_the_whole_site(client: Client, db: None) -> None:
    """It stands at the root, for whoever asks, and is asked for anew each time."""
    answer = client.get("/sw.js")
    assert answer.headers["Content-Type"] == "text/javascript"
    assert "no-store" in answer.headers["Cache-Control"] or "no-cache" in answer["Cache-Control"]
    assert b"fetch" in answer.content
    assert client.post("/sw.js").status_code == 405


def test_who_may_send_what_waits(owner: Person, signed_in: SignIn, client: Client) -> None:
    """The person of the shop that the page named, with a token; nobody else."""
    said = signed_in(owner).get("/waiting/").json()
    assert said["person"] == f"{owner.shop_id}.{owner.pk}"
    assert said["token"]
    assert client.get("/waiting/").status_code == 302


def test_what_is_taken_along(
    job: Job, installer: Person, stranger: Person, signed_in: SignIn
) -> None:
    """Every page of this job to measure, to fit and of snags, and its sheets: each is there.

    With them the two sheets of the whole kitchen that lead through its fitting.
    """
    opening = OpeningFactory.create(cabinet=CabinetFactory.create(job=job))
    CabinetFactory.create(job=JobFactory.create(shop=job.shop, number="K-2"))
    phone = signed_in(installer)

    pages = phone.get(f"/jobs/{job.pk}/along/").json()["pages"]

    assert len(pages) == len(set(pages)) == 4 + 1 + 6 + 1 + 2
    assert {f"/jobs/{job.pk}/sheets/set-up/", f"/jobs/{job.pk}/sheets/jigs/"} <= {*pages}
    assert f"/jobs/{job.pk}/measuring/{opening.pk}/diagonal-1/" in pages
    assert all(page.startswith(f"/jobs/{job.pk}/") for page in pages)
    assert {phone.get(page).status_code for page in pages} == {200}
    assert signed_in(stranger).get(f"/jobs/{job.pk}/along/").status_code == 404
