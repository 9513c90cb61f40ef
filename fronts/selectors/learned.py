"""How a shop's fronts fitted, over all its jobs."""

from collections.abc import Iterator

from fronts.facts.rows import from_row
from fronts.models import FitRecord
from fronts.rules.fits import FitFacts, hangs_still
from fronts.rules.front_states import DONE
from fronts.rules.hanging_method import HangingMethod, hanging_method
from fronts.rules.learned import Fitted
from fronts.rules.schedule import schedule
from fronts.selectors.kitchens import front_keys_of, placed_kitchen_of
from fronts.selectors.records import name_in
from shopjobs.models import Job, Shop
from shopjobs.selectors import names_in

LATEST_JOBS = 12
"""How a front is hung is worked out of its kitchen, which takes time: for the latest jobs only."""


def fitted_fronts(shop: Shop) -> Iterator[Fitted]:
    """The latest word on each front of the shop's jobs that is done."""
    records = _latest(shop)
    methods = _methods(records)
    names = names_in(shop)
    for record in records:
        facts = from_row(FitFacts, record)
        if facts.state == DONE.word:
            by = name_in(record.fitted_by_id, record.by, names)
            yield Fitted(by, methods.get(record.pk), facts.gaps, facts.planned)


def _latest(shop: Shop) -> list[FitRecord]:
    """The latest record of each front, and of each that has gone since by what it was called."""
    rows = FitRecord.objects.filter(job__shop=shop, job__deleted_at=None)
    latest: dict[tuple[int, int | str], FitRecord] = {}
    for row in rows.select_related("fitted_by", "job__shop").order_by("fitted_at", "pk"):
        latest[row.job_id, row.front_id or row.label] = row
    return list(latest.values())


def _methods(records: list[FitRecord]) -> dict[int, HangingMethod | None]:
    """How the fronts are hung that still hang as they were recorded, by their records."""
    newest = sorted(records, key=lambda record: record.fitted_at, reverse=True)
    jobs = {record.job_id: record.job for record in newest if record.front_id is not None}
    found: dict[int, HangingMethod | None] = {}
    for job in list(jobs.values())[:LATEST_JOBS]:
        by_front = {record.front_id: record for record in records if record.job_id == job.pk}
        found |= _methods_in(job, by_front)
    return found


def _methods_in(
    job: Job, records: dict[int | None, FitRecord]
) -> Iterator[tuple[int, HangingMethod | None]]:
    worked, keys = schedule(placed_kitchen_of(job)), front_keys_of(job)
    fittings = worked.fittings_of(worked.fronts)
    for front in worked.fronts:
        record = records.get(keys[front.label])
        if record is not None and hangs_still(record.hung, front):
            yield record.pk, hanging_method(front, fittings.get(front.label))
