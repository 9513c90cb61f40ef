"""The shop's list of hardware, and a job's own: what holds, what is entered, in which order."""

from collections.abc import Callable
from fractions import Fraction

import pytest
from django.test import Client

from fronts.models import HardwareList, HingeItem
from fronts.rules.items import HandleItem, Span
from fronts.rules.lengths import Mm
from fronts.rules.practice import inches
from fronts.rules.usual_hardware import usual_hardware
from fronts.services.hardware import items_set
from fronts.snapshot import kitchen_of, ways_of
from shopjobs.models import Job, Person, Revision, Shop
from tests.dom import dom
from tests.factories import NOW, JobFactory
from tests.pages.kitchens import seen_in

SignIn = Callable[[Person], Client]
HINGE = {
    "code": "H-1", "mount": "overlay", "frame": "frameless", "fixed_distance": "11 mm",
    "plates": "0 mm, 3 mm", "bore_least": "3 mm", "bore_most": "8 mm", "usual_bore": "5 mm",
}  # fmt: skip
KNOB = {"door": "upright", "drawer": "across"}


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """A browser in which the owner is signed in."""
    return signed_in(owner)


def codes(client: Client, address: str, kind: str) -> list[str]:
    """The items of one kind in the order in which the page has them."""
    return [each.words for each in dom(client.get(address)).all(f"#{kind} h3")]


def entered(client: Client, kind: str, typed: dict[str, str], at: str = "/shop/hardware/") -> int:
    """Open the form of a new item, type, and save; the answer's code."""
    address = f"{at}{kind}/new/"
    return client.post(address, seen_in(dom(client.get(address))) | typed).status_code


def test_an_empty_list_shows_what_holds_instead(desk: Client, shop: Shop) -> None:
    """The plain items by which the rules work until there are others."""
    usual = usual_hardware(ways_of(shop))
    page = dom(desk.get("/shop/hardware/"))

    for kind in ("hinges", "slides", "handles", "lifts", "bands"):
        assert codes(desk, "/shop/hardware/", kind) == [each.code for each in getattr(usual, kind)]
    assert page.words.count("None is entered.") == 5
    assert not HardwareList.objects.exists()


def test_a_shop_begins_from_a_copy(desk: Client, shop: Shop, job: Job) -> None:
    """The copy is what held before, and can be changed; begun twice, nothing is doubled."""
    before = usual_hardware(kitchen_of(job)).hinges

    for _ in range(2):
        assert desk.post("/shop/hardware/hinges/usual/").status_code == 302

    assert kitchen_of(job).hardware.hinges == before
    assert kitchen_of(job).hardware.slides == ()


def test_a_hinge_is_entered_changed_and_taken_out(desk: Client, job: Job) -> None:
    """What is typed is what the rules get; a change is told in words."""
    assert entered(desk, "hinges", HINGE) == 302
    (hinge,) = kitchen_of(job).hardware.hinges
    assert (hinge.code, hinge.frame, hinge.fixed_distance) == ("H-1", "frameless", Mm(11))
    assert (hinge.plates, hinge.bore, hinge.usual_bore) == (
        (Mm(0), Mm(3)), Span(Mm(3), Mm(8)), Mm(5)
    )  # fmt: skip
    assert (hinge.cup_diameter, hinge.cup_depth, hinge.angle) == (Mm(35), Mm(13), Fraction(110))

    address = f"/shop/hardware/hinges/{HingeItem.objects.get().pk}/"
    page = dom(desk.get(address))
    assert page.field("usual_bore").value == "5 mm"
    assert desk.post(address, HINGE | seen_in(page) | {"usual_bore": "6 mm"}).status_code == 302
    assert kitchen_of(job).hardware.hinges[0].usual_bore == 6
    assert "H-1: usual B" in Revision.objects.order_by("-pk")[0].text

    desk.post(f"{address}delete/")
    assert kitchen_of(job).hardware.hinges == ()
    assert "took out hinge H-1" in Revision.objects.order_by("-pk")[0].text


@pytest.mark.parametrize(
    ("typed", "field", "message"),
    [
        ({"code": ""}, "code", "Enter the code, like H-1."),
        ({"usual_bore": "9 mm"}, "usual_bore", "Give one between the least and the most."),
        ({"bore_least": "9 mm"}, "bore_least", "Give the least first, then the most."),
        ({"bore_most": ""}, "bore_most", "or none of it."),
        ({"overlays": "1/2"}, "overlays", "or its fixed distance with plates and B."),
        ({"angle": "400"}, "angle", "Enter a number from 1 to 270, in °."),
        ({"angle": "wide"}, "angle", "is not a number"),
        ({"plates": "0, , 3"}, "plates", "Nothing stands at place 2"),
        ({"mount": "sideways"}, "mount", "Choose one from the list."),
    ],
)
def test_a_fault_stands_at_its_field(
    typed: dict[str, str], field: str, message: str, desk: Client
) -> None:
    """Nothing is kept, and what was typed stays."""
    answer = desk.post("/shop/hardware/hinges/new/", HINGE | typed)

    assert answer.status_code == 422
    assert message in dom(answer).one(f"#item-new-{field}_error").words
    assert not HingeItem.objects.exists()


def test_a_code_stands_once_on_a_list(desk: Client) -> None:
    """The second is refused at its field."""
    assert entered(desk, "handles", KNOB | {"code": "K"}) == 302

    assert entered(desk, "handles", KNOB | {"code": "K"}) == 422
    assert entered(desk, "hinges", HINGE | {"code": "K"}) == 302


def test_items_are_put_in_the_order_of_preference(desk: Client, shop: Shop) -> None:
    """Earlier and later; the first stays first."""
    items = [HandleItem(code) for code in "ABC"]
    items_set(owner=shop, kind=HandleItem, items=items, at=NOW)
    page = dom(desk.get("/shop/hardware/"))
    moves = [each for each in page.all("#handles form") if "/move/" in each.attribute("action")]

    for place, to, order in ((2, "up", "ACB"), (0, "down", "CAB"), (2, "up", "CAB")):
        desk.post(moves[place].attribute("action"), {"to": to})
        assert "".join(codes(desk, "/shop/hardware/", "handles")) == order


def test_a_job_has_a_list_of_its_own_or_the_shops(desk: Client, shop: Shop, job: Job) -> None:
    """It begins as the shop's; from then on each goes its own way, until the shop's is taken."""
    items_set(owner=shop, kind=HandleItem, items=[HandleItem("K")], at=NOW)
    here = f"/jobs/{job.pk}/hardware/"
    assert codes(desk, here, "handles") == ["K"]
    assert desk.get(f"{here}handles/new/").status_code == 404

    desk.post(f"{here}own/")
    assert entered(desk, "handles", KNOB | {"code": "P", "centres": "3"}, at=here) == 302
    assert codes(desk, here, "handles") == ["K", "P"]
    assert codes(desk, "/shop/hardware/", "handles") == ["K"]
    assert kitchen_of(job).hardware.handles[1].centres == inches(3)

    desk.post(f"{here}clear/")
    assert codes(desk, here, "handles") == ["K"]
    assert not HardwareList.objects.filter(job=job).exists()


def test_what_was_done_is_undone(desk: Client, job: Job) -> None:
    """A list that a job was given goes again by Undo."""
    desk.post(f"/jobs/{job.pk}/hardware/own/")
    bar = dom(desk.get(f"/jobs/{job.pk}/hardware/"))
    undo = next(each for each in bar.all("form") if "undo" in each.attribute("action"))
    sent = {each.attribute("name"): each.value for each in undo.all("input[type=hidden]")}

    desk.post(undo.attribute("action"), sent)

    assert not HardwareList.objects.filter(job=job).exists()


def test_another_shops_items_do_not_exist(
    desk: Client, stranger: Person, job: Job, signed_in: SignIn
) -> None:
    """Neither of the shop nor of a job of it."""
    assert entered(desk, "handles", KNOB | {"code": "K"}) == 302
    theirs = signed_in(stranger)
    key = dom(desk.get("/shop/hardware/")).one("#handles .does a").attribute("href").split("/")[-2]

    for way in ("", "delete/", "move/"):
        assert theirs.post(f"/shop/hardware/handles/{key}/{way}").status_code == 404
    assert theirs.get(f"/jobs/{job.pk}/hardware/").status_code == 404
    assert desk.post(f"/jobs/{job.pk}/hardware/handles/{key}/delete/").status_code == 404
    assert stranger.shop is not None
    assert kitchen_of(JobFactory.create(shop=stranger.shop)).hardware.handles == ()


def test_who_may_not_change_the_shops_ways_sees_no_list(
    installer: Person, signed_in: SignIn, job: Job
) -> None:
    """The shop's is for who may change its ways, a job's for who may change its kitchen."""
    client = signed_in(installer)

    assert client.get("/shop/hardware/").status_code == 403
    assert client.get(f"/jobs/{job.pk}/hardware/").status_code == 403
    assert client.post("/shop/hardware/hinges/usual/").status_code == 403
