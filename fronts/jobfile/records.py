"""Records of fit and order checks, as a job file gives them since version 2.

An entry of `fits` says `front`, `at` and `by`, and what was measured: `gaps` and `planned`
(each side in one figure, or at both its ends), `state`, `note`, and `was`: the front's sizes
and hand as they were. Beside that, where it is so:
`called` (what the front was called then), `gone` (the front is no longer there), `hung` and
`fingerprint` (short names of what hung, and of the schedule).

An entry of `checks` says `item`, `need`, `at`, `by`, `note`, `fingerprint`, `against` (what the
line depended on then, see `checked_against`) and `open` (it holds a note and is not checked);
with `item` alone it stood on the list when somebody began to go through it, and nobody has
checked it.

An entry of `receipts` says `front`, `at`, `by`, `note`, `called` and `gone` likewise, and in
`came` what its maker was told of a bought front that came. Of `snags`, see `snags_json`;
of `cuts` and `ticks`, `work_json`.
"""

from fronts.jobfile import sizes, values
from fronts.jobfile.checked_against import checked_against
from fronts.jobfile.json_text import Keys
from fronts.jobfile.reader import Place, Record
from fronts.jobfile.snags_json import snags
from fronts.jobfile.stated import keys_of, stated, thing
from fronts.jobfile.work_json import cuts, ticks
from fronts.rules.bought_results import BoughtFront
from fronts.rules.fits import ENDS, FitFacts, Gaps, RecordedFit, end_names
from fronts.rules.kinds import SIDES
from fronts.rules.kitchen import Kitchen
from fronts.rules.labels import front_labels_in
from fronts.rules.lengths import Mm
from fronts.rules.limits import (
    LONGEST_FRONT_LABEL,
    LONGEST_NAME,
    LONGEST_NOTE,
    MOST_CHECKS,
    MOST_FITS,
    MOST_FRONTS_IN_ALL,
)
from fronts.rules.receipts import ReceiptFacts, RecordedReceipt
from fronts.rules.records import CheckFacts, RecordedCheck, Records

KEYS = ("fits", "checks", "receipts", "snags", "cuts", "ticks")
LONGEST_FINGERPRINT = 64
_FIT_KEYS = (
    "front", "at", "by", "state", "gaps", "planned", "was", "note",
    "called", "gone", "hung", "fingerprint",
)  # fmt: skip
_RECEIPT_KEYS = ("front", "at", "by", "came", "note", "called", "gone")
_NO_FRONT = BoughtFront("door", Mm(1), Mm(1), Mm(1), "slab")
"""Read on with this where what came is at fault; the file is refused in the end."""
_label = values.label(LONGEST_FRONT_LABEL)
_name = values.text(LONGEST_NAME)
_fingerprint = values.text(LONGEST_FINGERPRINT)


def records(root: Record, kitchen: Kitchen) -> Records:
    """What these keys say, held against the kitchen that the file states."""
    fronts = None if root.place.page.faults.any else front_labels_in(kitchen.cabinets)
    fits = [_fit(Record(place, _FIT_KEYS), fronts) for place in root.entries("fits", MOST_FITS)]
    places = root.entries("receipts", MOST_FRONTS_IN_ALL)
    receipts = [_receipt(Record(place, _RECEIPT_KEYS), fronts) for place in places]
    return Records(
        fits=tuple(fits),
        checks=tuple(_checks(root)),
        receipts=tuple(receipts),
        snags=snags(root, kitchen),
        cuts=tuple(cuts(root, fronts)),
        ticks=tuple(ticks(root, fronts)),
    )


def _fit(record: Record, fronts: frozenset[str] | None) -> RecordedFit:
    front, gone = _front(record, fronts)
    facts = stated(
        FitFacts,
        record,
        label=record.take("called", _label) or front,
        gaps=record.take("gaps", _gaps) or Gaps(),
        planned=record.take("planned", _gaps) or Gaps(),
    )
    return RecordedFit(
        front=front,
        at=record.need("at", values.moment, values.SOME_TIME, values.WHEN),
        by=record.take("by", _name) or "",
        facts=facts,
        gone=gone,
        hung=record.take("hung", _fingerprint) or "",
        fingerprint=record.take("fingerprint", _fingerprint) or "",
    )


def _receipt(record: Record, fronts: frozenset[str] | None) -> RecordedReceipt:
    front, gone = _front(record, fronts)
    told = record.need("came", thing(BoughtFront), _NO_FRONT, "what its maker was told")
    return RecordedReceipt(
        front=front,
        at=record.need("at", values.moment, values.SOME_TIME, values.WHEN),
        by=record.take("by", _name) or "",
        facts=ReceiptFacts(
            label=record.take("called", _label) or front,
            front=told,
            note=record.take("note", values.text(LONGEST_NOTE)) or "",
        ),
        gone=gone,
    )


def _front(record: Record, fronts: frozenset[str] | None) -> tuple[str, bool]:
    """The front of a record, and whether it has gone since.

    `fronts` are those that there are, None where the kitchen is at fault itself.
    """
    front = record.need("front", _label, "", "the front's label")
    gone = record.take("gone", values.yes_or_no) or False
    if fronts is not None and record.sound("front", "gone") and not gone and front not in fronts:
        record.fault("front", "the label of a front of this kitchen, or gone: true")
    return front, gone


def _gaps(place: Place) -> Gaps | None:
    record = Record(place, SIDES)
    said: dict[str, Mm | None] = {}
    for side in SIDES:
        if isinstance(record.at(side).value, Keys):
            ends = Record(record.at(side), ENDS[side])
            for name, end in zip(end_names(side), ENDS[side], strict=True):
                said[name] = sizes.needed(ends, end, sizes.OR_ZERO)
        else:
            said[side] = sizes.given(record, side, sizes.OR_ZERO)
    return Gaps(**said)


def _checks(root: Record) -> list[RecordedCheck]:
    checks: list[RecordedCheck] = []
    items: set[str] = set()
    for place in root.entries("checks", MOST_CHECKS):
        record = Record(place, (*keys_of(CheckFacts), "at", "by", "fingerprint", "against"))
        check = _check(record)
        record.once("item", check.facts.item, items, "an item that no other check has")
        checks.append(check)
    return checks


def _check(record: Record) -> RecordedCheck:
    checked = record.has("at") or record.has("by") or record.has("need")
    if checked:
        for key, wanted in (("need", "how many were needed"), ("at", values.WHEN)):
            if not record.has(key):
                record.fault(key, wanted, "nothing")
    else:
        for key in ("note", "fingerprint", "open", "against"):
            if record.has(key):
                record.fault(key, f"no {key} without need, at and by")
    return RecordedCheck(
        facts=stated(CheckFacts, record),
        at=record.take("at", values.moment),
        by=record.take("by", _name) or "",
        fingerprint=record.take("fingerprint", _fingerprint) or "",
        against=record.take("against", checked_against),
    )
