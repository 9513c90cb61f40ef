"""Bought fronts that came, as a file says: those that are new, and none of them twice."""

from collections.abc import Iterable, Mapping

from fronts.facts.rows import columns_of, from_row
from fronts.models import FrontReceipt
from fronts.rules.receipts import ReceiptFacts, RecordedReceipt
from fronts.selectors.kitchens import front_keys_of
from fronts.services.recorded_names import named, who_of
from fronts.services.saving import checked_at, enter, saved
from shopjobs.models import Job


def receipts_add(
    job: Job,
    receipts: Iterable[RecordedReceipt],
    people: Mapping[str, int],
    before: Mapping[int, str],
) -> None:
    """The later of two receipts of one front holds; one of a front that has gone is kept.

    One that is there already is of the front that the file says; one that the file does not
    hold finds its front by what that was called `before`.
    """
    fronts = front_keys_of(job)
    new = {(one.at, people.get(one.by, one.by), one.facts): one for one in receipts}
    held: dict[int, FrontReceipt] = {}
    for row in FrontReceipt.objects.filter(job=job).order_by("checked_at", "pk"):
        said = new.pop(
            (
                row.checked_at,
                who_of(row.checked_by_id, row.checked_by_name, people),
                from_row(ReceiptFacts, row),
            ),
            None,
        )
        label = before.get(row.pk, row.label) if said is None else _stands_at(said)
        key = fronts.get(label)
        enter(row, {"front_id": None if key in held else key})
        saved(row)
        if key is not None:
            held.setdefault(key, row)
    for (at, who, facts), said in new.items():
        key = fronts.get(_stands_at(said))
        there = None if key is None else held.get(key)
        if there is not None and there.checked_at >= at:
            continue
        row = FrontReceipt(job=job, front_id=key) if there is None else there
        mark = {"checked_at": at, "fingerprint": facts.front.short_name}
        enter(row, {**columns_of(facts), **mark, **named("checked_by", who)})
        checked_at(row, f"receipt of {said.front}")
        saved(row)
        if key is not None:
            held[key] = row


def _stands_at(receipt: RecordedReceipt) -> str:
    return "" if receipt.gone else receipt.front
