"""Walls, and what stands on them beside cabinets: entered, followed, taken away."""

from collections.abc import Callable

import pytest
from django.test import Client

from fronts.jobfile import read, write
from fronts.models import Cabinet, Thing, Wall
from fronts.rules.practice import inches
from fronts.rules.runs import Standing, stood
from fronts.rules.wall_facts import WallEnd
from fronts.services.cabinets import cabinet_delete
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import NOW, CabinetFactory
from tests.pages.kitchens import HTMX, seen_in
from tests.saying import cabinet_change

SignIn = Callable[[Person], Client]
FILLER = {"kind": "filler", "label": "F1", "wall": "North", "width": "3", "after": "B1"}


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """A browser in which the owner is signed in."""
    return signed_in(owner)


@pytest.fixture
def two(job: Job) -> Job:
    """Two cabinets on the north wall, beside each other."""
    for label in ("B1", "B2"):
        CabinetFactory.create(job=job, label=label, x=None)
    return job


def places(job: Job) -> dict[str, str]:
    """Where everything stands, in inches."""
    kitchen = stood(kitchen_of(job))
    standing: tuple[Standing, ...] = (*kitchen.cabinets, *kitchen.others)
    return {one.label: str((one.x or 0) / inches(1)) for one in standing}


def test_a_wall_is_offered_by_the_name_that_cabinets_say(two: Job, desk: Client) -> None:
    """Its length and its ends are what is entered."""
    address = f"/jobs/{two.pk}/walls/new/"
    page = dom(desk.get(address))
    assert page.field("label").value == "North"
    typed = {
        "label": "North", "length": "150 1/4", "right_corner": "inside", "right_wall": "East",
        "right_angle": "90",
    }  # fmt: skip

    assert desk.post(address, seen_in(page) | typed, headers=HTMX).status_code == 200

    (wall,) = kitchen_of(two).walls
    assert (wall.length, wall.left, wall.right) == (
        inches(601, 4), None, WallEnd("inside", "East")
    )  # fmt: skip
    assert "150 1/4 long" in dom(desk.get(f"/jobs/{two.pk}/")).one("#walls").words


@pytest.mark.parametrize(
    ("typed", "field", "message"),
    [
        ({"right_corner": "inside"}, "right_wall", "Name the wall that it meets in the corner."),
        ({"right_corner": "free", "right_angle": "400"}, "right_angle", "from 1 to 359"),
        ({"right_wall": "East"}, "right_corner", "or none of it."),
        ({"length": "-3"}, "length", "is negative"),
        ({"label": ""}, "label", "Enter the wall's name, like North."),
    ],
)
def test_a_fault_in_a_wall_stands_at_its_field(
    typed: dict[str, str], field: str, message: str, job: Job, desk: Client
) -> None:
    """Nothing is kept."""
    answer = desk.post(f"/jobs/{job.pk}/walls/new/", {"label": "North", "length": "10"} | typed)

    assert answer.status_code == 422
    assert message in dom(answer).one(f"#wall-new-{field}_error").words
    assert not Wall.objects.exists()


def test_a_filler_moves_what_comes_after_it(two: Job, desk: Client) -> None:
    """A cabinet without a place stands where the one before it ends."""
    assert places(two) == {"B1": "0", "B2": "18"}
    address = f"/jobs/{two.pk}/things/new/"
    page = dom(desk.get(address))
    assert (page.field("label").value, page.field("after").value) == ("F1", "B2")

    assert desk.post(address, seen_in(page) | FILLER).status_code == 302

    assert places(two) == {"B1": "0", "B2": "21", "F1": "18"}
    words = dom(desk.get(f"/jobs/{two.pk}/")).one("#cabinets").words
    assert "Filler after B1" in words


@pytest.mark.parametrize(
    ("typed", "field", "message"),
    [
        ({"label": "B2"}, "label", "There is a cabinet B2; give another label."),
        ({"wall": "East"}, "after", "B1 stands on wall North."),
        ({"after": "Z9"}, "after", "Choose something that stands in this job."),
        ({"width": ""}, "width", "Enter the width"),
        ({"kind": "sofa"}, "kind", "Choose one from the list."),
    ],
)
def test_what_does_not_agree_is_refused_at_its_field(
    typed: dict[str, str], field: str, message: str, two: Job, desk: Client
) -> None:
    """Nothing is kept, and what was typed stays."""
    answer = desk.post(f"/jobs/{two.pk}/things/new/", FILLER | typed)

    assert answer.status_code == 422
    assert message in dom(answer).one(f"#thing-new-{field}_error").words
    assert not Thing.objects.exists()


def test_nothing_follows_itself(two: Job, desk: Client) -> None:
    """Not by way of another either."""
    desk.post(f"/jobs/{two.pk}/things/new/", FILLER)
    desk.post(f"/jobs/{two.pk}/things/new/", FILLER | {"label": "F2", "after": "F1"})
    address = f"/jobs/{two.pk}/things/{Thing.objects.get(label='F1').pk}/"

    answer = desk.post(address, seen_in(dom(desk.get(address))) | FILLER | {"after": "F2"})

    assert answer.status_code == 422
    assert "F2 follows this one in turn." in dom(answer).words


def test_followers_keep_their_place_whatever_they_follow(two: Job, desk: Client) -> None:
    """Renamed, moved to another wall, deleted: the file that is written can be read."""
    desk.post(f"/jobs/{two.pk}/things/new/", FILLER | {"after": "B2"})
    second = Cabinet.objects.get(label="B2")

    cabinet_change(cabinet=second, label="B9", at=NOW)
    assert Thing.objects.get().after == "B9"
    cabinet_change(cabinet=second, wall="East", at=NOW)
    assert Thing.objects.get().after == "B1"
    cabinet_delete(cabinet=Cabinet.objects.get(label="B1"), at=NOW)
    assert Thing.objects.get().after == ""

    assert read(write(kitchen_of(two))) == kitchen_of(two)


def test_what_follows_a_thing_that_goes_follows_what_stood_before_it(
    two: Job, desk: Client
) -> None:
    """And comes back with it by Undo."""
    desk.post(f"/jobs/{two.pk}/things/new/", FILLER)
    desk.post(f"/jobs/{two.pk}/things/new/", FILLER | {"label": "F2", "after": "F1"})

    first = Thing.objects.get(label="F1")
    assert desk.post(f"/jobs/{two.pk}/things/{first.pk}/delete/").status_code == 302

    assert Thing.objects.get().after == "B1"


def test_a_cabinets_place_may_be_left_open_again(two: Job, desk: Client) -> None:
    """Its row says how it stands."""
    second = Cabinet.objects.get(label="B2")
    address = f"/jobs/{two.pk}/cabinets/{second.pk}/"
    page = dom(desk.get(address))
    body = {name: page.field(name).value for name in
            ("label", "width", "height", "depth", "kind", "build", "wall", "y")}  # fmt: skip
    assert desk.post(address, seen_in(page) | body | {"x": "40"}).status_code == 302
    assert places(two)["B2"] == "40"

    page = dom(desk.get(address))
    assert desk.post(address, seen_in(page) | body | {"x": ""}).status_code == 302

    assert places(two)["B2"] == "18"
    x = dom(desk.get(f"/jobs/{two.pk}/")).one(f"[name='cabinet-{second.pk}-x']")
    assert (x.value, x.attribute("placeholder")) == ("", "18")


def test_a_cabinet_cannot_take_the_label_of_a_thing(two: Job, desk: Client) -> None:
    """Each label is one thing's."""
    desk.post(f"/jobs/{two.pk}/things/new/", FILLER)
    second = Cabinet.objects.get(label="B2")
    address = f"/jobs/{two.pk}/cabinets/{second.pk}/"
    page = dom(desk.get(address))
    body = {name: page.field(name).value for name in
            ("width", "height", "depth", "kind", "build", "wall", "y")}  # fmt: skip

    answer = desk.post(address, seen_in(page) | body | {"label": "F1"})

    assert answer.status_code == 422
    assert "Something else is called F1" in dom(answer).words
