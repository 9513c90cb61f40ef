"""The short pages of the shop's standard: saved, refused, merged."""

from collections.abc import Callable
from fractions import Fraction

import pytest
from django.test import Client

from fronts.models import ShopNumber, ShopStandard
from fronts.rules.practice import PRACTICE, inches
from fronts.rules.standard_keys import Sides
from fronts.services.history import revision_undo
from fronts.snapshot.standards import standard_of
from fronts.snapshot.stock import practice_in_force
from shopjobs.models import Job, Person, Revision
from tests.dom import dom
from tests.factories import NOW, CabinetFactory, OpeningFactory
from tests.pages.kitchens import HALF
from tests.pages.standard.short_pages import address_of, own_seen, page_with, post_own

SignIn = Callable[[Person], Client]
SIDES = ("left", "right", "top", "bottom")


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """A browser in which the owner is signed in."""
    return signed_in(owner)


def test_the_shops_standard_holds_for_its_jobs(job: Job, desk: Client) -> None:
    """The owner says once how far fronts lap; every job follows."""
    OpeningFactory.create(cabinet=CabinetFactory.create(job=job))
    own = {f"overlay_{side}": "1/2" for side in SIDES}

    answer = post_own(desk, own)

    assert answer.status_code == 302
    assert standard_of(ShopStandard.objects.get()).overlay == Sides(*[HALF] * 4)
    assert "16" in dom(desk.get(f"/jobs/{job.pk}/")).one("table.fronts").words


def test_every_number_has_its_words_and_its_source(desk: Client) -> None:
    """A number shows what it is, where the usual one is from, and the usual one greyed."""
    page = page_with(desk, "screw_diameter")

    assert "Diameter of a mounting screw" in page.words
    assert "ASME B18.6.1" in page.words
    assert page.field("screw_diameter").placeholder == "0.164"
    assert page_with(desk, "spares").field("spares").placeholder == "5"


def test_numbers_stand_in_the_shops_units(desk: Client) -> None:
    """Loads in lb/ft², degrees Fahrenheit and decimal inches where a shop works in inches."""
    assert page_with(desk, "drawer_load").field("drawer_load").placeholder == "15"
    assert page_with(desk, "site_celsius").field("site_celsius").placeholder == "69.8"
    assert "Plywood, common practice" in page_with(desk, "solid_panels").words


def test_numbers_in_the_shops_units_come_back_as_typed(owner: Person, desk: Client) -> None:
    """What is typed in lb/ft² and °F is kept in metric units, and shown as it was typed."""
    for name, typed in (("drawer_load", "20"), ("site_celsius", "70"), ("solid_panels", "1")):
        assert post_own(desk, {name: typed}).status_code == 302

    assert owner.shop is not None
    held = practice_in_force(owner.shop)
    # 1 lb/ft² is 4.88243 kg/m² (NIST SP 811, appendix B.8)
    assert abs(held.drawer_load - 20 * Fraction("4.88243e-6")) < Fraction(1, 10**9)
    assert (round(held.site_celsius, 2), held.solid_panels) == (Fraction("21.11"), Fraction(1))
    held_now = [page_with(desk, name).field(name).value for name in ("drawer_load", "site_celsius")]
    assert held_now == ["20", "70"]
    chosen = page_with(desk, "solid_panels").field("solid_panels").one("option[selected]")
    assert (chosen.attribute("value"), chosen.words) == ("1", "Solid wood")


def test_a_number_is_set_and_let_go(owner: Person, desk: Client) -> None:
    """A number of the shop's own replaces the usual one until it is emptied."""
    post_own(desk, {"wide_drawer": "27"})
    post_own(desk, {"spares": "7.5"})

    assert owner.shop is not None
    held = practice_in_force(owner.shop)
    assert (held.wide_drawer, held.spares) == (inches(27), Fraction("7.5"))
    post_own(desk, {}, "wide_drawer")
    post_own(desk, {}, "spares")
    assert not ShopNumber.objects.exists()


@pytest.mark.parametrize(
    ("name", "typed", "message"),
    [
        ("spares", "lots", "is not a number"),
        ("spares", "1e9", "is not a number"),
        ("spares", "101", "Enter a number from 0 to 100."),
        ("spares", "1/0", "is not a number"),
        ("hole_diameter", "0", "is nothing"),
        ("humidity_low", "60", "Enter at least the driest month"),
    ],
)
def test_a_number_out_of_reason_is_refused(
    name: str, typed: str, message: str, desk: Client
) -> None:
    """The message stands at the number, and none is kept."""
    answer = post_own(desk, {name: typed})

    assert answer.status_code == 422
    assert message in dom(answer).words
    assert not ShopNumber.objects.exists()


def test_tables_are_typed_row_by_row(owner: Person, desk: Client) -> None:
    """Heights in the shop's unit and weights in pounds come back as they were typed."""
    hinges = {"hinges_by_height": "36: 2\n72: 3", "hinges_by_weight": "12.25 lb: 2"}
    assert post_own(desk, hinges).status_code == 302
    assert post_own(desk, {"slide_classes": "75, 100 lb"}).status_code == 302
    words = {"material": "birch plywood", "frame_material": ""}
    assert post_own(desk, words).status_code == 302

    assert owner.shop is not None
    held = practice_in_force(owner.shop, ShopStandard.objects.get())
    assert held.hinges_by_height == ((inches(36), 2), (inches(72), 3))
    assert (len(held.slide_classes), held.material) == (2, "birch plywood")
    assert held.frame_material == PRACTICE.frame_material
    page = page_with(desk, "hinges_by_weight")
    assert page.field("hinges_by_weight").value == "12.25 lb: 2"
    assert page.field("hinges_by_height").value == "36: 2\n72: 3"


@pytest.mark.parametrize(
    ("typed", "message"),
    [
        ({"hinges_by_height": "36 2"}, "enter a size, a colon and how many hinges"),
        ({"hinges_by_height": "36: 3\n72: 2"}, "must be more than the one before it"),
        ({"hinges_by_weight": "heavy: 2"}, "is not a weight"),
        ({"slide_classes": "100, 75"}, "each above the last"),
    ],
)
def test_a_table_that_goes_down_is_refused(
    typed: dict[str, str], message: str, desk: Client
) -> None:
    """Tables grow from row to row; what doesn't is said at the table."""
    answer = post_own(desk, typed)

    assert answer.status_code == 422
    assert message in dom(answer).words
    assert not ShopStandard.objects.exists()


@pytest.mark.parametrize("username", ["otto", "ines"])
def test_the_shops_habits_are_the_owners(
    username: str, owner: Person, office: Person, installer: Person, signed_in: SignIn
) -> None:
    """Office and installer neither see nor change the shop's standard."""
    client = signed_in(Person.objects.get(username=username))

    for address in ("/shop/standard/", "/shop/standard/gaps/", "/shop/standard/gaps/drawing/"):
        assert client.get(address).status_code == 403
    assert client.post("/shop/standard/gaps/", {"least_gap": "1/8"}).status_code == 403


def test_two_owners_do_not_overwrite_each_other_unseen(desk: Client) -> None:
    """What both changed of the shop's ways is said before it is kept."""
    seen, address = own_seen(desk, "least_gap"), address_of("least_gap")
    desk.post(address, {"least_gap": "1/8", "seen": seen})

    answer = desk.post(address, {"least_gap": "1/4", "seen": seen})

    assert answer.status_code == 409
    assert "ada, at " in dom(answer).words.lower()
    assert "made this “1/8” while you were typing; yours is “1/4”." in dom(answer).words
    assert standard_of(ShopStandard.objects.get()).least_gap == inches(1, 8)


@pytest.mark.parametrize("name", ["least_gap", "spares", "material"])
def test_a_form_that_says_not_what_it_saw_changes_nothing(name: str, desk: Client) -> None:
    """Without a word of what was there, nobody's values are put aside unseen."""
    typed = {"least_gap": "1/8", "spares": "7.5", "material": "birch plywood"}
    answer = desk.post(address_of(name), {name: typed[name]})

    assert answer.status_code == 409
    assert "Save again to put yours in its place." in dom(answer).words
    assert not ShopStandard.objects.exists()
    assert not ShopNumber.objects.exists()


def test_what_another_page_says_stays(desk: Client) -> None:
    """A page that is saved lets go of nothing that stands on another one."""
    post_own(desk, {"least_gap": "1/8"})
    post_own(desk, {"slide_classes": "75, 100 lb"})
    post_own(desk, {"hinge_end": "4"})

    standard = standard_of(ShopStandard.objects.get())
    assert (standard.least_gap, standard.hinge_end) == (inches(1, 8), inches(4))
    assert ShopStandard.objects.get().slide_classes is not None


def test_a_page_is_one_step_of_history(desk: Client, owner: Person) -> None:
    """Its standard, numbers and tables are told as one change, and undone as one."""
    typed = {"hinge_end": "4", "cup_from_edge": "23 mm", "hinges_by_height": "36: 2\n72: 3"}
    before = Revision.objects.count()
    post_own(desk, typed)

    (revision,) = Revision.objects.order_by("pk")[before:]
    assert revision.text == "Changed the shop's standard: Hinges"
    revision_undo(revision=revision, at=NOW, by=owner)

    page = page_with(desk, "hinge_end")
    assert [page.field(name).value for name in typed] == ["", "", ""]
