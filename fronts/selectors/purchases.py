"""What a shop buys for some of its jobs, with who sells it."""

from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass

from fronts.models import Offer, Supplier
from fronts.rules.buying import Buying, SupplierOffer, buying
from fronts.rules.shelf import FreeShare, shares_of_free
from fronts.selectors.needed import wanted_by
from fronts.selectors.offers import offers_by_name
from fronts.selectors.shelf import free_by_name
from shopjobs.models import Job, Shop


@dataclass(frozen=True, slots=True)
class ShopBuying:
    """What is bought for the jobs; offers and suppliers by the keys that it names."""

    jobs: tuple[Job, ...]
    buying: Buying
    offers: dict[int, Offer]
    suppliers: dict[int, Supplier]


def jobs_to_buy_for(shop: Shop, keys: Collection[int]) -> list[Job]:
    """The shop's jobs of these keys by their numbers; another shop's do not exist."""
    jobs = Job.objects.filter(shop=shop, pk__in=keys).select_related("shop")
    return sorted(jobs, key=lambda job: (job.number.casefold(), job.pk))


def shares_of_stock(shop: Shop, found: Buying) -> list[FreeShare]:
    """What of what is still to be bought lies free in stock, and for which jobs it would do."""
    sold = (line.thing for each in found.purchases for line in each.lines)
    things = [*sold, *found.unsold, *(each.thing for each in found.otherwise)]
    return list(shares_of_free(things, free_by_name(shop)))


def shop_buying(shop: Shop, jobs: Sequence[Job], chosen: Iterable[int] = ()) -> ShopBuying:
    """What to buy for the jobs of a shop, from the chosen offers or else the preferred ones."""
    rows = offers_by_name(shop)
    offers = {
        name: [SupplierOffer(row.pk, row.supplier_id, row.facts, row.days) for row in several]
        for name, several in rows.items()
    }
    every = [row for several in rows.values() for row in several]
    return ShopBuying(
        jobs=tuple(jobs),
        buying=buying(wanted_by(jobs), offers, chosen),
        offers={row.pk: row for row in every},
        suppliers={row.supplier_id: row.supplier for row in every},
    )
