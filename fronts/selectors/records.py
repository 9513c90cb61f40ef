"""What people recorded on a job, as a job file carries it."""

from collections.abc import Iterable

from fronts.facts.rows import from_row
from fronts.models import FitRecord, FrontCut, OrderCheck, OrderList, WorkTick
from fronts.rules.cut_fronts import RecordedCut
from fronts.rules.fits import FitFacts, RecordedFit
from fronts.rules.order_facts import line_facts_from
from fronts.rules.receipts import ReceiptFacts, RecordedReceipt
from fronts.rules.records import CheckFacts, RecordedCheck, RecordedTick, Records
from fronts.rules.snags import RecordedSnag, SnagDone, SnagFacts
from fronts.selectors.cuts import cut_to_of
from fronts.selectors.kitchens import front_keys_of
from fronts.selectors.receipts import receipts_of
from fronts.selectors.snags import snags_of
from shopjobs.models import Job
from shopjobs.selectors import names_in

Called = dict[int | None, str]
"""What the fronts of a job are called now, by their keys."""


def records_of(job: Job) -> Records:
    """Every record of its kind, the oldest first, and the hardware list in its order."""
    names = names_in(job.shop)
    called: Called = {key: label for label, key in front_keys_of(job).items()}
    return Records(
        fits=tuple(_fits(job, called, names)),
        checks=tuple(_checks(job, names)),
        receipts=tuple(_receipts(job, called, names)),
        snags=tuple(_snags(job, called, names)),
        cuts=tuple(_cuts(called, names)),
        ticks=tuple(_ticks(called, names)),
    )


def _fits(job: Job, called: Called, names: dict[int, str]) -> Iterable[RecordedFit]:
    rows = FitRecord.objects.filter(job=job).select_related("fitted_by")
    for row in rows.order_by("fitted_at", "pk"):
        gone = row.front_id not in called
        yield RecordedFit(
            front=row.label if gone else called[row.front_id],
            at=row.fitted_at,
            by=name_in(row.fitted_by_id, row.by, names),
            facts=from_row(FitFacts, row),
            gone=gone,
            hung=row.hung,
            fingerprint=row.fingerprint,
        )


def _checks(job: Job, names: dict[int, str]) -> Iterable[RecordedCheck]:
    """What stood on the list when it was begun, in its order, and then what is beside it."""
    rows = OrderCheck.objects.filter(job=job).select_related("checked_by").order_by("pk")
    checks = {row.item: row for row in rows}
    begun = OrderList.objects.filter(job=job).first()
    for item in dict.fromkeys([*(begun.items if begun else ()), *checks]):
        row = checks.get(item)
        if row is None:
            yield RecordedCheck(CheckFacts(item))
            continue
        yield RecordedCheck(
            facts=from_row(CheckFacts, row),
            at=row.checked_at,
            by=name_in(row.checked_by_id, row.by, names),
            fingerprint=row.fingerprint,
            against=line_facts_from(row.against) if row.against else None,
        )


def _receipts(job: Job, called: Called, names: dict[int, str]) -> Iterable[RecordedReceipt]:
    for row in receipts_of(job):
        gone = row.front_id not in called
        yield RecordedReceipt(
            front=row.label if gone else called[row.front_id],
            at=row.checked_at,
            by=name_in(row.checked_by_id, row.by, names),
            facts=from_row(ReceiptFacts, row),
            gone=gone,
        )


def _snags(job: Job, called: Called, names: dict[int, str]) -> Iterable[RecordedSnag]:
    for row in snags_of(job).prefetch_related(None):
        done = None
        if row.done_at is not None:
            done = SnagDone(row.done_at, name_in(row.done_by_id, row.settled_by, names))
        yield RecordedSnag(
            facts=from_row(SnagFacts, row),
            at=row.raised_at,
            changed=row.changed_at,
            by=name_in(row.raised_by_id, row.by, names),
            front=called.get(row.front_id, ""),
            cabinet=row.cabinet.label if row.cabinet else "",
            who=name_in(row.assigned_to_id, row.who, names),
            done=done,
        )


def _cuts(called: Called, names: dict[int, str]) -> Iterable[RecordedCut]:
    rows = FrontCut.objects.filter(front__in=[*called]).select_related("cut_by")
    for row in rows.order_by("cut_at", "pk"):
        by = name_in(row.cut_by_id, row.by, names)
        yield RecordedCut(called[row.front_id], row.cut_at, by, cut_to_of(row))


def _ticks(called: Called, names: dict[int, str]) -> Iterable[RecordedTick]:
    rows = WorkTick.objects.filter(front__in=[*called]).select_related("ticked_by")
    for row in rows.order_by("ticked_at", "pk"):
        by = name_in(row.ticked_by_id, row.by, names)
        yield RecordedTick(called[row.front_id], row.step, row.ticked_at, by)


def name_in(person: int | None, shown: str, names: dict[int, str]) -> str:
    """A name that leads back to the person, where the record has one of the shop."""
    return shown if person is None else names.get(person, shown)
