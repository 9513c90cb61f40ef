"""Records that a file brings to a job: those that are new, and none of them twice."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import datetime

from fronts.facts.rows import columns_of, from_row
from fronts.models import FitRecord, FrontReceipt, OrderCheck
from fronts.rules.fits import FitFacts, RecordedFit
from fronts.rules.records import RecordedCheck, Records
from fronts.selectors.kitchens import front_keys_of
from fronts.services.order_lists import items_stand
from fronts.services.recorded_names import Who, named, who_of
from fronts.services.recorded_receipts import receipts_add
from fronts.services.recorded_snags import SnagStood, snags_add, snags_stood
from fronts.services.recorded_work import WorkStood, work_add, work_stood
from fronts.services.saving import checked_at, enter, saved
from shopjobs.models import Job
from shopjobs.selectors import keys_by_name
from shopjobs.services.recording import made


@dataclass(frozen=True, slots=True)
class Same:
    """What makes two records of fit the same one."""

    at: datetime
    who: Who
    facts: FitFacts


@dataclass(frozen=True, slots=True)
class Recorded:
    """What the fronts of a job's records are called, by the records' keys."""

    fits: Mapping[int, str]
    receipts: Mapping[int, str]
    snags: Mapping[int, SnagStood]
    work: tuple[WorkStood, ...] = ()


NOTHING_RECORDED = Recorded({}, {}, {})


def fronts_recorded(job: Job) -> Recorded:
    """What the front of each record of a job is called, before a file replaces it."""
    called = {key: label for label, key in front_keys_of(job).items()}

    def of(table: type[FitRecord] | type[FrontReceipt]) -> dict[int, str]:
        rows = table._default_manager.filter(job=job, front__isnull=False)
        return {key: called[front] for key, front in rows.values_list("pk", "front_id")}

    return Recorded(of(FitRecord), of(FrontReceipt), snags_stood(job), work_stood(job))


def records_add(*, job: Job, records: Records, before: Recorded) -> None:
    """Add what a file says to what was recorded on the job, whose kitchen is now the file's.

    A record that is there already is kept, and is of the front that the file says; one that
    the file does not hold finds its front by what it was called `before`, else by its label.
    """
    people = keys_by_name(job.shop)
    _add_fits(job, records.fits, people, before.fits)
    _add_checks(job, records.checks, people)
    receipts_add(job, records.receipts, people, before.receipts)
    snags_add(job, records.snags, people, before.snags)
    work_add(job, records, people, before.work)


def _add_fits(
    job: Job, fits: Iterable[RecordedFit], people: Mapping[str, int], fitted: Mapping[int, str]
) -> None:
    fronts = front_keys_of(job)
    new = {Same(fit.at, people.get(fit.by, fit.by), fit.facts): fit for fit in fits}
    for row in FitRecord.objects.filter(job=job, front=None).order_by("pk"):
        fit = new.pop(_same(row, people), None)
        label = fitted.get(row.pk, row.label) if fit is None else _hangs_at(fit)
        enter(row, {"front_id": fronts.get(label)})
        saved(row)
    rows = [
        FitRecord(
            job=job, front_id=fronts.get(_hangs_at(fit)), fitted_at=same.at, hung=fit.hung,
            fingerprint=fit.fingerprint, **named("fitted_by", same.who), **columns_of(fit.facts),
        )
        for same, fit in new.items()
    ]  # fmt: skip
    for row in rows:
        checked_at(row, f"record of fit of {row.label}, {row.fitted_at:%Y-%m-%d %H:%M}")
    made(FitRecord, rows)


def _same(row: FitRecord, people: Mapping[str, int]) -> Same:
    who = who_of(row.fitted_by_id, row.fitted_by_name, people)
    return Same(row.fitted_at, who, from_row(FitFacts, row))


def _hangs_at(fit: RecordedFit) -> str:
    return "" if fit.gone else fit.front


def _add_checks(job: Job, checks: Iterable[RecordedCheck], people: Mapping[str, int]) -> None:
    """The later of two marks of one item holds, as where somebody checks it again."""
    held = {row.item: row for row in OrderCheck.objects.filter(job=job)}
    items = []
    for check in checks:
        item, at = check.facts.item, check.at
        items.append(item)
        row = held.get(item)
        if at is None or (row is not None and row.checked_at >= at):
            continue
        row = row or OrderCheck(job=job)
        who = named("checked_by", people.get(check.by, check.by))
        against = check.against.as_json if check.against else None
        marked = {"checked_at": at, "fingerprint": check.fingerprint, "against": against}
        enter(row, {**columns_of(check.facts), **marked, **who})
        checked_at(row, f"check of {item}")
        saved(row)
    if items:
        items_stand(job=job, items=items)
