"""The list of what the shop buys, its offers and suppliers."""

from decimal import Decimal

import pytest
from django.test import Client

from fronts.models import Goods, Offer, Supplier
from fronts.rules.items import HandleItem, HingeItem, Span
from fronts.rules.lengths import Mm
from fronts.services.hardware import item_add, item_change
from fronts.services.history import revision_undo
from shopjobs.models import Job, Person, Revision, Shop
from tests.dom import dom
from tests.factories import NOW
from tests.pages.suppliers.offered import offer, supplier, typed

WAY = "/shop/suppliers/"
NEW = f"{WAY}offers/new/"


def hinge(code: str) -> HingeItem:
    """A hinge on a plate 3 mm high."""
    return HingeItem(
        code, "overlay", fixed_distance=Mm(11), plates=(Mm(3),), bore=Span(Mm(3), Mm(7))
    )


def words(client: Client, way: str = WAY) -> str:
    """All that a page says."""
    said: str = dom(client.get(way)).one("main").words
    return said


def listed(client: Client, way: str) -> list[str]:
    """The items that a page lists."""
    return [cell.words for cell in dom(client.get(way)).all(".offers tbody .what")]


def test_every_item_of_the_shops_list_is_there(desk: Client, shop: Shop) -> None:
    """Whether somebody sells it or not, under its group."""
    item_add(owner=shop, item=HandleItem("K-1", "turned knob"), at=NOW)
    item_add(owner=shop, item=hinge("H-1"), at=NOW)
    offer(shop, "hinge plate 3 mm for H-1", code="41-3", pack=Decimal(50), least=2)

    page = dom(desk.get(WAY)).one("main")

    lines = [" ".join(row.words.split()) for row in page.all(".offers tbody tr")]
    assert lines[0].startswith("hinge H-1 no supplier yet Add an offer")
    assert lines[1].startswith(
        "hinge plate 3 mm for H-1 Kestrel Lane Fittings preferred 41-3 50 pieces "
        "at least 2 packs 12.50 USD"
    )
    assert lines[2].startswith("knob or pull K-1 turned knob no supplier yet")


def test_the_list_is_searched(desk: Client, shop: Shop) -> None:
    """By item, supplier and code; or for what nobody sells."""
    item_add(owner=shop, item=HandleItem("K-1"), at=NOW)
    offer(shop, "bumper", "Pennyroyal", code="CB-8")

    assert listed(desk, f"{WAY}?q=penny+cb-8") == ["bumper"]
    assert listed(desk, f"{WAY}?bare=on") == ["knob or pull K-1"]
    assert "Nothing that you buy is like that" in words(desk, f"{WAY}?q=%00zebra")


def test_an_offer_is_entered_at_its_item(desk: Client, shop: Shop) -> None:
    """With whatever marks a price is typed; the first offer of an item is preferred."""
    row = supplier(shop)
    form = dom(desk.get(f"{NEW}?item=hinge+H-1")).one("#offer-new")
    assert form.one("[name=item]").value == "hinge H-1"

    sent = typed(item="hinge  H-1", supplier=row.pk, price="€ 1.234,50", currency="EUR", code="7")
    answer = desk.post(NEW, sent)

    made = Offer.objects.get()
    assert answer.status_code == 302
    assert answer["Location"] == f"{WAY}#offer-{made.pk}"
    assert (made.goods.name, made.price, made.currency) == ("hinge H-1", Decimal("1234.5"), "EUR")
    assert "1234.50 EUR" in words(desk)


@pytest.mark.parametrize(
    ("field", "value", "told"),
    [
        ("item", "", "Enter the item"),
        ("item", "x" * 201, "Keep it to 200"),
        ("item", "a\0b", "can’t be kept"),
        ("supplier", "", "Choose the supplier"),
        ("supplier", "999999999999999999999", "Choose one"),
        ("price", "", "Enter the price"),
        ("price", "1,234", "1234 or 1.234"),
        ("price", "12.505", "USD has at most 2 decimals"),
        ("price", "€5", "EUR stands beside the price"),
        ("price", "9" * 29, "too much"),
        ("pack", "0", "more than nothing"),
        ("pack", "2.5", "counted whole"),
        ("pack", "many", "a number like 12.50"),
        ("unit", "barrel", "Choose one"),
        ("currency", "XXX", "Choose one"),
        ("lead_days", "soon", "whole working days"),
        ("lead_days", "9999999999999999999999", "at most"),
        ("least", "0", "1 or more"),
        ("note", "n" * 401, "Keep it to 400"),
    ],
)
def test_what_cannot_be_is_said_at_its_field(
    field: str, value: str, told: str, desk: Client, shop: Shop
) -> None:
    """What was typed stays, and nothing is entered."""
    sent = typed(item="bumper", supplier=supplier(shop).pk) | {field: value}

    answer = desk.post(NEW, sent)

    form = dom(answer).one("#offer-new")
    assert answer.status_code == 422
    assert told.casefold() in form.words.casefold()
    assert not Offer.objects.exists()
    if field == "price":
        assert form.one("[name=price]").value == value


def test_an_offer_is_not_there_twice(desk: Client, shop: Shop) -> None:
    """Of one supplier, under one code; another pack has another code."""
    held = offer(shop, "bumper", code="CB")

    answer = desk.post(NEW, typed(item="Bumper", supplier=held.supplier_id, code="CB"))

    assert answer.status_code == 422
    assert "change that one" in dom(answer).one("main").words
    assert Goods.objects.count() == 1
    other = typed(item="bumper", supplier=held.supplier_id, code="CB-100")
    assert desk.post(NEW, other).status_code == 302


def preferred(shop: Shop, item: str) -> str:
    """Whose offer is taken."""
    offers = Offer.objects.filter(goods__shop=shop, goods__name=item).order_by("place")
    return offers[0].supplier.name


def test_exactly_one_offer_is_preferred(desk: Client, shop: Shop) -> None:
    """The first one; another once it is preferred; the next one where that goes."""
    first, second = offer(shop, "bumper", "Ash"), offer(shop, "bumper", "Birch")
    assert preferred(shop, "bumper") == "Ash"

    desk.post(f"{WAY}offers/{second.pk}/prefer/")
    assert preferred(shop, "bumper") == "Birch"

    way = f"{WAY}offers/{second.pk}/"
    seen = dom(desk.get(way)).one("[name=seen]").value
    desk.post(way, typed(supplier=second.supplier_id, price="9", seen=seen))
    assert preferred(shop, "bumper") == "Ash"

    desk.post(f"{WAY}offers/{first.pk}/delete/")
    assert preferred(shop, "bumper") == "Birch"
    desk.post(f"{WAY}offers/{second.pk}/delete/")
    assert not Goods.objects.exists()


def test_what_a_supplier_alone_sells_goes_along(desk: Client, owner: Person, shop: Shop) -> None:
    """It is not proposed any more for a new offer; Undo brings it back."""
    row = offer(shop, "beeswax", "Ash").supplier
    for name in ("Ash", "Birch"):
        offer(shop, "bumper", name)

    desk.post(f"{WAY}{row.pk}/delete/")

    known = [each.attribute("value") for each in dom(desk.get(NEW)).all("#items option")]
    assert "beeswax" not in known
    assert "bumper" in known
    revision_undo(revision=Revision.objects.latest("pk"), by=owner, at=NOW)
    assert preferred(shop, "beeswax") == preferred(shop, "bumper") == "Ash"


def test_two_people_change_one_offer(desk: Client, shop: Shop) -> None:
    """What each changed goes together; where both changed the price, both are shown."""
    row = offer(shop, "bumper")
    way = f"{WAY}offers/{row.pk}/"
    seen = dom(desk.get(way)).one("[name=seen]").value
    desk.post(way, typed(supplier=row.supplier_id, price="14", seen=seen, pack="1", preferred="on"))

    sent = typed(supplier=row.supplier_id, price="12.50", code="77", pack="1", preferred="on")
    assert desk.post(way, sent | {"seen": seen}).status_code == 302
    row.refresh_from_db()
    assert (row.price, row.code) == (Decimal(14), "77")

    answer = desk.post(way, sent | {"seen": seen, "price": "15"})
    assert answer.status_code == 409
    assert "14.00" in dom(answer).one("main").words


def test_a_supplier_goes_with_its_offers_and_comes_back(desk: Client, shop: Shop) -> None:
    """In one step, by the office itself."""
    row = offer(shop, "bumper")

    desk.post(f"{WAY}{row.supplier_id}/delete/")
    assert not Supplier.objects.exists()
    assert not Offer.objects.exists()

    undo = dom(desk.get(WAY)).one(".undo-bar form")
    sent = {each.attribute("name"): each.value for each in undo.all("input")}
    assert desk.post("/shop/undo/", sent).status_code == 302
    assert Offer.objects.get().supplier.name == "Kestrel Lane Fittings"


@pytest.mark.parametrize(
    ("sent", "told"),
    [
        ({"name": ""}, "Enter the name"),
        ({"name": "kestrel lane  fittings"}, "already a supplier"),
        ({"name": "Ash", "email": "nowhere"}, "office@firm.example"),
        ({"name": "Ash", "lead_days": "-1"}, "0 or more"),
        ({"name": "a\0b"}, "can’t be kept"),
    ],
)
def test_a_supplier_that_cannot_be(
    sent: dict[str, str], told: str, desk: Client, shop: Shop
) -> None:
    """A name once a shop, whatever its capitals and spaces."""
    supplier(shop)

    answer = desk.post(f"{WAY}new/", sent)

    assert answer.status_code == 422
    assert told in dom(answer).one("main").words
    assert Supplier.objects.count() == 1


def test_days_are_the_offers_own_or_the_suppliers(desk: Client, shop: Shop) -> None:
    """Empty: as usual with them."""
    supplier(shop, lead_days=7)
    offer(shop, "bumper")
    offer(shop, "hinge screw", lead_days=0)

    days = [cell.words for cell in dom(desk.get(WAY)).all("[data-head='Working days']")]

    assert days == ["0", "7"]


def test_another_code_carries_the_offers_along(owner: Person, shop: Shop) -> None:
    """Of the item, and of what goes with it; what had the name before joins them. Undone as one."""
    row = item_add(owner=shop, item=hinge("H-1"), at=NOW)
    for name in ("hinge H-1", "hinge plate 3 mm for H-1", "hinge H-10"):
        offer(shop, name)
    offer(shop, "hinge H-2", "Birch")
    before = sorted(Offer.objects.values_list("pk", "goods__name", "place"))

    item_change(row=row, item=hinge("H-2"), at=NOW)

    names = sorted(Goods.objects.values_list("name", flat=True))
    assert names == ["hinge H-10", "hinge H-2", "hinge plate 3 mm for H-2"]
    assert preferred(shop, "hinge H-2") == "Kestrel Lane Fittings"
    assert Offer.objects.filter(goods__name="hinge H-2").count() == 2
    revision_undo(revision=Revision.objects.latest("pk"), by=owner, at=NOW)
    assert sorted(Offer.objects.values_list("pk", "goods__name", "place")) == before


def test_prices_are_no_change_of_a_kitchen(desk: Client, shop: Shop, job: Job) -> None:
    """What was printed and checked holds."""
    before = job.revision

    offer(shop, "bumper")

    job.refresh_from_db()
    assert job.revision == before
    assert (
        Revision.objects.latest("pk").text == "Entered an offer: bumper from Kestrel Lane Fittings"
    )


def test_the_usual_currency(desk: Client, shop: Shop) -> None:
    """Dollars in a shop that works in inches, until it says otherwise."""
    assert dom(desk.get(NEW)).all("form select[name=currency]") == []
    supplier(shop)
    assert desk.post(WAY, {"code": "CAD"}).status_code == 302
    assert dom(desk.get(NEW)).one("[name=currency]").value == "CAD"
    assert desk.post(WAY, {"code": "shells"}).status_code == 422
