"""What a front hangs by and carries: its hinge, handle, glass, places, and a box to be made."""

from collections.abc import Callable
from fractions import Fraction

import pytest
from django.test import Client

from fronts.models import Box, BoxToMake, Opening
from fronts.rules.items import HandleItem, HingeItem
from fronts.rules.kitchen import FrontFacts, HandlePlace
from fronts.rules.practice import POUND, inches
from fronts.services.hardware import items_set
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person, Shop
from tests.dom import dom
from tests.factories import NOW, door_and_drawer, overlaid
from tests.pages.kitchens import HTMX, no_rows, seen_in
from tests.pages.standard.short_pages import post_own

SignIn = Callable[[Person], Client]


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """A browser in which the owner is signed in."""
    return signed_in(owner)


@pytest.fixture
def openings(shop: Shop, job: Job) -> tuple[Opening, Opening]:
    """A door and a drawer with its box, in a shop that has a hinge and two handles."""
    overlaid(job)
    hinge = HingeItem("H-1", "overlay", overlays=(inches(1, 2),))
    items_set(owner=shop, kind=HingeItem, items=[hinge], at=NOW)
    handles = [HandleItem("K-1", "round knob"), HandleItem("P-1", centres=inches(3))]
    items_set(owner=shop, kind=HandleItem, items=handles, at=NOW)
    door_and_drawer(job)
    door, drawer = Opening.objects.order_by("position")
    return door, drawer


def front_of(job: Job, place: int) -> FrontFacts:
    """What is decided about the front of an opening."""
    return kitchen_of(job).cabinets[0].openings[place].fronts[0]


def way(opening: Opening, what: str) -> str:
    """An address below an opening."""
    return f"/jobs/{opening.cabinet.job_id}/openings/{opening.pk}/{what}/0/"


def test_a_front_names_its_hinge_and_handle(
    job: Job, desk: Client, openings: tuple[Opening, Opening]
) -> None:
    """The list that holds is offered; the places of its handles are typed beside."""
    door = openings[0]
    page = dom(desk.get(way(door, "fronts")))
    assert [each.words for each in page.field("handle").all("option")] == [
        "The shop's first", "K-1, round knob", "P-1",
    ]  # fmt: skip
    table = f"handles-{door.pk}-0"
    typed = {
        "hinged": "left", "hinge": "H-1", "handle": "P-1", "glass": "on", "shift_x": "0",
        "shift_y": "0", f"{table}-TOTAL_FORMS": "2", f"{table}-INITIAL_FORMS": "0",
        f"{table}-0-x": "2", f"{table}-0-y": "3 1/2", f"{table}-1-x": "", f"{table}-1-y": "",
    }  # fmt: skip

    assert desk.post(way(door, "fronts"), seen_in(page) | typed, headers=HTMX).status_code == 200

    front = front_of(job, 0)
    assert (front.hinge, front.handle, front.glass) == ("H-1", "P-1", True)
    assert front.handles == (HandlePlace(inches(2), inches(7, 2)),)
    assert "hinge H-1" in dom(desk.get(f"/jobs/{job.pk}/")).one(f"#opening-{door.pk}").words


def test_what_no_list_has_is_refused_but_what_is_named_stays(
    job: Job, desk: Client, openings: tuple[Opening, Opening]
) -> None:
    """A handle that left the list is offered on to the front that names it."""
    door = openings[0]
    typed = {"hinged": "left", "handle": "P-1"} | no_rows(f"handles-{door.pk}-0")
    page = dom(desk.get(way(door, "fronts")))
    assert desk.post(way(door, "fronts"), seen_in(page) | typed).status_code == 302
    items_set(owner=job.shop, kind=HandleItem, items=[], at=NOW)

    page = dom(desk.get(way(door, "fronts")))

    assert "P-1, on no list" in page.field("handle").words
    assert desk.post(way(door, "fronts"), seen_in(page) | typed).status_code == 302
    wrong = seen_in(dom(desk.get(way(door, "fronts")))) | typed | {"handle": "K-1"}
    assert desk.post(way(door, "fronts"), wrong).status_code == 422
    assert front_of(job, 0).handle == "P-1"


def test_a_drawer_has_no_hinge_to_choose(desk: Client, openings: tuple[Opening, Opening]) -> None:
    """Nor is one asked."""
    page = dom(desk.get(way(openings[1], "fronts")))

    assert not page.has("[name=hinge]")
    assert page.has("[name=handle]")


def test_a_box_is_to_be_made_instead_of_the_one_that_was_measured(
    job: Job, desk: Client, openings: tuple[Opening, Opening]
) -> None:
    """Its load is in pounds where the shop works in inches; what went is said and comes back."""
    address = f"{way(openings[1], 'boxes')}make/"
    typed = {"slide": "under", "shelves": "1", "load_kg": "40"}

    answer = desk.post(address, seen_in(dom(desk.get(address))) | typed, headers=HTMX)

    assert answer.status_code == 200
    words = dom(answer).one(f"#opening-{openings[1].pk}").words
    assert "to be made, slide under, hidden, 1 shelf above its floor, carries 40 lb" in words
    assert "the size that was measured" in words
    made = front_of(job, 1).box_to_make
    assert made is not None
    assert made.load_kg == 40 * POUND
    assert not Box.objects.exists()

    assert desk.post(f"{way(openings[1], 'boxes')}remove/").status_code == 302
    assert not BoxToMake.objects.exists()


@pytest.mark.parametrize(
    ("field", "typed", "message"),
    [
        ("load_kg", "heavy", "is not a weight"),
        ("load_kg", "0", "Enter a number from"),
        ("shelves", "21", "Give 20 at most."),
        ("shelves", "one", "Enter a whole number."),
        ("slide", "magnet", "Choose one from the list."),
    ],
)
def test_a_fault_in_a_box_stands_at_its_field(
    field: str, typed: str, message: str, desk: Client, openings: tuple[Opening, Opening]
) -> None:
    """Nothing is kept."""
    answer = desk.post(f"{way(openings[1], 'boxes')}make/", {field: typed})

    assert answer.status_code == 422
    assert message in dom(answer).one(".error").words
    assert not BoxToMake.objects.exists()


def test_a_measured_box_takes_the_place_of_one_to_be_made(
    job: Job, desk: Client, openings: tuple[Opening, Opening]
) -> None:
    """A front stands on one box."""
    desk.post(f"{way(openings[1], 'boxes')}make/", {"shelves": "0"})
    typed = {
        "width": "14", "height": "5", "front_thickness": "1/2", "rise": "1/2", "shelves": "2",
        "load_kg": "10 kg", **no_rows(f"pins-{openings[1].pk}-0"),
    }  # fmt: skip

    assert desk.post(way(openings[1], "boxes"), typed).status_code == 302

    front = front_of(job, 1)
    assert front.box_to_make is None
    assert front.box is not None
    assert (front.box.shelves, front.box.load_kg) == (2, Fraction(10))


def test_a_door_stands_on_no_box_to_be_made(
    desk: Client, openings: tuple[Opening, Opening]
) -> None:
    """There is no such page."""
    assert desk.get(f"{way(openings[0], 'boxes')}make/").status_code == 404


def test_a_job_has_its_own_way_of_making_boxes(job: Job, desk: Client) -> None:
    """Or the shop's, whole."""
    assert post_own(desk, {"boxes_side": "5/8", "boxes_joint": "butt"}).status_code == 302
    assert kitchen_of(job).boxes_made_of.side == inches(5, 8)

    here = f"/jobs/{job.pk}/boxes/"
    own = {"joint": "dado", "joint_depth": "1/4", "heights": "3, 4 1/2"}
    assert desk.post(here, seen_in(dom(desk.get(here))) | own).status_code == 302
    made = kitchen_of(job).boxes_made_of
    assert (made.joint, made.heights) == ("dado", (inches(3), inches(9, 2)))

    desk.post(f"{here}clear/")
    assert kitchen_of(job).boxes_made_of.side == inches(5, 8)
