"""What is asked of a supplier in words: the same on screen, paper, in files and in a message."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal
from fractions import Fraction

from fronts.figures.sizes import tenths
from fronts.figures.where_needed import where_needed
from fronts.models import Offer, Supplier
from fronts.rules.buying import PurchaseLine, SupplierPurchase, Thing, Wanted
from fronts.rules.money import Price
from fronts.rules.offers import BUY_UNITS, pack_words
from fronts.rules.packs import packs_to_buy
from fronts.selectors.purchases import ShopBuying

HEADS = (
    "item", "supplier's code", "packs", "in a pack", "unit", "needed", "price of a pack",
    "cost", "currency", "working days", "jobs",
)  # fmt: skip
ONE = Decimal(1)
_LONGEST_JOBS = 40
Cell = str | int | Decimal


@dataclass(frozen=True, slots=True)
class JobShare:
    """What one job wants of a thing: how much, what of it covers that already, which fronts.

    `ordered` is at how many the order stays, where that was decided otherwise than the need.
    """

    job: str
    amount: str
    spares: str
    sent: str
    stocked: str
    ordered: str
    fronts: str


@dataclass(frozen=True, slots=True)
class PurchaseRow:
    """One line of what a supplier is asked for; `comes` is all that is in the packs."""

    line: PurchaseLine
    offer: Offer

    @property
    def name(self) -> str:
        return self.line.thing.name

    @property
    def code(self) -> str:
        return self.offer.code

    @property
    def packs(self) -> int:
        return self.line.purchase.packs

    @property
    def pack(self) -> str:
        """What a pack holds; "" where each is bought by itself."""
        facts = self.line.offer.facts
        is_one = facts.unit == "piece" and facts.pack == ONE
        return "" if is_one else f"pack of {pack_words(facts.pack, facts.unit)}"

    @property
    def wanted(self) -> str:
        return amount_words(self.line.thing.amount, self.line.thing.unit)

    @property
    def price(self) -> Price:
        return self.line.offer.facts.price

    @property
    def cost(self) -> Price:
        return self.line.purchase.cost

    @property
    def days(self) -> str:
        return "" if self.line.offer.days is None else str(self.line.offer.days)

    @property
    def least(self) -> str:
        """Said where the least order makes it more packs than are needed."""
        facts, thing = self.line.offer.facts, self.line.thing
        fewest = packs_to_buy(thing.amount, thing.unit, replace(facts, least=1))
        is_more = fewest is not None and fewest.packs < self.packs
        return f"they sell at least {facts.least} at a time" if is_more else ""

    @property
    def jobs(self) -> list[JobShare]:
        return job_shares(self.line.thing)

    @property
    def cells(self) -> list[Cell]:
        """The line in the order of `HEADS`, numbers as numbers."""
        facts = self.line.offer.facts
        return [
            self.name, self.code, self.packs, facts.pack, BUY_UNITS[facts.unit], self.wanted,
            self.price.amount, self.cost.amount, self.cost.currency,
            "" if self.line.offer.days is None else self.line.offer.days,
            ", ".join(dict.fromkeys(each.job for each in self.line.thing.wanted if each.amount)),
        ]  # fmt: skip


@dataclass(frozen=True, slots=True)
class PurchaseWords:
    """All that one supplier is asked for."""

    supplier: Supplier
    purchase: SupplierPurchase
    rows: tuple[PurchaseRow, ...]
    jobs: tuple[str, ...]

    @property
    def file_name(self) -> str:
        """What its files are called, without their endings."""
        return f"{self.supplier.name} {' '.join(self.jobs)[:_LONGEST_JOBS]}"

    @property
    def costs(self) -> str:
        """`412.30 USD`, or a sum in each currency."""
        return costs_words(self.purchase.costs)

    @property
    def days(self) -> str:
        """`within 5 working days`, as far as it is known."""
        days = self.purchase.days
        return "" if days is None else f"within {days} working day{'' if days == 1 else 's'}"


def purchase_words(bought: ShopBuying) -> list[PurchaseWords]:
    """What each supplier is asked for, by their names."""
    told = (_of_supplier(bought, each) for each in bought.buying.purchases)
    return sorted(told, key=lambda each: (each.supplier.name.casefold(), each.supplier.pk))


def _of_supplier(bought: ShopBuying, purchase: SupplierPurchase) -> PurchaseWords:
    wanted = (each for line in purchase.lines for each in line.thing.wanted)
    return PurchaseWords(
        supplier=bought.suppliers[purchase.supplier],
        purchase=purchase,
        rows=tuple(PurchaseRow(line, bought.offers[line.offer.key]) for line in purchase.lines),
        jobs=tuple(sorted({each.job for each in wanted if each.amount}, key=str.casefold)),
    )


def job_shares(thing: Thing) -> list[JobShare]:
    """What each job wants of a thing."""
    return [_share(each) for each in thing.wanted]


def _share(wanted: Wanted) -> JobShare:
    unit = wanted.unit
    return JobShare(
        job=wanted.job,
        amount=amount_words(wanted.whole, unit),
        spares=amount_words(wanted.spares, unit) if wanted.spares else "",
        sent=amount_words(wanted.sent, unit) if wanted.sent else "",
        stocked=stock_words(wanted.stocked, unit),
        ordered=_ordered(wanted),
        fronts=where_needed({each.front: each.amount for each in wanted.causes}, unit),
    )


def _ordered(wanted: Wanted) -> str:
    """What is ordered in all, where that was decided otherwise than the need; else ""."""
    if wanted.ordered is None or wanted.ordered == wanted.whole:
        return ""
    return amount_words(wanted.ordered, wanted.unit)


def stock_words(stocked: Fraction, unit: str) -> str:
    """`3 laid by from stock`, or `3 given back to stock` of what came; "" of nothing."""
    if not stocked:
        return ""
    how = "laid by from" if stocked > 0 else "given back to"
    return f"{amount_words(abs(stocked), unit)} {how} stock"


def amount_words(amount: Fraction, unit: str) -> str:
    """`30`, `34 ft`, `12.4 m`; rounded up to a tenth where it is no whole number."""
    if amount.denominator == 1:
        return f"{amount} {unit}".strip()
    return tenths(amount, unit).strip()


def costs_words(costs: Sequence[Price]) -> str:
    """`412.30 USD and 80.00 EUR`; sums of different money are never added up."""
    return " and ".join(str(cost) for cost in costs)


def message(words: PurchaseWords, shop: str, day: str) -> str:
    """The order as plain text, to be pasted into a message."""
    return "\n".join(_message_lines(words, shop, day))


def _message_lines(words: PurchaseWords, shop: str, day: str) -> Iterator[str]:
    supplier = words.supplier
    account = f", our account {supplier.account}" if supplier.account else ""
    yield f"Order of {shop}, {day}"
    yield f"To {supplier.name}{account}"
    yield f"For {', '.join(words.jobs)}"
    yield ""
    for row in words.rows:
        pack = f" × {row.pack}:" if row.pack else " ×"
        code = f", your code {row.code}" if row.code else ""
        yield f"{row.packs}{pack} {row.name}{code}, at {row.price} = {row.cost}"
    yield ""
    yield f"In all {words.costs}"
