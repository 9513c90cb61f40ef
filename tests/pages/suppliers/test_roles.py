"""Who sees prices: the owner and the office of the shop, nobody else; by values."""

from collections.abc import Callable

import pytest
from django.test import Client

from fronts.models import Offer, Supplier
from fronts.services.saved_faces import face_save
from shopjobs.models import Job, Person, Revision, Shop
from tests.every_page import every_page
from tests.factories import NOW
from tests.pages.kitchens import furnish
from tests.pages.suppliers.offered import offer, supplier, typed

SignIn = Callable[[Person], Client]
WAY = "/shop/suppliers/"
PRICE = "7318.47"
NAME = "Quillfeather Supply"
FILES = ("prices.csv", "prices.xlsx", "file/", "new/", "offers/new/")


@pytest.mark.parametrize("way", ["", *FILES])
def test_the_installer_sees_no_prices(way: str, installer: Person, signed_in: SignIn) -> None:
    """Neither on pages nor in files."""
    assert signed_in(installer).get(f"{WAY}{way}").status_code == 403


def test_no_page_of_the_installer_shows_a_price(
    shop: Shop, job: Job, owner: Person, installer: Person, signed_in: SignIn
) -> None:
    """Not one, of all that there are; nor a supplier's name."""
    furnish(job)
    offer(shop, "bumper", NAME, PRICE)

    shown = [
        name
        for name, _, answer in every_page(signed_in(installer), job, owner)
        if PRICE in answer.text or NAME in answer.text
    ]

    assert shown == []
    assert PRICE in signed_in(owner).get(WAY).text


@pytest.mark.parametrize("way", ["prefer/", "delete/", ""])
def test_another_shops_offer_does_not_exist(
    way: str, shop: Shop, stranger: Person, signed_in: SignIn
) -> None:
    """It is neither shown nor changed, and its supplier can't be chosen."""
    row = offer(shop, "bumper", NAME, PRICE)
    client = signed_in(stranger)

    assert client.post(f"{WAY}offers/{row.pk}/{way}", typed()).status_code == 404
    assert client.post(f"{WAY}{row.supplier_id}/{way}", {"name": "x"}).status_code == 404
    assert Offer.objects.get().price == row.price


def test_no_page_shows_another_shops_offers(
    shop: Shop, stranger: Person, signed_in: SignIn
) -> None:
    """Not in the list, a file or a form."""
    offer(shop, "bumper", NAME, PRICE)
    assert stranger.shop is not None
    supplier(stranger.shop, "Birch")
    client = signed_in(stranger)

    for way in ("", *FILES, "?q=bumper"):
        content = client.get(f"{WAY}{way}").content.decode("utf-8", "replace")
        assert PRICE not in content
        assert NAME not in content
    foreign = Supplier.objects.get(shop=shop)
    sent = typed(item="bumper", supplier=foreign.pk)
    assert client.post(f"{WAY}offers/new/", sent).status_code == 422


def test_the_office_takes_back_what_it_did_and_no_more(
    shop: Shop, owner: Person, office: Person, signed_in: SignIn
) -> None:
    """Prices are its own to change; the shop's ways are the owner's."""
    face_save(shop=shop, name="sink base", words="tip-out 6 over pair", by=owner, at=NOW)
    ways = Revision.objects.latest("pk")
    offer(shop, "bumper")
    client = signed_in(office)

    assert client.post("/shop/undo/", {"revision": ways.pk, "back": WAY}).status_code == 403
    assert "/shop/history/" not in client.get(WAY).text
    prices = Revision.objects.latest("pk")
    assert client.post("/shop/undo/", {"revision": prices.pk, "back": WAY}).status_code == 302
    assert not Offer.objects.exists()
