"""What the latest jobs need, beside who sells it, in how many packs, and for how much."""

from collections.abc import Iterable
from dataclasses import dataclass, field
from fractions import Fraction

from fronts.models import Offer
from fronts.pages.suppliers.rows.goods import OfferRow, add_address, offer_row
from fronts.rules.packs import Purchase, packs_to_buy, totals
from fronts.selectors.needed import NeededBy


@dataclass(slots=True)
class NeededRow:
    """One thing, how much of it each job needs by unit, and the preferred offer of it."""

    name: str
    sold: Offer | None
    entered_at: str
    amounts: dict[tuple[str, str], int | None] = field(default_factory=dict)

    @property
    def jobs(self) -> list[tuple[str, str]]:
        """Each job by its number, with so much as it needs in words, where that is known."""
        return [
            (number, "" if amount is None else f"{amount} {unit}".strip())
            for (number, unit), amount in self.amounts.items()
        ]

    @property
    def offer(self) -> OfferRow | None:
        """The preferred offer in words."""
        return None if self.sold is None else offer_row(self.sold, preferred=True)

    @property
    def purchase(self) -> Purchase | None:
        """The packs that all jobs take together; None where no amount says it."""
        known = {unit: 0 for (_, unit), amount in self.amounts.items() if amount is not None}
        if self.sold is None or len(known) != 1:
            return None
        whole = sum(amount or 0 for amount in self.amounts.values())
        return packs_to_buy(Fraction(whole), next(iter(known)), self.sold.facts)

    def add(self, need: NeededBy) -> None:
        """So much more of it."""
        key = need.job.number, need.unit
        so_far = self.amounts.get(key) or 0
        self.amounts[key] = None if need.amount is None else so_far + need.amount


@dataclass(frozen=True, slots=True)
class NeededList:
    """What nobody sells yet, what somebody does, and what that comes to in each currency."""

    bare: tuple[NeededRow, ...]
    sold: tuple[NeededRow, ...]
    costs: tuple[str, ...]


def needed_list(needs: Iterable[NeededBy], offers: dict[str, list[Offer]]) -> NeededList:
    """All that jobs need, each thing once."""
    rows: dict[str, NeededRow] = {}
    for need in needs:
        rows.setdefault(need.name, _row(need.name, offers.get(need.name, []))).add(need)
    ordered = sorted(rows.values(), key=lambda row: row.name.casefold())
    sold = tuple(row for row in ordered if row.sold is not None)
    costs = totals(each.cost for row in sold if (each := row.purchase))
    bare = tuple(row for row in ordered if row.sold is None)
    return NeededList(bare, sold, tuple(str(cost) for cost in costs))


def _row(name: str, offers: list[Offer]) -> NeededRow:
    return NeededRow(name, offers[0] if offers else None, add_address(name))
