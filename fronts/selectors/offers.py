"""Suppliers of a shop, what they ask, and what the shop buys."""

from fronts.models import Goods, Offer, Supplier, UsualCurrency
from fronts.rules.buying_names import items_by_name
from fronts.rules.money import USUAL_CURRENCY
from fronts.snapshot.hardware import hardware_in_force
from shopjobs.models import Shop


def suppliers_of(shop: Shop) -> list[Supplier]:
    """The shop's suppliers by their names."""
    return sorted(Supplier.objects.filter(shop=shop), key=lambda row: (row.name.casefold(), row.pk))


def supplier_of(shop: Shop, key: int) -> Supplier:
    """One supplier of the shop; another's does not exist."""
    supplier = Supplier.objects.get(shop=shop, pk=key)
    supplier.shop = shop
    return supplier


def offers_of(shop: Shop) -> list[Offer]:
    """All offers, by what they are of; of each thing the preferred one first."""
    rows = Offer.objects.filter(goods__shop=shop).select_related("goods", "supplier")
    return list(rows.order_by("goods__name", "place", "pk"))


def offer_of(shop: Shop, key: int) -> Offer:
    """One offer to the shop; another's does not exist."""
    rows = Offer.objects.filter(goods__shop=shop).select_related("goods", "supplier")
    offer = rows.get(pk=key)
    offer.goods.shop = offer.supplier.shop = shop
    return offer


def offers_by_name(shop: Shop) -> dict[str, list[Offer]]:
    """The offers of each thing by its buying name, the preferred one first."""
    found: dict[str, list[Offer]] = {}
    for offer in offers_of(shop):
        found.setdefault(offer.goods.name, []).append(offer)
    return found


def is_preferred(offer: Offer) -> bool:
    """Whether it is the one that is taken."""
    return not Offer.objects.filter(goods=offer.goods_id, place__lt=offer.place).exists()


def usual_currency(shop: Shop) -> str:
    """In what the shop is asked for most things."""
    row = UsualCurrency.objects.filter(shop=shop).first()
    return USUAL_CURRENCY[shop.unit] if row is None else row.code


def listed_items(shop: Shop) -> dict[str, str]:
    """What the items of the shop's list are called, by what they are bought as, in its order."""
    return items_by_name(hardware_in_force(shop))


def known_names(shop: Shop) -> list[str]:
    """All that is on the shop's list or that somebody offers."""
    offered = Goods.objects.filter(shop=shop).order_by("name").values_list("name", flat=True)
    return list(dict.fromkeys([*listed_items(shop), *offered]))
