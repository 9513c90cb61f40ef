"""What is to be bought for one job or several together: from whom, how many packs, for how much.

What is needed keeps what causes it, so that every figure can be opened onto jobs and fronts.
"""

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from fronts.rules.buying_names import GROUPS, group_of
from fronts.rules.lengths import UNITS
from fronts.rules.money import Price
from fronts.rules.offers import OfferFacts
from fronts.rules.packs import Purchase, packs_to_buy, totals

NOTHING = Fraction(0)
_PLACES = {group: place for place, group in enumerate(GROUPS)}


@dataclass(frozen=True, slots=True)
class Cause:
    """So much of a thing is for one front; of a sheet or stick its share of what is cut from it."""

    front: str
    cabinet: str
    amount: Fraction


@dataclass(frozen=True, slots=True)
class Wanted:
    """So much of one thing for one job, with spares beside it; None where no plan says it yet.

    `job` is its number, `item` the line of its order; `covered` is what was sent for already, and
    what was laid by from stock, which `stocked` is. `ordered` is how many the office decided to
    order in all for exactly this need; None where it decided nothing of it yet. `unit` is what
    all amounts count, "" where pieces.
    """

    name: str
    job: str
    need: Fraction | None
    spares: Fraction = NOTHING
    covered: Fraction = NOTHING
    stocked: Fraction = NOTHING
    ordered: Fraction | None = None
    unit: str = ""
    item: str = ""
    causes: tuple[Cause, ...] = ()

    @property
    def whole(self) -> Fraction:
        """The need and its spares."""
        return (self.need or NOTHING) + self.spares

    @property
    def sent(self) -> Fraction:
        """What was sent for already."""
        return self.covered - self.stocked

    @property
    def amount(self) -> Fraction:
        """What of it is still to be bought."""
        wanted = self.whole if self.ordered is None else self.ordered
        return max(wanted - self.covered, NOTHING)


@dataclass(frozen=True, slots=True)
class SupplierOffer:
    """An offer by its key, and whose it is; `days` until it comes, None where nobody says."""

    key: int
    supplier: int
    facts: OfferFacts
    days: int | None = None


@dataclass(frozen=True, slots=True)
class Thing:
    """One thing that all jobs together want, in one unit."""

    name: str
    unit: str
    wanted: tuple[Wanted, ...]

    @property
    def amount(self) -> Fraction:
        """All that is still to be bought of it; what covers one job serves no other."""
        return sum((_in(self.unit, each) for each in self.wanted), NOTHING)


@dataclass(frozen=True, slots=True)
class PurchaseLine:
    """A thing from the supplier who was chosen for it, beside all who offer it."""

    thing: Thing
    offer: SupplierOffer
    offers: tuple[SupplierOffer, ...]
    purchase: Purchase


@dataclass(frozen=True, slots=True)
class SupplierPurchase:
    """All that one supplier is asked for."""

    supplier: int
    lines: tuple[PurchaseLine, ...]

    @property
    def costs(self) -> list[Price]:
        """What it comes to in each currency."""
        return totals(line.purchase.cost for line in self.lines)

    @property
    def days(self) -> int | None:
        """Working days until the last of it comes, as far as they are known."""
        return max((line.offer.days for line in self.lines if line.offer.days is not None),
                   default=None)  # fmt: skip


@dataclass(frozen=True, slots=True)
class OtherwiseCounted:
    """A thing whose offer counts pieces where it is needed by length, or the other way round."""

    thing: Thing
    offer: SupplierOffer
    offers: tuple[SupplierOffer, ...]


@dataclass(frozen=True, slots=True)
class Buying:
    """What is bought from whom, and what can't be bought yet: each thing in one place only."""

    purchases: tuple[SupplierPurchase, ...] = ()
    unsold: tuple[Thing, ...] = ()
    otherwise: tuple[OtherwiseCounted, ...] = ()
    unplanned: tuple[Wanted, ...] = ()
    covered: tuple[Thing, ...] = ()

    @property
    def costs(self) -> list[Price]:
        """What all suppliers ask together, in each currency."""
        return totals(line.purchase.cost for each in self.purchases for line in each.lines)


def buying(
    wanted: Iterable[Wanted],
    offers: Mapping[str, Sequence[SupplierOffer]],
    chosen: Iterable[int] = (),
) -> Buying:
    """What to buy; of several offers the first, or the one of the `chosen` keys."""
    everything = list(wanted)
    keys = frozenset(chosen)
    by_supplier: dict[int, list[PurchaseLine]] = defaultdict(list)
    unsold, otherwise, covered = [], [], []
    for thing in _things(each for each in everything if each.need is not None):
        held = tuple(offers.get(thing.name, ()))
        offer = next((each for each in held if each.key in keys), next(iter(held), None))
        if not thing.amount:
            covered.append(thing)
        elif offer is None:
            unsold.append(thing)
        elif purchase := packs_to_buy(thing.amount, thing.unit, offer.facts):
            by_supplier[offer.supplier].append(PurchaseLine(thing, offer, held, purchase))
        else:
            otherwise.append(OtherwiseCounted(thing, offer, held))
    return Buying(
        purchases=tuple(SupplierPurchase(key, tuple(of)) for key, of in by_supplier.items()),
        unsold=tuple(unsold),
        otherwise=tuple(otherwise),
        unplanned=tuple(each for each in everything if each.need is None),
        covered=tuple(covered),
    )


def _things(wanted: Iterable[Wanted]) -> list[Thing]:
    """Each thing once, in the order of a shop's list; lengths in the unit that is met first."""
    same: dict[tuple[str, bool], list[Wanted]] = defaultdict(list)
    for each in wanted:
        same[each.name, bool(each.unit)].append(each)
    ordered = sorted(same, key=lambda key: (_PLACES[group_of(key[0])], key[0].casefold(), key))
    return [Thing(key[0], same[key][0].unit, tuple(same[key])) for key in ordered]


def _in(unit: str, wanted: Wanted) -> Fraction:
    """What is still to be bought for a job, in this unit."""
    if wanted.unit == unit:
        return wanted.amount
    return wanted.amount * UNITS[wanted.unit] / UNITS[unit]
