"""Clients and their sites: used again, found, reached, changed, made one, let go."""

from collections.abc import Callable

import pytest
from django.db import connection
from django.test import Client as Browser
from django.test.utils import CaptureQueriesContext

from fronts.services.history import capability_for, revision_undo
from fronts.snapshot import kitchen_of
from shopjobs.models import Client, Job, Person, Revision, Shop, Site
from shopjobs.services.clients import clients_merge
from shopjobs.services.jobs import job_archive
from tests.dom import dom
from tests.factories import NOW, JobFactory
from tests.saying import client_set

SignIn = Callable[[Person], Browser]
KNOWN = {
    "name": "Ash",
    "contact": "Kim",
    "phone": "+1 555 0100",
    "email": "",
    "note": "the side door",
}


def job_for(shop: Shop, client: str, site: str = "") -> Job:
    """A job of the shop."""
    return JobFactory.create(shop=shop, client=client, site=site)


def save(browser: Browser, client: Client, **typed: str) -> int:
    """Open a client's page, type, save."""
    address = f"/clients/{client.pk}/"
    seen = dom(browser.get(address)).field("seen").value
    return browser.post(address, {**KNOWN, "seen": seen, **typed}).status_code


def test_a_name_that_is_known_is_that_client(owner: Person, signed_in: SignIn) -> None:
    """Typed just so it is used again, with the site; another name is a new client."""
    browser = signed_in(owner)
    for number, name in (("1", "Ash"), ("2", " Ash "), ("3", "Birch")):
        typed = {"number": number, "client": name, "site": "3 Mill Lane"}
        assert browser.post("/jobs/", typed).status_code == 302

    assert list(Client.objects.order_by("pk").values_list("name", flat=True)) == ["Ash", "Birch"]
    assert [site.client.name for site in Site.objects.order_by("pk") if site.client] == [
        "Ash", "Birch"
    ]  # fmt: skip
    offered = dom(browser.get("/jobs/"))
    assert [each.value for each in offered.all("#clients option")] == ["Birch", "Ash"]
    assert [each.value for each in offered.all("#sites option")] == ["3 Mill Lane"]
    assert offered.field("client").attribute("list") == "clients"


def test_a_site_without_a_client_is_kept(shop: Shop) -> None:
    """A kitchen may have an address and nobody's name; twice it is one site."""
    jobs = [job_for(shop, "", "3 Mill Lane") for _ in range(2)]

    assert [job.client for job in jobs] == [None, None]
    assert Site.objects.get().jobs.count() == 2
    assert (kitchen_of(jobs[0]).job.client, kitchen_of(jobs[0]).job.site) == ("", "3 Mill Lane")


def test_no_shop_sees_anothers_clients(
    shop: Shop, owner: Person, job: Job, stranger: Person, signed_in: SignIn
) -> None:
    """Not on the list, not among what is offered, not found, not changed or merged into."""
    theirs = job_for(stranger.shop, "Quarry", "9 Far End").client  # type: ignore[arg-type]
    assert theirs is not None
    browser = signed_in(owner)

    for address in ("/jobs/", "/clients/", "/clients/?q=quarry", f"/jobs/{job.pk}/settings/",
                    f"/jobs/{job.pk}/copy/", f"/clients/{job.client_id}/"):  # fmt: skip
        answer = browser.get(address)
        assert "Quarry" not in answer.text.replace('value="quarry"', "")
        assert "Far End" not in answer.text
    for address in ("", "merge/", "delete/"):
        assert browser.post(f"/clients/{theirs.pk}/{address}", KNOWN).status_code == 404
    merge = browser.post(f"/clients/{job.client_id}/merge/", {"into": "Quarry"})
    assert "There is no client Quarry." in dom(merge).words
    assert job_for(shop, "Quarry").client != theirs


def test_clients_are_found(shop: Shop, owner: Person, signed_in: SignIn) -> None:
    """By any of their words; each with how many jobs there are."""
    for name, site in (("Ash", "3 Mill Lane"), ("Birch", "4 Mill Lane"), ("Ash", "")):
        job_for(shop, name, site)
    browser = signed_in(owner)
    assert save(browser, Client.objects.get(name="Ash")) == 302

    def found(query: str) -> list[str]:
        return [each.words for each in dom(browser.get(f"/clients/{query}")).all(".row-link")]

    assert found("") == found("?q=mill+lane") == ["Ash", "Birch"]
    assert found("?q=0100") == found("?q=kim") == found("?q=ASH") == ["Ash"]
    assert found("?q=zebra") == []
    assert [each.words for each in dom(browser.get("/clients/")).all(".count")] == ["2", "1"]
    assert browser.get("/clients/?q=a%00").status_code == 422
    assert "No client is like that." in dom(browser.get("/clients/?q=zebra")).words


def test_a_list_of_many_clients_asks_no_more_questions(
    shop: Shop, owner: Person, signed_in: SignIn
) -> None:
    """A page of clients costs the same however many there are."""
    browser = signed_in(owner)
    job_for(shop, "Ash")
    browser.get("/clients/")
    counts = []
    for _ in range(2):
        with CaptureQueriesContext(connection) as asked:
            browser.get("/clients/")
        counts.append(len(asked))
        for number in range(30):
            job_for(shop, f"Client {number}")

    assert counts[0] == counts[1]
    assert "31 clients, 1 to 25 shown." in dom(browser.get("/clients/")).words
    assert len(dom(browser.get("/clients/?page=2")).all(".row-link")) == 6


def test_a_client_is_changed_for_all_jobs(shop: Shop, office: Person, signed_in: SignIn) -> None:
    """The name on every job; it can be taken back by who may make jobs."""
    job, browser = job_for(shop, "Ash", "3 Mill Lane"), signed_in(office)
    assert job.client is not None

    assert save(browser, job.client, name="Ash and Sons") == 302

    assert kitchen_of(Job.objects.get()).job.client == "Ash and Sons"
    page = dom(browser.get(f"/clients/{job.client.pk}/"))
    assert page.one("a[href^='tel:']").words == "+1 555 0100"
    assert "the side door" in page.words
    assert "Ash and Sons" in dom(browser.get(f"/jobs/{job.pk}/")).one(".above").words
    line = Revision.objects.latest("pk")
    assert line.text.startswith("Ash and Sons: name Ash → Ash and Sons, contact nothing → Kim")
    assert capability_for(line, office) == "jobs"
    revision_undo(revision=line, at=NOW, by=office)
    assert Client.objects.get().name == "Ash"


@pytest.mark.parametrize(
    ("field", "typed"),
    [("name", ""), ("name", "Birch"), ("name", "a\x00"), ("phone", "9" * 41), ("email", "nobody"),
     ("note", "x" * 401), ("contact", "two\x07bells")],
)  # fmt: skip
def test_what_can_not_be_kept_is_refused_at_its_field(
    field: str, typed: str, shop: Shop, owner: Person, signed_in: SignIn
) -> None:
    """What was typed stays; a name is given once."""
    client, _ = job_for(shop, "Ash").client, job_for(shop, "Birch")
    assert client is not None
    browser, address = signed_in(owner), f"/clients/{client.pk}/"
    seen = dom(browser.get(address)).field("seen").value

    answer = browser.post(address, {**KNOWN, "seen": seen, field: typed})

    assert answer.status_code == 422
    assert dom(answer).has(f"#client-form #id_{field}_error")
    client.refresh_from_db()
    assert (client.name, client.phone) == ("Ash", "")


def test_two_clients_are_made_one(
    shop: Shop, owner: Person, office: Person, signed_in: SignIn
) -> None:
    """Jobs and sites go to the one that stays, what is not known of it too; and back again."""
    first, second, _ = (
        job_for(shop, name, site)
        for name, site in (("Ash", "3 Mill Lane"), ("Ashe", "3 Mill Lane"), ("Ashe", "9 Hill Road"))
    )
    ash, ashe = first.client, second.client
    assert ash is not None
    assert ashe is not None
    assert save(signed_in(owner), ashe, name="Ashe") == 302
    address = f"/clients/{ashe.pk}/merge/"
    assert signed_in(office).post(address, {"into": "Ash"}).status_code == 403
    browser = signed_in(owner)
    for wrong in ("", "Nobody", "Ashe"):
        answer = browser.post(address, {"into": wrong})
        assert answer.status_code == 422
        assert dom(answer).has("#merge-form #id_into_error")

    assert browser.post(address, {"into": "Ash"})["Location"] == f"/clients/{ash.pk}/"

    assert Client.objects.get().phone == KNOWN["phone"]
    said = [(job.client_name, job.site_address) for job in Job.objects.order_by("pk")]
    assert said == [("Ash", "3 Mill Lane"), ("Ash", "3 Mill Lane"), ("Ash", "9 Hill Road")]
    assert Site.objects.count() == 2

    revision_undo(revision=Revision.objects.latest("pk"), at=NOW, by=owner)
    assert [job.client_name for job in Job.objects.order_by("pk")] == ["Ash", "Ashe", "Ashe"]
    assert Site.objects.count() == 3


def test_a_deleted_job_goes_to_the_one_client_too(shop: Shop, owner: Person) -> None:
    """It may be brought back."""
    ash, ashe = job_for(shop, "Ash"), job_for(shop, "Ashe")
    Job.objects.filter(pk=ashe.pk).update(deleted_at=NOW)
    assert ash.client is not None
    assert ashe.client is not None

    clients_merge(client=ashe.client, into=ash.client, by=owner, at=NOW)

    assert Job.with_deleted.get(pk=ashe.pk).client == ash.client


def test_only_a_client_without_jobs_is_deleted(
    shop: Shop, office: Person, signed_in: SignIn
) -> None:
    """One whose job was deleted lately stays too."""
    job, browser = job_for(shop, "Ash", "3 Mill Lane"), signed_in(office)
    client = Client.objects.get()
    refused = browser.post(f"/clients/{client.pk}/delete/", follow=True)
    assert "There are jobs for Ash, or were until lately" in dom(refused).words

    client_set(job, "Birch", NOW, office)
    gone = browser.post(f"/clients/{client.pk}/delete/", follow=True)

    assert "Client Ash is deleted." in dom(gone).words
    assert list(Client.objects.values_list("name", flat=True)) == ["Birch"]


def test_a_site_without_jobs_is_deleted(
    shop: Shop, office: Person, stranger: Person, signed_in: SignIn
) -> None:
    """One at which a job stands, or did until lately, stays; Undo brings it back."""
    there, browser = job_for(shop, "Ash", "3 Mill Lane"), signed_in(office)
    moved = job_for(shop, "Ash", "5 Mill Lane")
    moved.site = there.site
    moved.save()
    client, free = Client.objects.get(), Site.objects.get(address="5 Mill Lane")
    page = f"/clients/{client.pk}/"
    (form,) = dom(browser.get(page)).all(".reached form")
    action = form.attribute("action")
    assert action == f"{page}sites/{free.pk}/delete/"
    assert signed_in(stranger).post(action).status_code == 404

    gone = browser.post(action, follow=True)

    assert "Site 5 Mill Lane is deleted." in dom(gone).words
    assert browser.post(action).status_code == 404
    assert there.site
    kept = browser.post(f"{page}sites/{there.site.pk}/delete/", follow=True)
    assert "There are jobs at 3 Mill Lane, or were until lately" in dom(kept).words
    step = Revision.objects.get(text="Deleted site 5 Mill Lane")
    assert capability_for(step, office) == "jobs"
    revision_undo(revision=step, by=office, at=NOW)
    assert [site.address for site in client.sites.order_by("address")] == [
        "3 Mill Lane", "5 Mill Lane",
    ]  # fmt: skip


def test_an_installer_reaches_those_with_work_to_do(
    shop: Shop, installer: Person, owner: Person, signed_in: SignIn
) -> None:
    """Clients of jobs on the list, to read and to call; nothing is changed."""
    job, over = job_for(shop, "Ash", "3 Mill Lane"), job_for(shop, "Birch")
    assert job.client is not None
    assert over.client is not None
    job_archive(job=over, by=owner, at=NOW)
    assert save(signed_in(owner), job.client) == 302
    browser = signed_in(installer)

    page = dom(browser.get(f"/clients/{job.client.pk}/"))

    assert page.one("a[href^='tel:']").words == "+1 555 0100"
    assert "3 Mill Lane" in page.words
    assert not page.has("main form")
    assert browser.get(f"/clients/{over.client.pk}/").status_code == 404
    assert "Birch" not in browser.get("/clients/").text
    assert browser.post(f"/clients/{job.client.pk}/", KNOWN).status_code == 403
    for deed in ("merge", "delete"):
        assert browser.post(f"/clients/{job.client.pk}/{deed}/", {}).status_code == 403


def test_a_changed_client_is_told_by_name(job: Job, owner: Person) -> None:
    """In the job's history, and taken back with the client who came with it."""
    client_set(job, "Birch", NOW, owner)
    line = Revision.objects.latest("pk")
    assert line.text == "K-1: client Lindqvist → Birch"

    revision_undo(revision=line, at=NOW, by=owner)

    assert Job.objects.get().client_name == "Lindqvist"
    assert list(Client.objects.values_list("name", flat=True)) == ["Lindqvist"]
