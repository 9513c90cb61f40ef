"""What is kept on the shelf, and the shop's own numbers."""

from collections.abc import Mapping
from datetime import datetime
from fractions import Fraction
from typing import Unpack

from django.core.exceptions import ValidationError
from django.db import transaction

from fronts.jobfile.shop_numbers import PLAIN, POSITIVE
from fronts.jobfile.stock import MOST_LENGTHS
from fronts.models import ShopNumber, Stock
from fronts.models.stock import NUMBER_NAMES
from fronts.rules.lengths import LengthError, as_decimal, exact
from fronts.services.saving import checked, enter, job_changed, shop_changed
from fronts.services.values import StockValues
from fronts.snapshot.stock import practice_in_force, stock_in_force
from shopjobs.models import Job, Person, Shop

VALUE_PLACES = 10
MOST_VALUE = 20_000
"""With its places, 15 digits: what SQLite keeps exactly."""


@transaction.atomic
def stock_set(
    *, owner: Shop | Job, at: datetime, by: Person | None = None, **values: Unpack[StockValues]
) -> Stock:
    """Set what is in stock; a job's own stock starts as a whole copy of what held before."""
    stock = _stock_of(owner)
    enter(stock, values)
    checked(stock, _stock_faults(stock))
    stock.save()
    _tell(owner, "stock", by, at)
    return stock


@transaction.atomic
def stock_clear(*, job: Job, at: datetime, by: Person | None = None) -> None:
    """Let the shop's stock hold for this job again."""
    if Stock.objects.filter(job=job).delete()[0]:
        _tell(job, "stock", by, at)


@transaction.atomic
def practice_set(
    *,
    owner: Shop | Job,
    values: Mapping[str, Fraction | None],
    at: datetime,
    by: Person | None = None,
) -> None:
    """Set the named numbers of `rules.practice`; None lets the farther level hold again."""
    faults = {name: fault for name, value in values.items() if (fault := _fault(name, value))}
    if faults:
        raise ValidationError(faults)
    shop, job = _of(owner)
    ShopNumber.objects.filter(shop=shop, job=job, name__in=list(values)).delete()
    ShopNumber.objects.bulk_create(
        ShopNumber(shop=shop, job=job, name=name, value=as_decimal(value, VALUE_PLACES))
        for name, value in values.items()
        if value is not None
    )
    in_force = practice_in_force(owner)
    if in_force.humidity_low > in_force.humidity_high:
        raise ValidationError({"humidity_high": "enter at least the driest month's"})
    _tell(owner, "own numbers", by, at)


def _of(owner: Shop | Job) -> tuple[Shop, Job | None]:
    return (owner, None) if isinstance(owner, Shop) else (owner.shop, owner)


def _stock_of(owner: Shop | Job) -> Stock:
    shop, job = _of(owner)
    stock = Stock.objects.filter(shop=shop, job=job).first()
    if stock is not None:
        return stock
    held = stock_in_force(shop)
    return Stock(
        shop=shop,
        job=job,
        screw_lengths=held.screw_lengths,
        knob_screw_lengths=held.knob_screw_lengths,
        slide_lengths=held.slide_lengths,
        knob_thread=held.knob_thread,
        knob_thread_depth=held.knob_thread_depth,
    )


def _stock_faults(stock: Stock) -> dict[str, str]:
    lists = ("screw_lengths", "knob_screw_lengths", "slide_lengths")
    many = f"enter at most {MOST_LENGTHS} lengths"
    return {name: many for name in lists if len(getattr(stock, name)) > MOST_LENGTHS}


def _fault(name: str, value: Fraction | None) -> str | None:
    if name not in NUMBER_NAMES:
        return "this is none of the shop's numbers"
    if value is None:
        return None
    least, most = PLAIN.get(name, (Fraction(0), Fraction(MOST_VALUE)))
    if not least <= value <= most:
        return f"enter a number from {exact(least)} to {exact(most)}"
    if value == 0 and name in POSITIVE:
        return "enter a size above zero"
    try:
        as_decimal(value, VALUE_PLACES)
    except LengthError:
        return "this number can't be kept exactly; enter it as a decimal"
    return None


def _tell(owner: Shop | Job, what: str, by: Person | None, at: datetime) -> None:
    if isinstance(owner, Shop):
        shop_changed(shop=owner, text=f"Changed the shop's {what}", by=by, at=at)
    else:
        job_changed(job=owner, text=f"Changed the job's {what}", by=by, at=at)
