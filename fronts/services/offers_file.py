"""Offers that a file says: held against those that there are, and taken in as one step."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, fields
from datetime import datetime

from django.core.exceptions import ValidationError

from fronts.models import Offer, Supplier
from fronts.rules.offers import OfferFacts
from fronts.selectors.offers import known_names, offers_by_name, suppliers_of
from fronts.services.offers import goods_called, offer_entered, put_first
from fronts.services.saving import shop_told
from fronts.services.suppliers import supplier_entered
from shopjobs.models import Person, Shop
from shopjobs.services.recording import recorded
from shopjobs.services.refused import Refused

PREFERRED = "preferred"


@dataclass(frozen=True, slots=True)
class OfferLine:
    """A line of a file by its number: what, from whom, and what is asked for it."""

    number: int
    item: str
    supplier: str
    facts: OfferFacts
    preferred: bool

    @property
    def key(self) -> tuple[str, str, str]:
        """What tells it apart from other offers, capitals of names aside."""
        return self.item.casefold(), self.supplier.casefold(), self.facts.code


@dataclass(frozen=True, slots=True)
class ComparedLine:
    """A line beside the offer that it is, None where it is new; `differs` names facts."""

    line: OfferLine
    offer: Offer | None
    differs: tuple[str, ...]
    is_new_item: bool
    is_new_supplier: bool

    @property
    def is_unchanged(self) -> bool:
        return self.offer is not None and not self.differs


def compared(shop: Shop, lines: Iterable[OfferLine]) -> Iterator[ComparedLine]:
    """Each line beside what there is of it."""
    by_name = offers_by_name(shop)
    suppliers = {row.name.casefold() for row in suppliers_of(shop)}
    names = {name.casefold() for name in known_names(shop)}
    held = {
        (name.casefold(), offer.supplier.name.casefold(), offer.code): (offer, offer is offers[0])
        for name, offers in by_name.items()
        for offer in offers
    }
    for line in lines:
        offer, is_first = held.get(line.key, (None, False))
        differs = () if offer is None else tuple(_differing(line, offer, is_first=is_first))
        yield ComparedLine(
            line, offer, differs, line.key[0] not in names, line.key[1] not in suppliers
        )


def _differing(line: OfferLine, offer: Offer, *, is_first: bool) -> Iterator[str]:
    """The facts of an offer that a line says otherwise; not to be preferred says nothing."""
    theirs = offer.facts
    for fact in fields(OfferFacts):
        if getattr(line.facts, fact.name) != getattr(theirs, fact.name):
            yield fact.name
    if line.preferred and not is_first:
        yield PREFERRED


@recorded
def offers_take(
    *, shop: Shop, lines: Sequence[OfferLine], at: datetime, by: Person | None = None
) -> tuple[int, int]:
    """Let all these lines hold, as one step: how many offers were new, and how many changed."""
    told = [each for each in compared(shop, lines) if not each.is_unchanged]
    suppliers = {row.name.casefold(): row for row in suppliers_of(shop)}
    known = {name.casefold(): name for name in known_names(shop)}
    for each in told:
        try:
            _take(shop, each, suppliers, known)
        except (ValidationError, Refused) as fault:
            said = fault.message if isinstance(fault, Refused) else " ".join(fault.messages)
            raise ValidationError(f"Line {each.line.number}: {said}") from fault
    new = sum(each.offer is None for each in told)
    text = f"Took offers in from a file: {new} new, {len(told) - new} changed"
    shop_told(shop=shop, text=text, by=by, at=at, fine=False)
    return new, len(told) - new


def _take(
    shop: Shop, told: ComparedLine, suppliers: dict[str, Supplier], known: dict[str, str]
) -> None:
    line = told.line
    name = line.supplier.casefold()
    if name not in suppliers:
        suppliers[name] = supplier_entered(shop, {"name": line.supplier})
    goods = told.offer.goods if told.offer else goods_called(shop, line.item, known)
    offer = offer_entered(goods, suppliers[name], line.facts, told.offer)
    known[line.item.casefold()] = goods.name
    if line.preferred:
        put_first(offer)
