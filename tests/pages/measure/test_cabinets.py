"""Cabinets entered, changed, copied and moved on the job's page."""

from collections.abc import Callable

import pytest
from django.test import Client
from pytest_django.fixtures import DjangoAssertNumQueries

from fronts.models import Box, Cabinet, Opening
from fronts.rules.practice import inches
from fronts.rules.runs import stood
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import BoxFactory, CabinetFactory, OpeningFactory, overlaid
from tests.pages.kitchens import HTMX, NEW_CABINET, furnish, seen_in

SignIn = Callable[[Person], Client]


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """A browser in which the owner is signed in."""
    return signed_in(owner)


def labels(job: Job) -> list[str]:
    """The job's cabinets in their order."""
    return [each.label for each in Cabinet.objects.filter(job=job).order_by("position")]


def test_a_plain_cabinet_is_one_form(job: Job, desk: Client) -> None:
    """One post enters the cabinet and its opening; the browser is led back to it."""
    answer = desk.post(f"/jobs/{job.pk}/cabinets/new/", NEW_CABINET)

    assert answer.status_code == 302
    opening = Opening.objects.get(cabinet__label="B1")
    at = f"cabinet-{opening.cabinet_id}"
    assert answer["Location"] == f"/jobs/{job.pk}/?at={at}#{at}"
    assert (opening.closed_by, opening.width) == ("door", inches(15))
    assert "Cabinet B1 is entered." in dom(desk.get(f"/jobs/{job.pk}/")).words


def test_htmx_gets_the_new_cabinet_and_the_next_form(job: Job, desk: Client) -> None:
    """The answer is small: a form that goes on from it; the wall follows by itself."""
    answer = desk.post(f"/jobs/{job.pk}/cabinets/new/", NEW_CABINET, headers=HTMX)

    assert answer.status_code == 200
    assert "job-changed" in answer["HX-Trigger-After-Settle"]
    assert answer["HX-Retarget"] == "#cabinet-new"
    assert not dom(answer).has("[role=table]")
    assert not dom(answer).is_whole
    form = dom(answer).one("form.editor")
    assert form.field("label").value == "B2"
    assert form.field("height").value == "30 1/2"
    assert form.field("width").value == ""
    assert form.field("width").carries("autofocus")


def test_the_second_cabinet_stands_beside_the_first(job: Job, desk: Client) -> None:
    """A place that is left open is the end of the run; pale, the table says where that is."""
    for label in ("B1", "B2"):
        desk.post(f"/jobs/{job.pk}/cabinets/new/", {**NEW_CABINET, "label": label}, headers=HTMX)

    assert Cabinet.objects.get(label="B2").x is None
    assert [each.left for each in stood(kitchen_of(job)).cabinets] == [0, inches(18)]
    page = dom(desk.get(f"/jobs/{job.pk}/"))
    second = page.one(f"[name='cabinet-{Cabinet.objects.get(label='B2').pk}-x']")
    assert (second.value, second.attribute("placeholder")) == ("", "18")


@pytest.mark.parametrize(
    ("field", "typed", "message"),
    [
        ("width", "18 1/0", "divides by zero"),
        ("width", "", "Enter the width, like 23 5/8."),
        ("height", "-3", "is negative"),
        ("depth", "1e400", "is not a length"),
        ("label", "", "Enter a label, like B1."),
        ("label", "x" * 41, "Keep it to 40 characters"),
        ("kind", "corner", "Choose one from the list"),
        ("sides", "10", "leave no opening between them"),
        ("wall", "", "Enter the wall's name, like A."),
    ],
)
def test_a_refused_form_keeps_what_was_typed(
    field: str, typed: str, message: str, job: Job, desk: Client
) -> None:
    """The message stands at the field with what was typed, and nothing is entered."""
    answer = desk.post(f"/jobs/{job.pk}/cabinets/new/", {**NEW_CABINET, field: typed}, headers=HTMX)

    assert answer.status_code == 422
    assert message in dom(answer).words
    assert dom(answer).has(f"[id='cabinet-new-{field}_error']")
    assert dom(answer).field("depth").value == (typed if field == "depth" else "24")
    assert not Cabinet.objects.exists()


def test_a_size_may_be_a_sum(job: Job, desk: Client) -> None:
    """It is worked out exactly; one that can't be comes back as it was typed, and says why."""
    there = f"/jobs/{job.pk}/cabinets/new/"
    refused = desk.post(there, {**NEW_CABINET, "width": "36-2*"})
    desk.post(there, {**NEW_CABINET, "width": "36-12*1 1/2"})

    assert refused.status_code == 422
    assert dom(refused).field("width").value == "36-2*"
    assert "can't be worked out; enter a length, or a sum such as 54+24." in dom(refused).words
    assert Cabinet.objects.get(job=job).width == inches(18)


def test_a_label_is_taken_once(job: Job, desk: Client) -> None:
    """A second cabinet of the same label is refused at its label."""
    CabinetFactory.create(job=job)

    answer = desk.post(f"/jobs/{job.pk}/cabinets/new/", NEW_CABINET)

    assert answer.status_code == 422
    assert "There is already a cabinet B1 in this job." in dom(answer).words


@pytest.mark.parametrize(
    ("face", "closed"),
    [
        ("pair", ["pair"]),
        ("drawers", ["drawers"]),
        ("drawer+door", ["drawer", "door"]),
        ("", []),
    ],
)
def test_each_plain_face_is_laid_out(face: str, closed: list[str], job: Job, desk: Client) -> None:
    """Every face that the form offers becomes its openings."""
    typed = {**NEW_CABINET, "face": face, "count": "3", "drawer_height": "5"}

    desk.post(f"/jobs/{job.pk}/cabinets/new/", typed)

    assert [each.closed_by for each in Opening.objects.order_by("position")] == closed


def test_a_cabinet_is_changed_in_its_place(job: Job, desk: Client) -> None:
    """The form shows sizes as people say them; the answer is the changed cabinet alone."""
    cabinet = CabinetFactory.create(job=job)
    CabinetFactory.create(job=job)
    address = f"/jobs/{job.pk}/cabinets/{cabinet.pk}/"
    page = dom(desk.get(address, headers=HTMX))
    assert page.field("height").value == "30 1/2"

    typed = {**NEW_CABINET, "wall": "North", "width": '21"', "x": "0", "y": "4"}
    answer = desk.post(address, typed | seen_in(page), headers=HTMX)

    assert answer["HX-Retarget"] == f"#cabinet-{cabinet.pk}"
    sizes = [dom(answer).field(f"cabinet-{cabinet.pk}-{name}").value
             for name in ("width", "height", "depth")]  # fmt: skip
    assert sizes == ["21", "30 1/2", "24"]
    assert len(dom(answer).all("[role=rowgroup]")) == 1
    cabinet.refresh_from_db()
    assert cabinet.width == inches(21)


def test_openings_must_still_lie_in_their_cabinet(job: Job, desk: Client) -> None:
    """Where no words say how openings stand they don't follow; the message is at the size."""
    cabinet = OpeningFactory.create(cabinet=CabinetFactory.create(job=job), x=inches(2)).cabinet
    address = f"/jobs/{job.pk}/cabinets/{cabinet.pk}/"
    version = seen_in(dom(desk.get(address)))

    answer = desk.post(
        address, {**NEW_CABINET, "width": "12", "x": "0", "y": "4", **version}, headers=HTMX
    )

    assert answer.status_code == 422
    told = "12 in leaves opening B1.a 10 in of its width of 14 1/2 in; 16 1/2 in would do, or"
    assert told in dom(answer).words


def test_a_copy_goes_to_the_end_of_the_run(job: Job, desk: Client) -> None:
    """The form offers the next label and place; openings and boxes come with the copy."""
    furnish(job)
    cabinet = Cabinet.objects.get(label="B2")
    address = f"/jobs/{job.pk}/cabinets/{cabinet.pk}/copy/"
    page = dom(desk.get(address))
    assert page.field("label").value == "B3"
    assert page.field("x").attribute("placeholder") == "next: 36"

    desk.post(address, {"label": "B3", "x": "36"})

    copy = Cabinet.objects.get(label="B3")
    assert copy.x == inches(36)
    assert Box.objects.filter(front__opening__cabinet=copy).count() == 1


def test_an_edit_asks_little_of_the_database(
    job: Job, desk: Client, django_assert_max_num_queries: DjangoAssertNumQueries
) -> None:
    """Saving a cabinet of a large kitchen costs as many queries as of a small one."""
    overlaid(job)
    cabinets = CabinetFactory.create_batch(12, job=job)
    for each in cabinets:
        BoxFactory.create(opening=OpeningFactory.create(cabinet=each, closed_by="drawer"))
    address = f"/jobs/{job.pk}/cabinets/{cabinets[-1].pk}/"
    typed = {**NEW_CABINET, "label": "B12", "wall": "North", "x": "198", "y": "4"}
    version = seen_in(dom(desk.get(address)))

    with django_assert_max_num_queries(22):
        answer = desk.post(address, typed | version, headers=HTMX)

    assert answer.status_code == 200


@pytest.mark.parametrize("end", ["cabinets/new/", "cabinets/{pk}/", "cabinets/{pk}/delete/"])
def test_the_installer_enters_no_cabinets(
    end: str, job: Job, installer: Person, signed_in: SignIn
) -> None:
    """Cabinets are the desk's; the installer gets the page that says so."""
    cabinet = CabinetFactory.create(job=job)
    address = f"/jobs/{job.pk}/" + end.format(pk=cabinet.pk)

    assert signed_in(installer).get(address).status_code in (403, 405)
    assert signed_in(installer).post(address, NEW_CABINET).status_code == 403
    assert labels(job) == ["B1"]


def test_pages_are_only_asked_and_moves_only_told(job: Job, desk: Client) -> None:
    """What shows takes no post, and what changes takes no get."""
    cabinet = CabinetFactory.create(job=job)

    assert desk.get(f"/jobs/{job.pk}/rows/cabinet-{cabinet.pk}/move/").status_code == 405
    assert desk.post(f"/jobs/{job.pk}/").status_code == 405
    assert desk.post(f"/jobs/{job.pk}/cabinets/{cabinet.pk}/preview/").status_code == 405
