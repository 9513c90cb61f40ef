"""The list of jobs: searched, narrowed, sorted, a page at a time; the archive."""

from collections.abc import Callable
from datetime import date, timedelta
from typing import Any

import pytest
from django.db import connection
from django.test import Client
from django.test.utils import CaptureQueriesContext
from django.utils import timezone

from shopjobs.job_list import A_PAGE, Asked, job_page
from shopjobs.models import Job, Person, Revision, Shop
from shopjobs.services.jobs import job_delete
from tests.dom import dom
from tests.factories import CabinetFactory, JobFactory
from tests.shopjobs.kitchens import done_kitchen, kitchen

SignIn = Callable[[Person], Client]


def numbers(client: Client, query: str = "") -> list[str]:
    """The numbers of the jobs on the page, in their order."""
    return [link.words for link in dom(client.get(f"/jobs/{query}")).all("a.row-link")]


@pytest.fixture
def four(shop: Shop, owner: Person, installer: Person) -> None:
    """Four jobs of the shop, the last made first on the list."""
    today = timezone.localdate()
    made: list[dict[str, Any]] = [
        {"number": "K-9", "client": "Ash", "site": "3 Mill Lane", "fit_on": today},
        {"number": "K-10", "client": "Birch", "responsible": owner.pk},
        {"number": "A-200", "client": "Ødegård", "fit_on": today - timedelta(days=3)},
        {"number": "K-11", "site": "3 Hill Road", "responsible": installer.pk,
         "fit_on": today + timedelta(days=40)},
    ]  # fmt: skip
    for said in made:
        JobFactory.create(shop=shop, **said)


@pytest.mark.usefixtures("four")
@pytest.mark.parametrize(
    ("query", "found"),
    [
        ("", ["K-11", "A-200", "K-10", "K-9"]),
        ("?q=k-1", ["K-11", "K-10"]),
        ("?q=bIrCh", ["K-10"]),
        ("?q=ødegård", ["A-200"]),
        ("?q=lane", ["K-9"]),
        ("?q=3+road", ["K-11"]),
        ("?q=w7", ["K-10"]),
        ("?q=W", []),
        ("?q=100%25", []),
        ("?order=number", ["A-200", "K-9", "K-10", "K-11"]),
        ("?order=client", ["K-9", "K-10", "A-200", "K-11"]),
        ("?order=fit", ["K-9", "A-200", "K-11", "K-10"]),
        ("?when=late", ["A-200"]),
        ("?when=today", ["K-9"]),
        ("?when=none", ["K-10"]),
        ("?when=week&q=k", ["K-9"]),
        ("?stage=cut", ["K-10"]),
        ("?stage=measure&order=number", ["A-200", "K-9", "K-11"]),
        ("?whose=nobody", ["A-200", "K-9"]),
        ("?page=nonsense", ["K-11", "A-200", "K-10", "K-9"]),
        ("?page=99999999999999999999999", ["K-11", "A-200", "K-10", "K-9"]),
    ],
)
def test_what_is_asked_for_is_found(
    query: str, found: list[str], owner: Person, signed_in: SignIn
) -> None:
    """By words anywhere, a cabinet's whole name, stage, day and person; in any order."""
    kitchen(Job.objects.get(number="K-10"), "W7")
    Job.objects.filter(number="K-10").update(updated_at=Job.objects.get(number="K-10").created_at)

    assert numbers(signed_in(owner), query) == found


@pytest.mark.usefixtures("four")
def test_whose_they_are(owner: Person, installer: Person, signed_in: SignIn) -> None:
    """Oneself is named first; only people of the shop are offered."""
    client = signed_in(owner)
    offered = [each.words for each in dom(client.get("/jobs/")).field("whose").all("option")]

    assert offered == ["Anyone", "Ada (you)", "ines", "Nobody yet"]
    assert numbers(client, f"?whose={owner.pk}") == ["K-10"]
    assert numbers(client, f"?whose={installer.pk}") == ["K-11"]


@pytest.mark.usefixtures("four")
@pytest.mark.parametrize("query", ["?q=a%00b", f"?q={'9' * 200}", "?whose=x", "?stage=x&order=x"])
def test_what_is_not_understood_is_told_at_its_field(
    query: str, owner: Person, signed_in: SignIn
) -> None:
    """The rest is shown as if it had not been asked for."""
    answer = signed_in(owner).get(f"/jobs/{query}")

    assert answer.status_code == 422
    assert dom(answer).has(".asking .error")
    assert len(dom(answer).all("a.row-link")) == 4


def test_a_page_at_a_time(shop: Shop, owner: Person, signed_in: SignIn) -> None:
    """The query stays in the address; htmx gets the list alone."""
    for number in range(A_PAGE + 2):
        JobFactory.create(shop=shop, number=f"K-{number}", client="Ash")
    client = signed_in(owner)

    page = dom(client.get("/jobs/?q=ash&order=number"))

    assert "27 jobs, 1 to 25 shown." in page.words
    second = page.all(".pages a")[1]
    assert second.attribute("href") == "/jobs/?q=ash&order=number&page=2#listed"
    assert second.attribute("hx-push-url") == "true"
    assert numbers(client, "?q=ash&order=number&page=2") == ["K-25", "K-26"]
    part = client.get("/jobs/?page=2", headers={"HX-Request": "true"})
    assert dom(part).first.id == "listed"
    assert not dom(part).has("form.asking")


def test_a_list_of_many_asks_no_more_questions(
    shop: Shop, owner: Person, signed_in: SignIn
) -> None:
    """Twenty jobs with kitchens, people and snags are read in as many questions as two.

    So are those that were deleted.
    """
    client = signed_in(owner)

    def asked(query: str) -> int:
        with CaptureQueriesContext(connection) as captured:
            client.get(f"/jobs/{query}")
        return len(captured)

    def one_more() -> None:
        kitchen(JobFactory.create(shop=shop, responsible=owner.pk))
        gone = JobFactory.create(shop=shop, client="Ash")
        job_delete(job=gone, by=owner, at=timezone.now())

    for _ in range(2):
        one_more()
    client.get("/jobs/")  # The session is seen once.
    few = {query: asked(query) for query in ("", "?order=fit&q=k", "?stage=cut")}
    for _ in range(10):
        one_more()

    assert {query: asked(query) for query in few} == few
    assert max(few.values()) <= 28


def test_a_job_that_is_made_meanwhile_is_no_fault(job: Job, owner: Person) -> None:
    """Between the questions that a list asks others work on."""
    asked = []

    def somebody_makes_one(execute: Callable[..., Any], *said: Any) -> Any:
        asked.append(said)
        if len(asked) == 2:
            JobFactory.create(shop=job.shop)
        return execute(*said)

    with connection.execute_wrapper(somebody_makes_one):
        page = job_page(owner, Asked(stage="measure"), timezone.localdate(), "")

    assert list(page) == [job.pk]
    assert Job.objects.count() == 2


def test_no_job_is_like_that(job: Job, owner: Person, signed_in: SignIn) -> None:
    """An empty answer says so, and leads back."""
    page = dom(signed_in(owner).get("/jobs/?q=zebra"))

    assert "No job is like that." in page.words
    assert "No jobs yet" not in page.words
    assert page.has("#listed a[href='/jobs/']")


def test_another_shops_jobs_are_never_found(
    shop: Shop, job: Job, stranger: Person, owner: Person, signed_in: SignIn
) -> None:
    """Neither by their words nor by their cabinets, in any list; nor are its people."""
    theirs = JobFactory.create(
        shop=stranger.shop, number="X-1", client="Quarry", fit_on=date(2020, 1, 1)
    )
    CabinetFactory.create(job=theirs, label="Z9")
    client = signed_in(owner)

    for query in ("", "?q=quarry", "?q=Z9", "?when=late", "?order=fit", "?archived=on"):
        answer = client.get(f"/jobs/{query}")
        assert "X-1" not in answer.text
        assert "boris" not in answer.text
    assert client.get(f"/jobs/?whose={stranger.pk}").status_code == 422


def test_a_job_is_archived_and_put_back(job: Job, office: Person, signed_in: SignIn) -> None:
    """It leaves the list, is found with “Archived”, and is read as ever."""
    client = signed_in(office)

    said = dom(client.post(f"/jobs/{job.pk}/archive/", follow=True)).one("#said")

    assert "Job K-1 is in the archive." in said.words
    assert said.one("form").attribute("action") == f"/jobs/{job.pk}/unarchive/"
    assert numbers(client) == []
    assert numbers(client, "?archived=on") == ["K-1"]
    assert client.get(f"/jobs/{job.pk}/").status_code == 200
    assert "archived since" in dom(client.get(f"/jobs/{job.pk}/settings/")).words
    client.post(f"/jobs/{job.pk}/unarchive/")
    assert numbers(client) == ["K-1"]
    told = Revision.objects.filter(job=job, person=office).order_by("pk")
    assert [line.text for line in told] == [
        "Archived job K-1", "Took job K-1 out of the archive"
    ]  # fmt: skip


def test_archived_jobs_are_no_work_for_an_installer(
    job: Job, owner: Person, installer: Person, signed_in: SignIn
) -> None:
    """An installer's list leaves them out, and does not offer to archive."""
    done_kitchen(job, owner)
    client = signed_in(installer)
    assert not dom(client.get("/jobs/")).has(".jobs form")
    assert client.post(f"/jobs/{job.pk}/archive/").status_code == 403

    signed_in(owner).post(f"/jobs/{job.pk}/archive/")

    assert numbers(client) == []
    assert client.get(f"/jobs/{job.pk}/fit/").status_code == 200


def test_a_done_job_is_archived_from_the_list(job: Job, owner: Person, signed_in: SignIn) -> None:
    """What is done has the button beside it."""
    client = signed_in(owner)
    assert not dom(client.get("/jobs/")).has(f"form[action='/jobs/{job.pk}/archive/']")
    done_kitchen(job, owner)

    assert dom(client.get("/jobs/")).has(f"form[action='/jobs/{job.pk}/archive/']")


def test_a_new_job_stands_on_top_with_its_day(
    job: Job, owner: Person, office: Person, signed_in: SignIn
) -> None:
    """The form asks for the day and who sees to it."""
    client = signed_in(owner)
    typed = {"number": "K-2", "fit_on": "2027-03-12", "responsible": str(office.pk)}

    assert client.post("/jobs/", typed).status_code == 302

    row = dom(client.get("/jobs/")).all(".jobs tbody tr")[0]
    assert row.one("a.row-link").words == "K-2"
    assert row.one("time").words == "Fri 12 Mar 2027"
    assert row.one(".who").words == "otto"
    assert client.post("/jobs/", {"number": "K-3", "fit_on": "soon"}).status_code == 422


def test_only_people_of_the_shop_see_to_a_job(
    job: Job, owner: Person, stranger: Person, signed_in: SignIn
) -> None:
    """Another shop's people are not on the list, and are refused."""
    answer = signed_in(owner).post("/jobs/", {"number": "K-2", "responsible": str(stranger.pk)})

    assert answer.status_code == 422
    assert dom(answer).has("#id_responsible_error")


def test_who_sees_to_it_is_named_in_the_history(
    job: Job, owner: Person, office: Person, signed_in: SignIn
) -> None:
    """By name, where it changed."""
    client, address = signed_in(owner), f"/jobs/{job.pk}/settings/"
    seen = dom(client.get(address)).field("seen").value
    typed = {
        "number": "K-1", "client": "Lindqvist", "site": "12 Hill Road",
        "unit": "in", "step": "1.5875",
        "responsible": str(office.pk), "seen": seen,
    }  # fmt: skip

    assert client.post(address, typed).status_code == 302

    line = Revision.objects.filter(job=job, person=owner).latest("pk")
    assert line.text == "K-1: responsible nothing → otto"
