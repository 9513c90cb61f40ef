"""What a file of offers would change, before anything is changed."""

import hashlib
from collections.abc import Collection, Sequence
from dataclasses import dataclass

from fronts.pages.suppliers.rows.columns import COLUMNS, cells_of, texts_of
from fronts.pages.suppliers.rows.file_in import Cells, LineFault, read_lines
from fronts.pages.suppliers.rows.file_out import offer_rows
from fronts.rules.offers import pack_words
from fronts.selectors.offers import usual_currency
from fronts.services.offers_file import PREFERRED, ComparedLine, OfferLine, compared
from shopjobs.models import Shop


@dataclass(frozen=True, slots=True)
class Change:
    """One column of an offer, what it says and what it would say."""

    called: str
    was: str
    now: str


@dataclass(frozen=True, slots=True)
class PreviewRow:
    """A line that is new or changes something."""

    number: int
    item: str
    supplier: str
    offer: str
    is_new: bool
    changes: tuple[Change, ...]
    notes: tuple[str, ...]
    left_out: bool


@dataclass(frozen=True, slots=True)
class Preview:
    """All that a file says: what would change, what would not, and what can't be read."""

    rows: tuple[PreviewRow, ...]
    unchanged: int
    faults: tuple[LineFault, ...]

    @property
    def new(self) -> int:
        return sum(row.is_new for row in self.rows)

    @property
    def changed(self) -> int:
        return len(self.rows) - self.new

    @property
    def bad(self) -> int:
        """Lines that can't be read."""
        return len({fault.number for fault in self.faults})


def state_of(shop: Shop) -> str:
    """A short name of all offers as they are: another one once anything of them is."""
    said = [usual_currency(shop), *(texts_of(row) for row in offer_rows(shop))]
    return hashlib.sha256(repr(said).encode()).hexdigest()


def preview(shop: Shop, cells: Cells, left_out: Collection[int]) -> Preview:
    """What the cells of a file would change in the shop's offers."""
    read = read_lines(cells, usual_currency(shop))
    told = list(compared(shop, read.lines))
    rows = [
        _row(each, left_out=each.line.number in left_out) for each in told if not each.is_unchanged
    ]
    return Preview(tuple(rows), len(told) - len(rows), read.faults)


def lines_to_take(shop: Shop, cells: Cells, left_out: Collection[int]) -> list[OfferLine]:
    """The lines that can be read, but for those that are left out."""
    lines: Sequence[OfferLine] = read_lines(cells, usual_currency(shop)).lines
    return [line for line in lines if line.number not in left_out]


def _row(told: ComparedLine, *, left_out: bool) -> PreviewRow:
    line, facts = told.line, told.line.facts
    notes = []
    if told.is_new_supplier:
        notes.append("a supplier that you have not entered yet")
    if told.is_new_item:
        notes.append("an item that is not on your list yet")
    code = f"code {facts.code}, " if facts.code else ""
    return PreviewRow(
        number=line.number,
        item=line.item,
        supplier=line.supplier,
        offer=f"{code}{pack_words(facts.pack, facts.unit)} for {facts.price}",
        is_new=told.offer is None,
        changes=tuple(_changes(told)),
        notes=tuple(notes),
        left_out=left_out,
    )


def _changes(told: ComparedLine) -> list[Change]:
    if told.offer is None:
        return []
    first = PREFERRED not in told.differs
    was = cells_of("", "", told.offer.facts, preferred=first and told.line.preferred)
    now = cells_of("", "", told.line.facts, preferred=told.line.preferred)
    sides = zip(COLUMNS, texts_of(was), texts_of(now), strict=True)
    return [Change(COLUMNS[name], old, new) for name, old, new in sides if old != new]
