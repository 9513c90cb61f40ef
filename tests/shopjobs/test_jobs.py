"""Making, changing and deleting jobs."""

from collections.abc import Callable
from datetime import date, timedelta
from decimal import Decimal
from typing import Any

import pytest
from django.test import Client
from pytest_django import DjangoAssertNumQueries

from shopjobs.models import Job, Person, Revision, Shop
from shopjobs.selectors import job_of, jobs_of
from shopjobs.services.jobs import job_delete
from tests.dom import dom
from tests.factories import NOW, CabinetFactory, JobFactory
from tests.saying import client_set

SignIn = Callable[[Person], Client]
SETTINGS = {
    "number": "K-9",
    "client": "Marchetti",
    "site": "4 Orchard Court",
    "unit": "mm",
    "step": "0.5",
    "fit_on": "2027-03-12",
}


def test_a_job_begins_with_the_shops_habits(owner: Person, signed_in: SignIn) -> None:
    """A new job has the shop's unit and step, and leads to its page."""
    Shop.objects.update(unit="mm", step=Decimal("0.5"))

    answer = signed_in(owner).post("/jobs/", {"number": " K-2 ", "client": "Lindqvist"})

    job = Job.objects.get()
    assert answer.status_code == 302
    assert answer["Location"].startswith(f"/jobs/{job.pk}/")
    assert (job.number, job.client_name, job.unit) == ("K-2", "Lindqvist", "mm")
    assert job.step == Decimal("0.5")


def test_a_new_job_may_have_its_own_unit(owner: Person, signed_in: SignIn) -> None:
    """The form offers the shop's unit and step; another unit goes with a step of its own."""
    client = signed_in(owner)

    step = dom(client.get("/jobs/")).field("step").one("option[selected]")
    assert (step.attribute("value"), step.words) == ("1.5875", "1/16 in")
    refused = client.post("/jobs/", {"number": "K-2", "unit": "mm", "step": "1.5875"})
    assert refused.status_code == 422
    assert dom(refused).has("[id='id_step_error']")
    client.post("/jobs/", {"number": "K-2", "unit": "mm", "step": "0.5"})
    assert Job.objects.filter(number="K-2", unit="mm", step=Decimal("0.5")).exists()


def test_another_unit_brings_its_own_steps(owner: Person, signed_in: SignIn) -> None:
    """What a form's list is filled with when its unit is changed: the usual step is chosen."""
    client = signed_in(owner)

    options = dom(client.get("/jobs/steps/?unit=mm"))

    assert options.one("[selected]").words == "1 mm"
    assert "1/16 in" not in options.words
    assert client.get("/jobs/steps/?unit=ell").status_code == 404


def test_htmx_goes_to_the_new_job(owner: Person, signed_in: SignIn) -> None:
    """Asked by htmx, the whole page goes to the new job."""
    answer = signed_in(owner).post("/jobs/", {"number": "K-2"}, headers={"HX-Request": "true"})

    assert answer["HX-Redirect"].startswith(f"/jobs/{Job.objects.get().pk}/")


def test_a_taken_number_is_refused_at_its_field(owner: Person, job: Job, signed_in: SignIn) -> None:
    """A number is given once in a shop; what was typed stays."""
    answer = signed_in(owner).post("/jobs/", {"number": "K-1", "client": "Marchetti"})

    assert answer.status_code == 422
    assert "There is already a job K-1 in this shop." in dom(answer).words
    assert "Marchetti" in dom(answer).values
    assert Job.objects.count() == 1


def test_two_shops_may_use_the_same_number(job: Job, stranger: Person, signed_in: SignIn) -> None:
    """Another shop's numbers are its own."""
    assert signed_in(stranger).post("/jobs/", {"number": "K-1"}).status_code == 302


def test_the_installer_makes_no_jobs(installer: Person, signed_in: SignIn) -> None:
    """The installer reads the list; the form is not there, and not taken."""
    client = signed_in(installer)

    assert "Make the job" not in dom(client.get("/jobs/")).words
    assert client.post("/jobs/", {"number": "K-2"}).status_code == 403
    assert not Job.objects.exists()


def test_an_empty_list_says_what_it_is_for(owner: Person, signed_in: SignIn) -> None:
    """Without jobs the page says what a job is, and offers to make one."""
    page = dom(signed_in(owner).get("/jobs/"))

    assert "No jobs yet." in page.words
    assert "Make the job" in page.words


def test_the_list_shows_only_the_shops_jobs_latest_first(
    owner: Person, job: Job, stranger: Person, signed_in: SignIn
) -> None:
    """The job that was changed last comes first; other shops' jobs don't come at all."""
    assert stranger.shop
    JobFactory.create(shop=stranger.shop, number="X-1")
    JobFactory.create(shop=job.shop, number="K-2")
    client_set(job, "Ash", NOW, owner)

    page = dom(signed_in(owner).get("/jobs/"))

    assert 0 < page.words.index("K-1") < page.words.index("K-2")
    assert "X-1" not in page.words


def test_the_list_asks_the_database_little(
    owner: Person,
    shop: Shop,
    signed_in: SignIn,
    django_assert_max_num_queries: DjangoAssertNumQueries,
) -> None:
    """Thirty jobs cost no more questions than one."""
    JobFactory.create_batch(30, shop=shop)
    client = signed_in(owner)

    with django_assert_max_num_queries(24):
        client.get("/jobs/")


def save(client: Client, job: Job, typed: dict[str, str]) -> Any:
    """Open the job's settings, type, and save; the page that one comes to."""
    address = f"/jobs/{job.pk}/settings/"
    seen = dom(client.get(address)).field("seen").value
    return client.post(address, {"seen": seen} | typed, follow=True)


def test_two_people_do_not_overwrite_a_jobs_settings_unseen(
    owner: Person, office: Person, job: Job, signed_in: SignIn
) -> None:
    """Who typed over something older is told, keeps it, and may then put it in its place."""
    mine, address = signed_in(owner), f"/jobs/{job.pk}/settings/"
    seen = {"seen": dom(mine.get(address)).field("seen").value}
    save(signed_in(office), job, SETTINGS | {"client": "Lindqvist and Marchetti"})

    stale = mine.post(address, SETTINGS | seen)

    assert stale.status_code == 409
    assert "made this “Lindqvist and Marchetti” while you were typing" in dom(stale).words
    assert "Marchetti" in dom(stale).values
    assert Job.objects.get().client_name == "Lindqvist and Marchetti"
    assert mine.post(address, SETTINGS).status_code == 409

    again = {"seen": dom(stale).field("seen").value}
    assert mine.post(address, SETTINGS | again).status_code == 302
    assert Job.objects.get().client_name == "Marchetti"


def test_settings_are_saved(office: Person, job: Job, signed_in: SignIn) -> None:
    """All that is known of a job changes, and the revision counts it."""
    answer = save(signed_in(office), job, SETTINGS)

    job.refresh_from_db()
    assert "Job K-9 is saved." in dom(answer).words
    assert answer.redirect_chain[-1][0] == f"/jobs/{job.pk}/"
    assert (job.number, job.unit, job.fit_on) == ("K-9", "mm", date(2027, 3, 12))
    assert (job.step, job.revision) == (Decimal("0.5"), 2)
    line = Revision.objects.get(job=job, person=office)
    assert line.text.startswith("K-9: number K-1 → K-9, client ")


@pytest.mark.parametrize(
    ("field", "typed", "words"),
    [
        ("number", "", "Enter a job number, like K-104."),
        ("number", "9" * 41, "Keep it to 40 characters"),
        ("number", "K\x00", "a sign that can’t be kept"),
        ("fit_on", "next week", "Enter a date, like 2027-03-12."),
        ("step", "nan", "Choose one from the list"),
        ("step", "1.5875", "Sizes are in millimetres; choose a step in them, like 1 mm."),
        ("unit", "furlong", "Choose one from the list"),
    ],
)
def test_bad_settings_change_nothing(
    field: str, typed: str, words: str, owner: Person, job: Job, signed_in: SignIn
) -> None:
    """A message stands at the field, what was typed stays, nothing is saved."""
    answer = save(signed_in(owner), job, SETTINGS | {field: typed})

    assert answer.status_code == 422
    assert words in dom(answer).words
    assert dom(answer).has(f"[id='id_{field}_error']")
    assert "4 Orchard Court" in dom(answer).values
    job.refresh_from_db()
    assert (job.number, job.unit, job.revision) == ("K-1", "in", 1)


def test_a_step_that_is_not_on_the_list_stays_on_offer(
    owner: Person, job: Job, signed_in: SignIn
) -> None:
    """A job that came with a step of its own keeps it when something else is saved."""
    Job.objects.update(step=Decimal("10"))
    address = f"/jobs/{job.pk}/settings/"
    client = signed_in(owner)

    assert dom(client.get(address)).field("step").one("option[selected]").words == "10 mm"
    assert save(client, job, SETTINGS | {"step": "10"}).status_code == 200
    job.refresh_from_db()
    assert job.step == 10


def test_a_deleted_job_can_be_brought_back(owner: Person, job: Job, signed_in: SignIn) -> None:
    """It is gone from the list, and stands under it with a way back."""
    CabinetFactory.create(job=job)
    client = signed_in(owner)
    answer = dom(client.post(f"/jobs/{job.pk}/delete/", follow=True))

    said = answer.one("#said")
    assert "Job K-1 is deleted, with 1 cabinet." in said.words
    assert "It can be brought back here for 30 days." in said.words
    assert said.one("form").attribute("action") == f"/jobs/{job.pk}/bring-back/"
    assert not Job.objects.exists()
    assert client.get(f"/jobs/{job.pk}/").status_code == 404
    assert answer.has(f"form[action='/jobs/{job.pk}/bring-back/']")
    back = client.post(f"/jobs/{job.pk}/bring-back/", follow=True)
    assert "Job K-1 is back." in dom(back).words
    assert "B1" in dom(back).words
    told = Revision.objects.filter(job=job, person=owner).order_by("pk")
    assert [line.text for line in told][-2:] == ["Deleted job K-1", "Brought back job K-1"]


def test_a_job_comes_back_only_to_a_number_that_is_free(
    owner: Person, job: Job, signed_in: SignIn
) -> None:
    """Another one of its number was made meanwhile."""
    client = signed_in(owner)
    client.post(f"/jobs/{job.pk}/delete/")
    other = JobFactory.create(shop=job.shop, number=job.number)

    answer = client.post(f"/jobs/{job.pk}/bring-back/", follow=True)

    assert "There is already a job K-1" in dom(answer).words
    assert list(Job.objects.all()) == [other]


def test_a_job_is_kept_for_a_month(owner: Person, job: Job, stranger: Person) -> None:
    """What was deleted longer ago goes with the next that is deleted; the lines stay."""
    others = JobFactory.create(shop=stranger.shop)
    second = JobFactory.create(shop=job.shop, number="K-2")
    job_delete(job=others, by=stranger, at=NOW)
    job_delete(job=job, by=owner, at=NOW)

    job_delete(job=second, by=owner, at=NOW + timedelta(days=Job.DAYS_KEPT, seconds=1))

    assert list(Job.with_deleted.filter(shop=job.shop_id)) == [second]
    assert Job.with_deleted.filter(pk=others.pk).exists()
    (line,) = Revision.objects.filter(text="Deleted job K-1", shop=owner.shop)
    assert (line.changes, line.can_undo) == ([], False)


def test_nobody_brings_back_another_shops_job(
    job: Job, stranger: Person, signed_in: SignIn
) -> None:
    """For another shop it does not exist, nor for who may not make jobs."""
    Job.objects.update(deleted_at=NOW)

    assert signed_in(stranger).post(f"/jobs/{job.pk}/bring-back/").status_code == 404
    assert Job.with_deleted.get(pk=job.pk).deleted_at == NOW


@pytest.mark.parametrize("name", ["number", "client", "site"])
def test_what_can_not_be_printed_is_refused_at_its_field(
    owner: Person, signed_in: SignIn, name: str
) -> None:
    """A control character that was pasted along is told, and nothing is made."""
    typed = {"number": "K-9", name: "Lind\aqvist"}
    answer = signed_in(owner).post("/jobs/", typed)

    assert answer.status_code == 422
    assert "Use plain text on one line." in dom(answer).words
    assert not Job.objects.exists()


def test_who_belongs_to_no_shop_finds_no_job(job: Job) -> None:
    """The one person who need not belong to a shop, who set the site up."""
    nobodys = Person.objects.create_superuser("root", password="spokeshave and sawdust 9")

    assert nobodys.shop is None
    assert list(jobs_of(nobodys)) == []
    with pytest.raises(Job.DoesNotExist):
        job_of(nobodys, job.pk)
