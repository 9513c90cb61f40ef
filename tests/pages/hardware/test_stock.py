"""The shop's screws: shown and changed on the page of its hardware, and nowhere else."""

from collections.abc import Callable

import pytest
from django.test import Client

from fronts.models import Stock
from fronts.rules.practice import inches
from fronts.services.shop_start import shop_start
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person, Shop
from tests.dom import dom
from tests.factories import NOW
from tests.pages.kitchens import STOCK, seen_in

SignIn = Callable[[Person], Client]
HERE = "/shop/hardware/stock/"


@pytest.fixture
def desk(owner: Person, signed_in: SignIn) -> Client:
    """A browser in which the owner is signed in."""
    return signed_in(owner)


def test_the_owner_finds_screws_beside_the_other_hardware(desk: Client, job: Job) -> None:
    """What is typed is what the rules get."""
    page = dom(desk.get("/shop/hardware/")).one("#screws")
    assert "Mounting screws, #8 washer-head 3/4, 1, 1 1/4, 1 1/2" in page.words
    csv = ["/shop/hardware/stock/stock.csv", "/shop/hardware/stock/file/"]
    assert [each.attribute("href") for each in page.all("a")] == [HERE, *csv]

    typed = {**STOCK, "screw_lengths": "1, 1 5/8", "knob_thread": "M4"}
    assert desk.post(HERE, seen_in(dom(desk.get(HERE))) | typed).status_code == 302

    assert kitchen_of(job).stock.screw_lengths == (inches(1), inches(13, 8))
    assert "Knob screws, M4" in dom(desk.get("/shop/hardware/")).words


def test_a_metric_shop_has_screws_of_its_own(desk: Client, shop: Shop) -> None:
    """Of 4 mm, in whole millimetres."""
    shop.unit = "mm"
    shop.save()
    shop_start(shop=shop, at=NOW)

    words = dom(desk.get("/shop/hardware/")).one("#screws").words

    assert "Mounting screws, M4 washer-head 20, 25, 30, 35, 40" in words
    assert "#8" not in words


def test_what_is_wrong_is_said_at_the_field(desk: Client) -> None:
    """And what was typed stays."""
    typed = {**STOCK, "screw_lengths": "1, x", "knob_thread": "fine"}

    answer = desk.post(HERE, seen_in(dom(desk.get(HERE))) | typed)

    assert answer.status_code == 422
    assert dom(answer).field("screw_lengths").value == "1, x"
    assert not Stock.objects.exists()


def test_a_form_that_says_not_what_it_saw_changes_nothing(desk: Client) -> None:
    """Without a word of what was there, nobody's values are put aside unseen."""
    assert desk.post(HERE, STOCK).status_code == 409
    assert not Stock.objects.exists()


def test_only_who_keeps_the_standard_changes_them(installer: Person, signed_in: SignIn) -> None:
    """The page is not an installer's."""
    assert signed_in(installer).get(HERE).status_code in (403, 404)
