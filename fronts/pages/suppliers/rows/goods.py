"""What the shop buys as its page shows it: by group, each thing with its offers."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from urllib.parse import urlencode

from django.urls import reverse

from fronts.models import Offer
from fronts.pages.shared.list_groups import ListGroup, list_groups
from fronts.rules.money import Price
from fronts.rules.offers import pack_words


@dataclass(frozen=True, slots=True)
class OfferRow:
    """An offer in words."""

    key: int
    supplier: str
    code: str
    pack: str
    least: str
    price: str
    days: str
    note: str
    preferred: bool


@dataclass(frozen=True, slots=True)
class GoodsRow:
    """A thing with its offers, the preferred one first; `add` is where another is entered.

    `called` is what the shop's list calls it.
    """

    name: str
    called: str
    offers: tuple[OfferRow, ...]
    add: str

    @property
    def lines(self) -> int:
        """How many lines of the table it takes."""
        return len(self.offers) or 1

    @property
    def text(self) -> str:
        """All in which words are looked for."""
        told = [f"{each.supplier} {each.code} {each.note}" for each in self.offers]
        return " ".join([self.name, self.called, *told])


def offer_row(offer: Offer, *, preferred: bool) -> OfferRow:
    """An offer in words."""
    days = offer.days
    return OfferRow(
        key=offer.pk,
        supplier=offer.supplier.name,
        code=offer.code,
        pack=pack_words(offer.pack, offer.unit),
        least="" if offer.least == 1 else f"at least {offer.least} packs",
        price=str(Price(offer.price, offer.currency)),
        days="" if days is None else str(days),
        note=offer.note,
        preferred=preferred,
    )


def goods_groups(
    items: Mapping[str, str], offers: dict[str, list[Offer]], words: str, *, bare: bool
) -> list[ListGroup[GoodsRow]]:
    """The things by group in which all of `words` are found; `bare`: those without an offer."""
    names = dict.fromkeys([*items, *offers])
    rows = (_row(name, items.get(name, ""), offers.get(name, [])) for name in names)
    return list_groups((row for row in rows if not (bare and row.offers)), words)


def _row(name: str, called: str, offers: Sequence[Offer]) -> GoodsRow:
    shown = tuple(offer_row(each, preferred=each is offers[0]) for each in offers)
    return GoodsRow(name, called, shown, add_address(name))


def add_address(name: str) -> str:
    """Where an offer of something is entered."""
    return f"{reverse('fronts:shop-offer-new')}?{urlencode({'item': name})}"
