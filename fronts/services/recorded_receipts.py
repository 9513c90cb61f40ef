"""Bought fronts that came, as a file says: those that are new, and none of them twice."""

from collections.abc import Iterable, Mapping

from fronts.facts.rows import columns_of, from_row
from fronts.models import FrontReceipt
from fronts.rules.receipts import ReceiptFacts, RecordedReceipt
from fronts.selectors.kitchens import front_keys_of
from fronts.services.recorded_names import Who, named
from fronts.services.saving import checked_at, enter, saved
from shopjobs.models import Job


def receipts_add(
    job: Job,
    receipts: Iterable[RecordedReceipt],
    people: Mapping[str, int],
    before: Mapping[int, str],
) -> None:
    """The later of two receipts of one front holds; one of a front that has gone is kept.

    What was checked off already finds its front by what that was called `before`.
    """
    fronts = front_keys_of(job)
    of_front: dict[int, FrontReceipt] = {}
    gone: set[tuple[object, ...]] = set()
    for row in FrontReceipt.objects.filter(job=job).order_by("checked_at", "pk"):
        key = fronts.get(before.get(row.pk, row.label))
        if key is None or key in of_front:
            name = row.checked_by_name
            who: Who = people.get(name, name) if row.checked_by_id is None else row.checked_by_id
            gone.add((row.checked_at, who, from_row(ReceiptFacts, row)))
            continue
        enter(row, {"front_id": key})
        saved(row)
        of_front[key] = row
    for receipt in receipts:
        who = people.get(receipt.by, receipt.by)
        key = None if receipt.gone else fronts.get(receipt.front)
        held = of_front.get(key) if key is not None else None
        same = (receipt.at, who, receipt.facts)
        if same in gone or (held is not None and held.checked_at >= receipt.at):
            continue
        row = held or FrontReceipt(job=job, front_id=key)
        mark = {"checked_at": receipt.at, "fingerprint": receipt.facts.front.short_name}
        enter(row, {**columns_of(receipt.facts), **mark, **named("checked_by", who)})
        checked_at(row, f"receipt of {receipt.front}")
        saved(row)
        if key is not None:
            of_front[key] = row
