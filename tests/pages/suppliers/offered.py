"""A supplier with an offer, for tests that need some."""

from decimal import Decimal
from typing import Any

from fronts.models import Offer, Supplier
from fronts.rules.money import Price
from fronts.rules.offers import OfferFacts
from fronts.services.offers import offer_add
from fronts.services.suppliers import supplier_save
from shopjobs.models import Shop
from tests.factories import NOW


def supplier(shop: Shop, name: str = "Kestrel Lane Fittings", **facts: Any) -> Supplier:
    """A supplier of the shop, the one of this name where there is one."""
    held = Supplier.objects.filter(shop=shop, name=name).first()
    return held or supplier_save(shop=shop, facts={"name": name, **facts}, at=NOW)


def offer(
    shop: Shop, item: str, seller: str = "Kestrel Lane Fittings", price: str = "12.50", **facts: Any
) -> Offer:
    """What somebody asks for an item, in dollars."""
    preferred = facts.pop("preferred", False)
    asked = OfferFacts(price=Price(Decimal(price), facts.pop("currency", "USD")), **facts)
    return offer_add(
        shop=shop, item=item, supplier=supplier(shop, seller), facts=asked, preferred=preferred,
        at=NOW,
    )  # fmt: skip


def typed(**fields: Any) -> dict[str, Any]:
    """An offer as it is typed in its form."""
    usual = {"pack": "10", "unit": "piece", "price": "12.50", "currency": "USD", "least": "1"}
    return usual | fields
