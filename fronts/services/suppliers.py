"""Suppliers of a shop, and the currency that it usually pays in."""

from collections.abc import Mapping
from datetime import datetime

from django.core.exceptions import ValidationError

from fronts.models import Offer, Supplier, UsualCurrency
from fronts.rules.offers import MOST_SUPPLIERS
from fronts.services.offers import goods_let_go
from fronts.services.saving import checked, enter, saved, shop_told
from shopjobs.models import Person, Shop
from shopjobs.services.recording import deleted, recorded
from shopjobs.services.refused import refuse_twice


@recorded
def supplier_save(
    *,
    shop: Shop,
    facts: Mapping[str, object],
    row: Supplier | None = None,
    at: datetime,
    by: Person | None = None,
) -> Supplier:
    """Enter a supplier, or change what is known of one, by the names of its columns."""
    row = supplier_entered(shop, facts, row)
    shop_told(shop=shop, text=f"Entered the supplier {row.name}", by=by, at=at)
    return row


def supplier_entered(
    shop: Shop, facts: Mapping[str, object], row: Supplier | None = None
) -> Supplier:
    """The same as part of another service, which tells what it does."""
    others = Supplier.objects.filter(shop=shop)
    row = row or Supplier(shop=shop)
    if row._state.adding and others.count() >= MOST_SUPPLIERS:
        raise ValidationError({"name": f"a shop keeps at most {MOST_SUPPLIERS} suppliers"})
    enter(row, facts)
    names = others.exclude(pk=row.pk).values_list("name", flat=True)
    taken = f"there is already a supplier called {row.name}"
    is_taken = any(name.casefold() == row.name.casefold() for name in names)
    checked(row, {"name": taken} if is_taken else None)
    with refuse_twice(f"{taken}.", field="name"):
        return saved(row)


@recorded
def supplier_delete(*, row: Supplier, at: datetime, by: Person | None = None) -> int:
    """Take a supplier out with all offers; how many these were."""
    goods = list(Offer.objects.filter(supplier=row).values_list("goods", flat=True))
    shop, name, count = row.shop, row.name, len(goods)
    deleted([row])
    goods_let_go(goods)
    with_offers = f" and {count} offer{'' if count == 1 else 's'}" if count else ""
    shop_told(shop=shop, text=f"Took out the supplier {name}{with_offers}", by=by, at=at)
    return count


@recorded
def usual_currency_set(
    *, shop: Shop, code: str, at: datetime, by: Person | None = None
) -> UsualCurrency:
    """Say what the shop usually pays in; prices that there are keep their own."""
    row = UsualCurrency.objects.filter(shop=shop).first() or UsualCurrency(shop=shop)
    enter(row, {"code": code})
    checked(row)
    saved(row)
    shop_told(shop=shop, text=f"Usual currency: {code}", by=by, at=at)
    return row
