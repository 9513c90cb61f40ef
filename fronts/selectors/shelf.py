"""What is in stock of what the shop buys: free, and laid by for jobs."""

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass

from django.db.models import QuerySet, Sum

from fronts.models import Goods, StockEntry
from fronts.models.shelf import FROM_STOCK
from fronts.rules.buying_names import is_by_length
from fronts.rules.lengths import BOUGHT_IN
from shopjobs.models import Job, Shop


@dataclass(frozen=True, slots=True)
class Balance:
    """How much of a thing there is: free, and laid by for which jobs by their numbers."""

    goods: Goods
    free: int = 0
    laid_by: tuple[tuple[Job, int], ...] = ()

    @property
    def unit(self) -> str:
        """What it is counted in; "" where pieces."""
        return unit_of(self.goods)

    @property
    def for_jobs(self) -> int:
        """All that is laid by."""
        return sum(amount for _, amount in self.laid_by)

    @property
    def on_hand(self) -> int:
        """All that there is."""
        return self.free + self.for_jobs

    def at(self, job: Job | None) -> int:
        """What is laid by for a job; without one, what is free."""
        if job is None:
            return self.free
        return next((amount for held, amount in self.laid_by if held.pk == job.pk), 0)


def unit_of(goods: Goods) -> str:
    """What a thing is counted in; "" where pieces."""
    return unit_named(goods.shop, goods.name)


def unit_named(shop: Shop, name: str) -> str:
    """The same by its shop and buying name."""
    return BOUGHT_IN[str(shop.unit)] if is_by_length(name) else ""


def balances_of(shop: Shop) -> list[Balance]:
    """All that was ever in stock, by name; also what there is nothing of any more."""
    return _balances(StockEntry.objects.filter(shop=shop))


def balance_of(goods: Goods) -> Balance:
    """One thing as it stands."""
    return next(iter(_balances(StockEntry.objects.filter(goods=goods))), Balance(goods))


def _balances(entries: "QuerySet[StockEntry]") -> list[Balance]:
    sums = _sums(entries)
    rows = Goods.objects.select_related("shop").in_bulk([goods for goods, _ in sums])
    jobs = Job.with_deleted.in_bulk([job for _, job in sums if job is not None])
    laid_by: dict[int, list[tuple[Job, int]]] = defaultdict(list)
    for (key, job), amount in sums.items():
        if job is not None and amount:
            laid_by[key].append((jobs[job], amount))
    return [
        Balance(row, sums.get((row.pk, None), 0), tuple(sorted(laid_by[row.pk], key=_by_number)))
        for row in sorted(rows.values(), key=lambda row: (row.name.casefold(), row.pk))
    ]


def _by_number(held: tuple[Job, int]) -> tuple[str, int]:
    return held[0].number.casefold(), held[0].pk


def _sums(entries: "QuerySet[StockEntry]") -> dict[tuple[int, int | None], int]:
    """What there is of each thing at each place."""
    rows = entries.order_by().values_list("goods_id", "job_id").annotate(Sum("amount"))
    return {(goods, job): amount for goods, job, amount in rows}


def below_nothing(goods: Iterable[int]) -> list[tuple[Goods, Job | None, int]]:
    """Where less than nothing of these things, by their keys, would be left, and how much less."""
    found = []
    for row in _balances(StockEntry.objects.filter(goods__in=set(goods))):
        places: list[tuple[Job | None, int]] = [(None, row.free), *row.laid_by]
        found += [(row.goods, job, -amount) for job, amount in places if amount < 0]
    return found


def free_by_name(shop: Shop) -> dict[str, int]:
    """What is free of each thing, by its buying name."""
    rows = StockEntry.objects.filter(shop=shop, job=None).order_by()
    return dict(rows.values_list("goods__name").annotate(Sum("amount")))


def from_stock(jobs: Iterable[int]) -> dict[int, dict[str, int]]:
    """What was laid by for jobs from the free stock, less what was given back, by buying name.

    Jobs are said by their keys. What is used counts still; what came for what was sent for is
    none of it.
    """
    rows = StockEntry.objects.filter(job__in=jobs, kind__in=FROM_STOCK).order_by()
    found: dict[int, dict[str, int]] = defaultdict(dict)
    for job, name, amount in rows.values_list("job_id", "goods__name").annotate(Sum("amount")):
        found[job][name] = amount
    return found


def laid_by_for(job: Job) -> list[tuple[Goods, int]]:
    """What is laid by for a job now, by its name."""
    sums = _sums(StockEntry.objects.filter(job=job))
    rows = Goods.objects.select_related("shop").in_bulk([goods for goods, _ in sums])
    held = [(rows[goods], amount) for (goods, _), amount in sums.items() if amount]
    return sorted(held, key=lambda each: (each[0].name.casefold(), each[0].pk))


def goods_of(shop: Shop, key: int) -> Goods:
    """One thing that the shop buys; another's does not exist."""
    goods = Goods.objects.get(shop=shop, pk=key)
    goods.shop = shop
    return goods


def entries_of(goods: Goods) -> "QuerySet[StockEntry]":
    """What happened to a thing, the latest first; what left the free stock for a job, there."""
    rows = StockEntry.objects.filter(goods=goods).exclude(job=None, kind__in=FROM_STOCK)
    return rows.select_related("job", "entered_by", "arrival__line__sending").order_by("-pk")


def last_entry_of(goods: Goods | None) -> StockEntry | None:
    """What happened to a thing last."""
    rows = StockEntry.objects.filter(goods=goods).select_related("entered_by")
    return rows.order_by("-pk").first() if goods is not None else None
