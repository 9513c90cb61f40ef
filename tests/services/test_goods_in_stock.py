"""What is in stock stays, whoever sells it no longer, and whatever it is called."""

from fronts.models import Goods, Offer
from fronts.rules.items import HandleItem, HingeItem
from fronts.services.offers import goods_renamed, offer_delete
from fronts.services.saving import shop_told
from fronts.services.suppliers import supplier_delete
from shopjobs.models import Person, Shop
from shopjobs.services.recording import recorded
from tests.factories import NOW
from tests.pages.suppliers.offered import offer
from tests.stocked import counted, there_is

ITEM = "bumper"


def test_a_thing_that_is_in_stock_stays_without_offers(shop: Shop, office: Person) -> None:
    """The last offer goes, what is on the shelf does not."""
    row = offer(shop, ITEM)
    counted(shop, office, 5)

    offer_delete(row=row, by=office, at=NOW)

    assert there_is(shop) == {"": 5}
    assert not Offer.objects.exists()
    offer(shop, "slide screw")

    supplier_delete(row=offer(shop, ITEM).supplier, by=office, at=NOW)

    assert there_is(shop) == {"": 5}
    assert not Offer.objects.exists()
    assert not Goods.objects.filter(name="slide screw").exists()


def test_stock_follows_an_item_that_has_another_code(shop: Shop, office: Person) -> None:
    """What there is of both names is one."""
    counted(shop, office, 5, "hinge A")
    counted(shop, office, 7, "hinge B")

    @recorded
    def renamed() -> None:
        goods_renamed(shop, HingeItem, "A", "B")
        goods_renamed(shop, HandleItem, "A", "B")
        shop_told(shop=shop, text="Renamed", by=office, at=NOW)

    renamed()

    assert there_is(shop, "hinge B") == {"": 12}
    assert there_is(shop, "hinge A") == {}
