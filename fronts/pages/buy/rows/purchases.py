"""The whole of what is bought as its page shows it, and what can't be bought yet."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date
from urllib.parse import urlencode

from django.urls import reverse

from fronts.figures.purchase import (
    JobShare,
    PurchaseRow,
    PurchaseWords,
    amount_words,
    costs_words,
    job_shares,
    message,
    purchase_words,
)
from fronts.pages.shared.purchase_asked import Asked
from fronts.rules.buying import SupplierOffer, Thing
from fronts.rules.money import Price
from fronts.rules.offers import BUY_UNITS, pack_words
from shopjobs.models import Job


@dataclass(frozen=True, slots=True)
class Choice:
    """An offer that may be taken instead."""

    key: int
    words: str
    taken: bool


@dataclass(frozen=True, slots=True)
class Row:
    """A line with the offers to choose from, where there are several."""

    words: PurchaseRow
    choices: tuple[Choice, ...]


@dataclass(frozen=True, slots=True)
class FromSupplier:
    """All from one supplier, with the message that says it."""

    words: PurchaseWords
    rows: tuple[Row, ...]
    message: str


@dataclass(frozen=True, slots=True)
class Apart:
    """A thing that can't be bought as it is, or need not be; where that is put right."""

    name: str
    wanted: str
    jobs: tuple[JobShare, ...]
    href: str = ""
    why: str = ""
    choices: tuple[Choice, ...] = ()


@dataclass(frozen=True, slots=True)
class ToPlan:
    """A job whose sheets and sticks no cutting plan says."""

    job: Job
    names: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Bought:
    """The page: suppliers, what stands apart, and what all of it comes to."""

    suppliers: tuple[FromSupplier, ...]
    unsold: tuple[Apart, ...]
    otherwise: tuple[Apart, ...]
    to_plan: tuple[ToPlan, ...]
    covered: tuple[Apart, ...]
    costs: str

    @property
    def apart(self) -> bool:
        """Whether anything can't be bought yet."""
        return bool(self.unsold or self.otherwise or self.to_plan)

    @property
    def may_choose(self) -> bool:
        """Whether anything has several offers."""
        sold = any(row.choices for each in self.suppliers for row in each.rows)
        return sold or any(row.choices for row in self.otherwise)


def bought_rows(asked: Asked, shop: str, day: date) -> Bought:
    """What is bought in words."""
    found, buying = asked.bought, asked.bought.buying
    names = {key: row.name for key, row in found.suppliers.items()}
    return Bought(
        suppliers=tuple(_suppliers(asked, names, shop, f"{day:%-d %B %Y}")),
        unsold=tuple(_apart(thing, _add(thing.name)) for thing in buying.unsold),
        otherwise=tuple(
            Apart(
                each.thing.name, _amount(each.thing), tuple(job_shares(each.thing)),
                reverse("fronts:shop-offer", args=[each.offer.key]),
                f"{names[each.offer.supplier]} sells {BUY_UNITS[each.offer.facts.unit]}",
                _choices(each.offers, each.offer, names),
            )
            for each in buying.otherwise
        ),
        to_plan=tuple(_to_plan(asked)),
        covered=tuple(_apart(thing) for thing in buying.covered),
        costs=costs_words(buying.costs),
    )  # fmt: skip


def _suppliers(
    asked: Asked, names: Mapping[int, str], shop: str, day: str
) -> Iterator[FromSupplier]:
    for words in purchase_words(asked.bought):
        rows = tuple(Row(row, _choices(row.line.offers, row.line.offer, names))
                     for row in words.rows)  # fmt: skip
        yield FromSupplier(words, rows, message(words, shop, day))


def _choices(
    offers: tuple[SupplierOffer, ...], taken: SupplierOffer, names: Mapping[int, str]
) -> tuple[Choice, ...]:
    """The offers of a thing, the preferred one first; none where there is nothing to choose."""
    if len(offers) == 1:
        return ()
    return tuple(
        Choice(each.key, _offer_words(each, names[each.supplier]), each is taken) for each in offers
    )


def _offer_words(offer: SupplierOffer, supplier: str) -> str:
    price: Price = offer.facts.price
    return f"{supplier}: {pack_words(offer.facts.pack, offer.facts.unit)} for {price}"


def _apart(thing: Thing, href: str = "") -> Apart:
    return Apart(thing.name, _amount(thing), tuple(job_shares(thing)), href)


def _amount(thing: Thing) -> str:
    return amount_words(thing.amount, thing.unit)


def _add(name: str) -> str:
    """Where an offer of something is entered."""
    return f"{reverse('fronts:shop-offer-new')}?{urlencode({'item': name})}"


def _to_plan(asked: Asked) -> Iterator[ToPlan]:
    for job in asked.bought.jobs:
        wanted = (each for each in asked.bought.buying.unplanned if each.job == job.number)
        names = tuple(each.name for each in wanted)
        if names:
            yield ToPlan(job, names)
