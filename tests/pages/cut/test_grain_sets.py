"""Sets of fronts whose grain runs on: named, changed and taken apart on a page of their own."""

from collections.abc import Callable

import pytest
from django.test import Client

from fronts.models import Front
from fronts.rules.practice import inches
from fronts.selectors.schedules import schedule_of
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import CabinetFactory, OpeningFactory, overlaid
from tests.pages.cut.planned import address, finish, make_plan
from tests.pages.kitchens import posted_by

SignIn = Callable[[Person], Client]
PLY = {"front_material": "oak plywood"}


@pytest.fixture
def run(job: Job) -> Job:
    """Two doors and a stack of two drawer fronts, all of one plywood."""
    overlaid(job)
    for number in (1, 2):
        one = CabinetFactory.create(job=job, label=f"B{number}", x=inches(18 * (number - 1)))
        OpeningFactory.create(cabinet=one, **PLY)
    three = CabinetFactory.create(job=job, label="B3", x=inches(36))
    OpeningFactory.create(cabinet=three, closed_by="drawers", hinged="", count=2, **PLY)
    return job


def page_of(job: Job) -> str:
    """The page of the job's sets."""
    return f"/jobs/{job.pk}/cut/grain/"


def key(label: str) -> str:
    """The key of an opening's first front."""
    return str(Front.objects.filter(opening__cabinet__label=label).order_by("position")[0].pk)


def sets(job: Job) -> dict[str, tuple[str, ...]]:
    """Each set's fronts in order."""
    return {one.name: one.fronts for one in schedule_of(job).grain_sets}


def test_a_whole_wall_is_a_set_in_one_step(run: Job, office: Person, signed_in: SignIn) -> None:
    """Numbered as it stands; the page, the cut list and what is wrong with it say so."""
    client = signed_in(office)
    wall = CabinetFactory._meta.model.objects.filter(job=run)[0].wall
    answer = client.post(page_of(run), {"name": "Run A", "walls": wall})

    assert answer.status_code == 302
    assert sets(run) == {"Run A": ("B1.a", "B2.a", "B3.a.1", "B3.a.2")}
    page = dom(client.get(page_of(run)))
    assert "1 B1.a, 2 B2.a, 3 B3.a.1, 4 B3.a.2" in page.words
    assert "up and down" in page.words
    listed = dom(client.get(address(run))).words
    assert "B3.a.1 (3 of 4)" in listed
    assert "grain set Run A: keep the grain in order" in listed


def test_a_set_is_changed_and_taken_apart(run: Job, office: Person, signed_in: SignIn) -> None:
    """What is no longer ticked leaves it; a set without a button pressed again is gone."""
    client = signed_in(office)
    client.post(page_of(run), {"name": "Run", "cabinets": ["B1", "B3"]})
    changed = client.get(f"{page_of(run)}?set=Run")
    assert "B3.a.1" in dom(changed).words
    client.post(f"{page_of(run)}?set=Run", {"name": "Pair", "fronts": [key("B1"), key("B2")]})
    assert sets(run) == {"Pair": ("B1.a", "B2.a")}

    client.post(f"{page_of(run)}apart/", {"set": "Pair"})
    assert sets(run) == {}


def test_undo_brings_a_set_back(run: Job, office: Person, signed_in: SignIn) -> None:
    """Naming and taking apart are each one change of the job."""
    client = signed_in(office)
    client.post(page_of(run), {"name": "Run", "cabinets": ["B1", "B2"]})
    client.post(f"{page_of(run)}apart/", {"set": "Run"})
    for left in ({"Run": ("B1.a", "B2.a")}, {}):
        form = dom(client.get(page_of(run))).one("form[data-step='undo']")
        client.post(form.attribute("action"), posted_by(form))
        assert sets(run) == left


WRONG = [
    ({"name": "", "cabinets": "B1"}, "Enter a name for the set."),
    ({"name": "New"}, "Tick the fronts that read as one piece."),
    ({"name": "Run", "cabinets": "B2"}, "Another set is called so already"),
    ({"name": "x" * 41, "cabinets": "B2"}, "Keep it to 40 characters."),
    ({"name": "New", "fronts": "999999999"}, "Choose one from the list."),
    ({"name": "New", "fronts": "one"}, "Choose one from the list."),
]


@pytest.mark.parametrize(
    ("typed", "says"), WRONG, ids=["nameless", "empty", "taken", "long", "gone", "no front"]
)
def test_what_cannot_be_is_said_at_its_field(
    run: Job, office: Person, signed_in: SignIn, typed: dict[str, str], says: str
) -> None:
    """With what was typed still there, and nothing changed."""
    client = signed_in(office)
    client.post(page_of(run), {"name": "Run", "cabinets": ["B1"]})
    answer = client.post(page_of(run), typed)

    assert answer.status_code == 422
    page = dom(answer)
    assert says in page.words
    assert page.field("name").value == typed["name"]
    assert sets(run) == {"Run": ("B1.a",)}


def test_installers_do_not_name_sets(run: Job, installer: Person, signed_in: SignIn) -> None:
    """What is cut is the owner's and the office's to say; the link is not offered."""
    client = signed_in(installer)
    assert client.get(page_of(run)).status_code == 403
    assert client.post(f"{page_of(run)}apart/", {"set": "Run"}).status_code == 403
    assert page_of(run) not in client.get(address(run)).content.decode()


def test_an_unknown_set_has_no_page(run: Job, office: Person, signed_in: SignIn) -> None:
    """Nor has a set that was taken apart meanwhile."""
    assert signed_in(office).get(f"{page_of(run)}?set=Gone").status_code == 404


def test_the_plan_cuts_the_set_as_one_block(run: Job, office: Person, signed_in: SignIn) -> None:
    """In one block, with what the saw takes of the figure."""
    client = signed_in(office)
    client.post(page_of(run), {"name": "Run", "cabinets": ["B1", "B2"]})
    make_plan(client, run, oak__0_grain="length")
    finish(run)

    words = dom(client.get(address(run))).words
    assert "Grain set Run: 1 to 2 of 2 in one block" in words
    assert "Between neighbours the saw takes 1/8 of the figure." in words
    assert "Run 1 to 2" in words
    assert "1·B1.a" in words
