"""What suppliers ask for what the shop buys: entered, changed, preferred, taken out."""

from collections.abc import Iterable, Mapping
from datetime import datetime
from decimal import Decimal

from django.core.exceptions import ValidationError
from django.db import IntegrityError, transaction
from django.db.models import Max, Min

from fronts.models import Goods, Offer, StockEntry, Supplier
from fronts.rules.buying_names import renamed
from fronts.rules.money import MOST_PRICE
from fronts.rules.offers import MOST_OFFERS, PACK_DECIMALS, OfferFacts, offer_faults
from fronts.selectors.offers import known_names
from fronts.services.saving import checked, enter, saved, shop_told
from shopjobs.models import Person, Shop
from shopjobs.services.recording import deleted, recorded
from shopjobs.services.refused import refuse_twice


@recorded
def offer_add(
    *,
    shop: Shop,
    item: str,
    supplier: Supplier,
    facts: OfferFacts,
    preferred: bool = False,
    at: datetime,
    by: Person | None = None,
) -> Offer:
    """Enter what a supplier asks for an item, by its buying name; the first is preferred."""
    known = {name.casefold(): name for name in known_names(shop)}
    offer = offer_entered(goods_called(shop, item, known), supplier, facts)
    if preferred:
        put_first(offer)
    shop_told(shop=shop, text=f"Entered an offer: {offer}", by=by, at=at)
    return offer


@recorded
def offer_change(
    *,
    row: Offer,
    supplier: Supplier,
    facts: OfferFacts,
    preferred: bool | None = None,
    at: datetime,
    by: Person | None = None,
) -> Offer:
    """Change what a supplier asks; `preferred` None leaves it in its place."""
    offer_entered(row.goods, supplier, facts, row)
    if preferred is not None:
        (put_first if preferred else put_behind)(row)
    shop_told(shop=row.goods.shop, text=f"Changed an offer: {row}", by=by, at=at)
    return row


@recorded
def offer_prefer(*, row: Offer, at: datetime, by: Person | None = None) -> Offer:
    """Let it be the one that is taken."""
    put_first(row)
    text = f"Preferred for {row.goods}: {row.supplier}"
    shop_told(shop=row.goods.shop, text=text, by=by, at=at, fine=False)
    return row


@recorded
def offer_delete(*, row: Offer, at: datetime, by: Person | None = None) -> None:
    """Take an offer out; the next one of the item is preferred then."""
    shop, goods, text = row.goods.shop, row.goods_id, f"Took out an offer: {row}"
    deleted([row])
    goods_let_go([goods])
    shop_told(shop=shop, text=text, by=by, at=at)


def goods_let_go(goods: Iterable[int]) -> None:
    """Of these, by their keys, what nobody offers is no item any more; what is in stock stays."""
    unsold = Goods.objects.filter(pk__in=goods, offers=None).order_by("pk")
    held = [row.pk for row in unsold.select_for_update(of=("self",))]
    deleted(Goods.objects.filter(pk__in=held, entries=None))


def goods_called(shop: Shop, item: str, known: Mapping[str, str]) -> Goods:
    """What the shop buys under this name, whatever its capitals; begun where there is none.

    `known` are the names that there are, by themselves without capitals.
    """
    said = " ".join(item.split())
    named = {"shop": shop, "name": known.get(said.casefold(), said)}
    goods = Goods.objects.filter(**named).first()
    if goods is None:
        goods = Goods(**named)
        try:
            checked(goods)
            with transaction.atomic():
                saved(goods)
        except ValidationError as error:
            raise ValidationError({"item": error.messages}) from error
        except IntegrityError:  # Somebody else began it at the same moment.
            goods = Goods.objects.get(**named)
    goods.shop = shop
    return goods


def offer_entered(
    goods: Goods, supplier: Supplier, facts: OfferFacts, row: Offer | None = None
) -> Offer:
    """An offer with these facts, last of its item where it is new; for a service that tells it."""
    if supplier.shop_id != goods.shop_id:
        raise ValueError("a shop's suppliers sell to that shop alone")
    offers = Offer.objects.filter(goods=goods)
    if row is None:
        if Offer.objects.filter(goods__shop=goods.shop_id).count() >= MOST_OFFERS:
            raise ValidationError(f"a shop keeps at most {MOST_OFFERS} offers; take some out first")
        last = offers.aggregate(last=Max("place"))["last"]
        row = Offer(goods=goods, place=0 if last is None else last + 1)
    enter(row, {"supplier": supplier, **columns_of_offer(facts)})
    faults = offer_faults(facts)
    taken = f"there is an offer of {supplier} for {goods} under this code; change that one"
    if offers.filter(supplier=supplier, code=facts.code).exclude(pk=row.pk).exists():
        faults["code"] = taken
    checked(row, faults)
    with refuse_twice(f"{taken}.", field="code"):
        return saved(row)


def columns_of_offer(facts: OfferFacts) -> Mapping[str, object]:
    """What an offer's columns hold, to the decimals that they keep: history compares these."""
    return {
        "code": facts.code, "pack": _kept(facts.pack), "unit": facts.unit,
        "price": _kept(facts.price.amount),
        "currency": facts.price.currency, "lead_days": facts.lead_days, "least": facts.least,
        "note": facts.note,
    }  # fmt: skip


def _kept(number: Decimal) -> Decimal:
    return number.quantize(Decimal(1).scaleb(-PACK_DECIMALS)) if number < MOST_PRICE else number


def put_first(offer: Offer) -> None:
    """Before all other offers of its item; nothing changes where it is there."""
    others = Offer.objects.filter(goods=offer.goods_id).exclude(pk=offer.pk)
    first = others.aggregate(first=Min("place"))["first"]
    if first is not None and first < offer.place:
        enter(offer, {"place": first - 1})
        saved(offer)


def put_behind(offer: Offer) -> None:
    """Behind the others, where it was the first."""
    others = Offer.objects.filter(goods=offer.goods_id).exclude(pk=offer.pk)
    last = others.aggregate(first=Min("place"), last=Max("place"))
    if last["first"] is not None and offer.place < last["first"]:
        enter(offer, {"place": last["last"] + 1})
        saved(offer)


def goods_renamed(shop: Shop, kind: type, was: str, now: str) -> None:
    """Carry the offers of an item along that has another code on the shop's list."""
    for goods in Goods.objects.filter(shop=shop):
        name = renamed(goods.name, kind, was, now)
        if name is None:
            continue
        held = Goods.objects.filter(shop=shop, name=name).first()
        if held is not None:
            _merged(goods, held)
        enter(goods, {"name": name})
        saved(goods)


def _merged(goods: Goods, other: Goods) -> None:
    """Take over the offers of what had the name before, but for those that are there already.

    What is in stock of the two is one then.
    """
    there = set(goods.offers.values_list("supplier", "code"))
    last = goods.offers.aggregate(last=Max("place"))["last"] or 0
    for step, offer in enumerate(other.offers.order_by("place"), 1):
        if (offer.supplier_id, offer.code) not in there:
            enter(offer, {"goods": goods, "place": last + step})
            saved(offer)
    for entry in StockEntry.objects.filter(goods=other):
        enter(entry, {"goods": goods})
        saved(entry)
    deleted([other])
