"""Fronts marked as cut: the size is frozen, and a later measurement says what to do."""

from collections.abc import Callable

import pytest
from django.test import Client

from fronts.models import Cabinet, Front, FrontCut, Opening
from fronts.rules.practice import inches
from shopjobs.models import Job, Person
from tests.dom import Answer, dom
from tests.factories import door_and_drawer, overlaid

SignIn = Callable[[Person], Client]


@pytest.fixture
def cabinet(job: Job) -> Cabinet:
    """A cabinet with a door of 16 × 20 and a drawer."""
    overlaid(job)
    return door_and_drawer(job)


@pytest.fixture
def shop_floor(owner: Person, signed_in: SignIn) -> Client:
    """The owner's browser."""
    return signed_in(owner)


def page(client: Client, job: Job) -> Answer:
    """The list of fronts."""
    return dom(client.get(f"/jobs/{job.pk}/cut/fronts/"))


def mark(client: Client, job: Job, *values: str, **more: str) -> Answer:
    """Tick these fronts, and press the button."""
    return dom(client.post(f"/jobs/{job.pk}/cut/fronts/", {"front": [*values]} | more, follow=True))


def values(client: Client, job: Job) -> list[str]:
    """What the ticks of the fronts say."""
    return [box.attribute("value") for box in page(client, job).all("input[name=front]")]


def test_what_is_cut_keeps_its_size_and_a_measurement_says_what_to_trim(
    cabinet: Cabinet, shop_floor: Client, job: Job, installer: Person, signed_in: SignIn
) -> None:
    """On the list and at the cabinet: where, by how much; another front is left alone."""
    door, drawer = values(shop_floor, job)
    said = mark(shop_floor, job, door)
    assert "1 of 2 fronts cut" in said.words
    assert "✓ holds" in said.words
    Opening.objects.filter(cabinet=cabinet, label="a").update(
        measured_width_top=inches(237, 16), measured_width_bottom=inches(237, 16)
    )

    said = page(shop_floor, job)
    first, second = (row.words for row in said.all("tbody tr"))
    assert "16 × 20" in first
    assert "trim 3/16 off the right" in first
    assert "to cut" in second
    assert "1 changed since" in said.words
    at = dom(signed_in(installer).get(f"/jobs/{job.pk}/fit/{cabinet.pk}/"))
    assert "Cut to 16 × 20: trim 3/16 off the right." in at.words
    assert FrontCut.objects.get().width == inches(16)
    assert "Changed meanwhile: B1.a." in mark(shop_floor, job, door).words
    assert "0 of 2 fronts cut" in mark(shop_floor, job, door, drawer, take_back="on").words


def test_what_is_to_be_made_otherwise_since_is_told(
    cabinet: Cabinet, shop_floor: Client, job: Job
) -> None:
    """In another wood it is made again; a cut of which only the size was kept says nothing."""
    mark(shop_floor, job, *values(shop_floor, job))
    Front.objects.filter(opening__label="a").update(material="Maple", hinged="right")

    door, drawer = (row.words for row in page(shop_floor, job).all("tbody tr"))
    assert "make again: cut in MDF, now Maple" in door
    assert "✓ holds" in drawer
    Front.objects.filter(opening__label="a").update(material="")
    assert "hinged at the left when it was cut, now at the right" in page(shop_floor, job).words
    FrontCut.objects.update(build="", material="", hinged="")
    assert "changed since" not in page(shop_floor, job).words


def test_a_front_that_changed_while_it_was_ticked_is_not_marked(
    cabinet: Cabinet, shop_floor: Client, job: Job
) -> None:
    """Nor is any other; what was ticked stays ticked where it is still the same."""
    door, drawer = values(shop_floor, job)
    Opening.objects.filter(cabinet=cabinet, label="a").update(width=inches(14))

    said = mark(shop_floor, job, door, drawer)

    assert "Changed meanwhile: B1.a." in said.words
    assert not FrontCut.objects.exists()
    ticked = said.all("input[name=front][checked]")
    assert [box.attribute("value") for box in ticked] == [drawer]


def test_a_mark_is_taken_back_and_marked_anew(
    cabinet: Cabinet, shop_floor: Client, job: Job
) -> None:
    """Taken back it is to cut again; Undo knows both."""
    both = values(shop_floor, job)
    mark(shop_floor, job, *both)
    assert FrontCut.objects.count() == 2

    assert "0 of 2 fronts cut" in mark(shop_floor, job, *both, take_back="on").words
    assert "Not cut after all: B1.a, B1.b" in dom(shop_floor.get(f"/jobs/{job.pk}/history/")).words


@pytest.mark.parametrize(
    "sent", [{}, {"front": ["B9.z 12"]}, {"front": ["", "x" * 999]}, {"front": ["B1.a"]}]
)
def test_what_is_no_front_is_refused(
    sent: dict[str, list[str]], cabinet: Cabinet, shop_floor: Client, job: Job
) -> None:
    """With a message, and nothing is marked."""
    answer = shop_floor.post(f"/jobs/{job.pk}/cut/fronts/", sent)

    assert answer.status_code == 422
    said = dom(answer)
    assert said.has(".error") or said.has(".summary")
    assert not FrontCut.objects.exists()


def test_another_shop_marks_nothing(
    cabinet: Cabinet, shop_floor: Client, job: Job, stranger: Person, signed_in: SignIn
) -> None:
    """The page is not there."""
    door = values(shop_floor, job)[0]
    other = signed_in(stranger)

    assert other.get(f"/jobs/{job.pk}/cut/fronts/").status_code == 404
    assert other.post(f"/jobs/{job.pk}/cut/fronts/", {"front": [door]}).status_code == 404
    assert not FrontCut.objects.exists()
