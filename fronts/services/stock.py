"""What is kept on the shelf, and the shop's own numbers."""

from collections.abc import Mapping
from datetime import datetime
from decimal import Decimal
from fractions import Fraction

from django.core.exceptions import ValidationError

from fronts.facts.rows import columns_of
from fronts.models import ShopNumber, Stock
from fronts.rules.job_facts import Stock as StockFacts
from fronts.rules.lengths import LengthError, as_decimal, exact
from fronts.rules.practice import NUMBER_NAMES, PLAIN, POSITIVE, PRACTICE
from fronts.rules.validity import stock_faults
from fronts.services.owned import list_faults, own_row, shop_and_job
from fronts.services.saving import checked, enter, job_changed, saved, ways_changed
from fronts.services.what_goes import settled_in
from fronts.snapshot.stock import practice_in_force
from shopjobs.models import Job, Person, Shop
from shopjobs.services.recording import deleted, recorded

VALUE_PLACES = 10
MOST_VALUE = 20_000
"""With its places, 15 digits: what SQLite keeps exactly."""


@recorded
def stock_set(
    *, owner: Shop | Job, stock: StockFacts, at: datetime, by: Person | None = None
) -> Stock:
    """Set all that is in stock."""
    row = own_row(Stock, owner)
    enter(row, columns_of(stock))
    checked(row, stock_faults(stock) | list_faults(stock))
    saved(row)
    ways_changed(owner=owner, what="stock", by=by, at=at)
    return row


@recorded
def stock_clear(*, job: Job, at: datetime, by: Person | None = None) -> None:
    """Let the shop's stock hold for this job again."""
    before = settled_in(job)
    if deleted(Stock.objects.filter(job=job)):
        went = ["this job's own lengths", *before.lost(job)]
        text = "Took the shop's stock for this job again"
        job_changed(job=job, text=text, by=by, at=at, went=went)


@recorded
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
    shop, job = shop_and_job(owner)
    rows = {row.name: row for row in ShopNumber.objects.filter(shop=shop, job=job)}
    for name, value in values.items():
        if value is not None:
            row = rows.get(name) or ShopNumber(shop=shop, job=job, name=name)
            enter(row, {"value": _value(name, value)})
            saved(row)
    deleted(rows[name] for name, value in values.items() if value is None and name in rows)
    in_force = practice_in_force(owner)
    if in_force.humidity_low > in_force.humidity_high:
        raise ValidationError({"humidity_high": "enter at least the driest month's"})
    ways_changed(owner=owner, what="own numbers", by=by, at=at)


def _value(name: str, value: Fraction) -> Decimal | None:
    """What is stored of a number: nothing of the usual one, so that any of them can be said."""
    return None if value == getattr(PRACTICE, name) else as_decimal(value, VALUE_PLACES)


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
        _value(name, value)
    except LengthError:
        return "this number can't be kept exactly; enter it as a decimal"
    return None
