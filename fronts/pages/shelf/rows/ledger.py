"""What happened to a thing in stock, step by step."""

from dataclasses import dataclass
from datetime import datetime

from fronts.models import StockEntry
from fronts.models.shelf import COUNTED, GIVEN_BACK, LAID_BY, RECEIVED
from fronts.rules.shelf import in_words


@dataclass(frozen=True, slots=True)
class LedgerRow:
    """One step: how much more or less there is by it, or moved; who did it, and why."""

    at: datetime
    what: str
    amount: str
    who: str
    why: str


def ledger_row(entry: StockEntry, unit: str) -> LedgerRow:
    """A step in words."""
    return LedgerRow(
        at=entry.entered_at,
        what=_what(entry),
        amount=_amount(entry, unit),
        who=entry.entered_by.shown_name,
        why=_why(entry),
    )


def _what(entry: StockEntry) -> str:
    if entry.kind == RECEIVED and entry.job is None:
        return "received, free"
    joined = "from" if entry.kind == GIVEN_BACK else "for"
    return entry.kind if entry.job is None else f"{entry.kind} {joined} {entry.job}"


def _amount(entry: StockEntry, unit: str) -> str:
    """With its sign where that changes what there is in all; `as before` of a count that agrees."""
    much = in_words(abs(entry.amount), unit)
    if entry.kind in (LAID_BY, GIVEN_BACK):
        return much
    if entry.kind == COUNTED and not entry.amount:
        return "as before"
    return f"+{much}" if entry.amount > 0 else f"\N{MINUS SIGN}{much}"


def _why(entry: StockEntry) -> str:
    """The reason that was given; of what came, from whom."""
    if entry.arrival is None:
        return entry.reason
    note = f": {entry.arrival.note}" if entry.arrival.note else ""
    return f"from {entry.arrival.line.sending.supplier}{note}"
