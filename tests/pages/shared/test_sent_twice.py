"""A form that is sent again makes nothing anew: every form that makes something, in parallel."""

from collections.abc import Callable
from datetime import timedelta
from io import BytesIO
from typing import Any

import pytest
from django.db.models import Model
from django.test import Client

from fronts.models import (
    Box,
    Cabinet,
    CutPlan,
    DoorOnHand,
    FitRecord,
    Front,
    Opening,
    OrderCheck,
)
from shopjobs.models import Job, Person, Revision, SentForm
from tests.dom import Part, dom
from tests.kitchen_files import SAMPLES
from tests.pages.kitchens import HTMX, furnish
from tests.pages.shared.sending import as_sent, at_once

SignIn = Callable[[Person], Client]
TIMES = 4
DOOR = {"width": "15 1/2", "height": "28 1/2", "thickness": "3/4"}
PERSON = {"username": "vera", "role": "office", "password": "correct-horse-7"}
FORMS: list[tuple[str, str, str, dict[str, str], type[Model]]] = [
    ("a cabinet", "/jobs/{job}/cabinets/new/", ".editor", {"width": "18"}, Cabinet),
    ("an opening", "/jobs/{job}/cabinets/{cabinet}/openings/new/", ".editor",
     {"x": "1 1/2", "y": "0", "width": "15", "height": "1", "closed_by": "open"}, Opening),
    ("a copy", "/jobs/{job}/cabinets/{cabinet}/copy/", ".editor", {"label": "C9"}, Cabinet),
    ("a door on hand", "/jobs/{job}/doors/new/", ".editor", DOOR, DoorOnHand),
    ("a box", "/jobs/{job}/openings/{boxless}/boxes/0/", ".editor",
     {"width": "14", "height": "4", "front_thickness": "1/2", "rise": "1/2"}, Box),
    ("a job", "/jobs/", "#new-job", {"number": "K-9"}, Job),
    ("a person", "/people/", "#new-person", PERSON, Person),
    ("a record of fit", "/jobs/{job}/fit/{cabinet}/", ".record form", {"state": "missing"},
     FitRecord),
    ("an order check", "/jobs/{job}/order/", ".mark form", {"mark": "check"}, OrderCheck),
    ("a cutting plan", "/jobs/{job}/cut/", "#cut-plan form", {"seconds": "5"}, CutPlan),
]  # fmt: skip


@pytest.fixture
def desk(transactional_db: None, owner: Person, job: Job, signed_in: SignIn) -> Client:
    """A browser in which the owner is signed in, beside a small kitchen."""
    furnish(job)
    Box.objects.all().delete()
    return signed_in(owner)


def address_of(path: str, job: Job) -> str:
    """Where the form stands, in the small kitchen."""
    return path.format(
        job=job.pk,
        cabinet=Cabinet.objects.get(label="B1").pk,
        boxless=Front.objects.get(opening__closed_by="drawer").opening_id,
    )


def form_in(client: Client, address: str, selector: str) -> Part:
    """The form as the page shows it."""
    return dom(client.get(address)).all(selector)[0]


@pytest.mark.parametrize("htmx", [True, False], ids=["in place", "without scripts"])
@pytest.mark.parametrize(
    ("path", "selector", "typed", "table"), [form[1:] for form in FORMS],
    ids=[form[0] for form in FORMS],
)  # fmt: skip
def test_sent_four_times_at_once_it_makes_one(
    desk: Client,
    job: Job,
    path: str,
    selector: str,
    typed: dict[str, str],
    table: type[Model],
    htmx: bool,
) -> None:
    """Each sending is answered as if it were the one; the diary tells of one."""
    address = address_of(path, job)
    sent = as_sent(form_in(desk, address, selector), **typed)
    before, told = table._base_manager.count(), Revision.objects.count()
    headers = HTMX if htmx else {}

    answers = at_once(TIMES, lambda browser: browser.post(address, sent, headers=headers), desk)

    usual = {200} if htmx else {302}
    assert {answer.status_code for answer in answers} == usual, answers[0].content.decode()
    assert table._base_manager.count() == before + 1
    assert Revision.objects.count() == told + 1
    assert len({answer.headers.get("Location") for answer in answers}) == 1
    # A plan may be done by the time that its form comes again: then the way leads to it.
    assert len({answer.headers.get("HX-Redirect") for answer in answers} - {None}) <= 1


def test_a_file_that_is_sent_again_makes_one_job(desk: Client) -> None:
    """What is in the file counts too: another file under the same name is another job."""
    key = as_sent(form_in(desk, "/jobs/import/", "#job-import"))

    def send(browser: Client, text: bytes = SAMPLES[0].read_bytes()) -> Any:
        file = BytesIO(text)
        file.name = "kitchen.job.json"
        return browser.post("/jobs/import/", key | {"file": file})

    before = Job.objects.count()
    answers = at_once(TIMES, send, desk)

    assert {answer.status_code for answer in answers} == {302}
    assert len({answer["Location"] for answer in answers}) == 1
    assert Job.objects.count() == before + 1
    assert send(desk, SAMPLES[1].read_bytes()).status_code == 302
    assert Job.objects.count() == before + 2


def test_the_same_form_with_something_else_in_it_counts(desk: Client, job: Job) -> None:
    """Who goes back and changes what was typed is not answered as before."""
    address = address_of("/jobs/{job}/cabinets/new/", job)
    sent = as_sent(form_in(desk, address, ".editor"), width="18")
    desk.post(address, sent)

    assert desk.post(address, sent | {"label": "B7"}).status_code == 302
    assert Cabinet.objects.filter(label="B7").exists()


def test_what_was_refused_can_be_sent_again(desk: Client, job: Job) -> None:
    """A form counts as saved once it was saved."""
    address = address_of("/jobs/{job}/cabinets/new/", job)
    sent = as_sent(form_in(desk, address, ".editor"), width="18", label="B1")

    assert desk.post(address, sent).status_code == 422
    assert not SentForm.objects.exists()
    Cabinet.objects.get(label="B1").delete()
    assert desk.post(address, sent).status_code == 302


def test_what_was_deleted_since_comes_not_back_by_itself(desk: Client, job: Job) -> None:
    """A request that lingered remakes nothing; whoever means it sends the form once more."""
    address = address_of("/jobs/{job}/cabinets/new/", job)
    sent = as_sent(form_in(desk, address, ".editor"), width="18")
    desk.post(address, sent)
    Cabinet.objects.get(label=sent["label"]).delete()

    again = desk.post(address, sent)
    assert again.status_code == 422
    assert "what it made was deleted since" in dom(again).one(".summary").words
    assert not Cabinet.objects.filter(label=sent["label"]).exists()

    anew = as_sent(dom(again).one(".editor"))
    assert anew["width"] == "18"
    assert desk.post(address, anew).status_code == 302
    assert Cabinet.objects.filter(label=sent["label"]).exists()


def test_a_key_is_of_no_use_to_another_person(
    desk: Client, office: Person, signed_in: SignIn
) -> None:
    """Each person's forms are known by themselves."""
    sent = as_sent(form_in(desk, "/jobs/", "#new-job"), number="K-9")
    desk.post("/jobs/", sent)

    assert signed_in(office).post("/jobs/", sent).status_code == 422
    assert Job.objects.filter(number="K-9").count() == 1


def test_old_forms_are_forgotten(desk: Client, job: Job, owner: Person) -> None:
    """They are kept for a week."""
    desk.post("/jobs/", as_sent(form_in(desk, "/jobs/", "#new-job"), number="K-9"))
    first = SentForm.objects.get()
    for days, kept in ((6, True), (8, False)):
        SentForm.objects.filter(pk=first.pk).update(at=first.at - timedelta(days=days))
        desk.post("/jobs/", as_sent(form_in(desk, "/jobs/", "#new-job"), number=f"K-{days}"))
        assert SentForm.objects.filter(pk=first.pk).exists() is kept


@pytest.mark.parametrize(("path", "selector"), [form[1:3] for form in FORMS])
def test_each_form_has_a_key_of_its_own(desk: Client, job: Job, path: str, selector: str) -> None:
    """Made with the form, and never twice the same."""
    keys = {
        form.field("form_key").value
        for _ in range(2)
        for form in dom(desk.get(address_of(path, job))).all(selector)
    }

    assert len(keys) >= 2
