"""What the shop keeps on the shelf, as a job file gives it."""

from dataclasses import replace

from fronts.jobfile.reader import Place, Record
from fronts.jobfile.stated import given, keys_of
from fronts.rules.job_facts import Stock
from fronts.rules.standards import COMMON_STOCK


def stock(record: Record) -> Stock:
    """What key `stock` says; what it leaves out is as in `COMMON_STOCK`."""
    return record.take("stock", _stock) or COMMON_STOCK


def _stock(place: Place) -> Stock:
    record = Record(place, keys_of(Stock))
    return replace(COMMON_STOCK, **given(Stock, record))
