"""Stock of what the shop buys: counted, laid by for jobs, given back, used; what came of orders.

Whoever changes it holds the things that it is of, so that nobody else does meanwhile: there is
never less than nothing at a place. A job is held before its things, as its own pages do.
"""

from collections.abc import Iterable, Mapping, Sequence
from datetime import datetime
from fractions import Fraction

from django.db import transaction

from fronts.models import Goods, OrderArrival, StockEntry
from fronts.models.shelf import COUNTED, GIVEN_BACK, LAID_BY, RECEIVED, USED
from fronts.rules.shelf import FreeShare, came_for_job, in_words, kept
from fronts.selectors.approved_items import buying_names_of
from fronts.selectors.offers import known_names
from fronts.selectors.order_progress import LineSent
from fronts.selectors.purchases import jobs_to_buy_for, shares_of_stock, shop_buying
from fronts.selectors.shelf import (
    Balance,
    balance_of,
    below_nothing,
    last_entry_of,
    unit_of,
)
from fronts.services.offers import goods_called
from fronts.services.saving import AskFirst, checked, job_told, shop_told
from shopjobs.models import Job, Person, Shop
from shopjobs.services.locks import shop_lock
from shopjobs.services.recording import deleted, made, recorded
from shopjobs.services.refused import Refused
from shopjobs.words import moment_in_words

_MOVES: Mapping[str, tuple[int, int]] = {LAID_BY: (-1, 1), GIVEN_BACK: (1, -1), USED: (0, -1)}
"""How each changes what is free, and what is laid by for the job."""
_SAYS = {
    LAID_BY: "Laid by from stock", GIVEN_BACK: "Gave back to stock", USED: "Took out of stock",
}  # fmt: skip


class CountedBefore(AskFirst):
    """Somebody changed what there is since it was looked at; `last` is what happened last."""

    def __init__(self, message: str, last: int) -> None:
        super().__init__(message, ())
        self.last = last


@recorded
def stock_count(
    *,
    shop: Shop,
    item: str,
    amount: Fraction,
    reason: str,
    seen: int | None,
    by: Person,
    at: datetime,
) -> Goods:
    """Say how many there are in all; what that makes more or fewer is free.

    `seen` is the last entry that whoever counts knew of.
    """
    known = {name.casefold(): name for name in known_names(shop)}
    goods = goods_called(shop, item, known)
    _hold([goods.pk])
    _ask_about_later(goods, seen)
    balance, count = balance_of(goods), kept(amount, unit_of(goods))
    if count < balance.for_jobs:
        raise Refused(_laid_by_words(balance), field="amount")
    entry = StockEntry(
        shop=shop, goods=goods, amount=count - balance.on_hand, kind=COUNTED, reason=reason,
        entered_by=by, entered_at=at,
    )  # fmt: skip
    checked(entry)
    made(StockEntry, [entry])
    text = f"Counted {goods}: {in_words(count, balance.unit)}"
    shop_told(shop=shop, text=text, by=by, at=at, fine=False)
    return goods


@recorded
def stock_move(
    *, kind: str, job: Job, amounts: Sequence[tuple[Goods, int]], by: Person, at: datetime
) -> None:
    """Lay things by for a job from what is free, give them back, or use them up for the job."""
    Job.with_deleted.select_for_update(of=("self",), no_key=True).get(pk=job.pk)
    _hold(goods.pk for goods, _ in amounts)
    free, laid_by = _MOVES[kind]
    made(StockEntry, [
        StockEntry(
            shop=job.shop, goods=goods, job=place, amount=sign * amount, kind=kind,
            entered_by=by, entered_at=at,
        )
        for goods, amount in amounts
        for place, sign in ((None, free), (job, laid_by))
        if sign
    ])  # fmt: skip
    refuse_below_nothing(goods.pk for goods, _ in amounts)
    said = ", ".join(f"{in_words(amount, unit_of(goods))} × {goods}" for goods, amount in amounts)
    job_told(job=job, text=f"{_SAYS[kind]}: {said}", by=by, at=at)


def shares_lay_by(
    *, shop: Shop, jobs: Sequence[Job], shares: Sequence[FreeShare], by: Person, at: datetime
) -> None:
    """Lay by for jobs what of their wants lies free in stock, all of it or nothing.

    It is a step of each job. Refused where it is no longer wanted so, or no longer free.
    """
    with transaction.atomic():
        shop_lock(shop.pk)
        held = Job.objects.select_for_update(of=("self",), no_key=True).order_by("pk")
        of_number = {job.number: job for job in held.filter(pk__in=[job.pk for job in jobs])}
        now = jobs_to_buy_for(shop, [job.pk for job in of_number.values()])
        if not set(shares) <= set(shares_of_stock(shop, shop_buying(shop, now).buying)):
            raise Refused("What is in stock, or wanted of it, has changed. Look again, then go on.")
        goods = {row.name: row for row in Goods.objects.filter(shop=shop).select_related("shop")}
        for number, job in of_number.items():
            of_job = [share for share in shares if share.job == number]
            amounts = [(goods[each.name], kept(each.amount, each.unit)) for each in of_job]
            if amounts:
                stock_move(kind=LAID_BY, job=job, amounts=amounts, by=by, at=at)


def arrivals_stocked(job: Job, rows: Sequence[OrderArrival], lines: Mapping[int, LineSent]) -> None:
    """Lay by for its job what came, as far as it was sent for; what is over is free.

    `lines` are as they were before, by their keys.
    """
    names = buying_names_of(job)
    goods = {name: goods_called(job.shop, name, {}) for name in sorted(
        {names.get(row.line.item, row.line.item) for row in rows}
    )}  # fmt: skip
    entries = []
    for row in rows:
        line = lines[row.line_id]
        for_job = came_for_job(row.amount, line.came, line.row.amount)
        entries += [
            StockEntry(
                shop=job.shop, goods=goods[names.get(line.row.item, line.row.item)], job=place,
                amount=kept(Fraction(amount), line.row.unit), kind=RECEIVED, arrival=row,
                entered_by=row.received_by, entered_at=row.received_at,
            )
            for place, amount in ((job, for_job), (None, row.amount - for_job))
            if amount
        ]  # fmt: skip
    _hold(each.pk for each in goods.values())
    made(StockEntry, entries)


def arrivals_unstocked(rows: Iterable[OrderArrival]) -> None:
    """Take back what came from stock; refused where it is used or laid by otherwise by now."""
    entries = StockEntry.objects.filter(arrival__in=[row.pk for row in rows])
    goods = set(entries.values_list("goods", flat=True))
    _hold(goods)
    deleted(entries)
    refuse_below_nothing(goods)


def refuse_below_nothing(goods: Iterable[int]) -> None:
    """There is never less than nothing of these things, by their keys, wherever it is."""
    keys = set(goods)
    if not keys:
        return
    _locked(keys)
    for each, job, less in below_nothing(keys):
        where = "are free" if job is None else f"are laid by for {job}"
        much = in_words(less, unit_of(each))
        raise Refused(f"Of {each}, {much} more would be taken than {where}.", field="amount")


def _hold(goods: Iterable[int]) -> None:
    """Let nobody else change what there is of these things until this is done."""
    keys = set(goods)
    if len(_locked(keys)) < len(keys):
        raise Refused("Somebody took the item out meanwhile. Look again, then go on.")


def _locked(goods: Iterable[int]) -> list[int]:
    rows = Goods.objects.filter(pk__in=set(goods)).order_by("pk")
    return list(rows.select_for_update(no_key=True).values_list("pk", flat=True))


def _ask_about_later(goods: Goods, seen: int | None) -> None:
    """Of two who count, or count and take, the later one is told what the first one did."""
    last = last_entry_of(goods)
    if last is None or last.pk == seen:
        return
    now = balance_of(goods)
    raise CountedBefore(
        f"{last.entered_by.shown_name} changed what there is of {goods} "
        f"({last.kind}, {moment_in_words(last.entered_at)}): "
        f"{in_words(now.on_hand, now.unit)} on hand. Save again if your count came after that.",
        last.pk,
    )


def _laid_by_words(balance: Balance) -> str:
    held = ", ".join(
        f"{in_words(amount, balance.unit)} for {job}" for job, amount in balance.laid_by
    )
    return f"Laid by already: {held}. Give back what is missing there, then count again."
