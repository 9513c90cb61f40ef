"""What the shop buys as its page shows it: by group, each thing with its offers."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from urllib.parse import urlencode

from django.urls import reverse

from fronts.models import Offer
from fronts.rules.buying_names import GROUPS, group_of
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


@dataclass(frozen=True, slots=True)
class GoodsGroup:
    """Things of one group."""

    name: str
    rows: tuple[GoodsRow, ...]


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
) -> list[GoodsGroup]:
    """The things by group in which all of `words` are found; `bare`: those without an offer."""
    wanted = words.casefold().split()
    groups: dict[str, list[GoodsRow]] = {group: [] for group in GROUPS}
    for name in dict.fromkeys([*items, *offers]):
        row = _row(name, items.get(name, ""), offers.get(name, []))
        if not (bare and row.offers) and _holds(row, wanted):
            groups[group_of(name)].append(row)
    return [GoodsGroup(group, tuple(rows)) for group, rows in groups.items() if rows]


def _row(name: str, called: str, offers: Sequence[Offer]) -> GoodsRow:
    shown = tuple(offer_row(each, preferred=each is offers[0]) for each in offers)
    return GoodsRow(name, called, shown, add_address(name))


def add_address(name: str) -> str:
    """Where an offer of something is entered."""
    return f"{reverse('fronts:shop-offer-new')}?{urlencode({'item': name})}"


def _holds(row: GoodsRow, wanted: Sequence[str]) -> bool:
    told = [f"{each.supplier} {each.code} {each.note}" for each in row.offers]
    text = " ".join([row.name, row.called, *told]).casefold()
    return all(word in text for word in wanted)
