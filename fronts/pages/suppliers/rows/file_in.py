"""A file of offers read: its lines as cells, then what each line says or what is wrong in it."""

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from typing import Any

from fronts.pages.shared.csv_cells import said
from fronts.pages.shared.table_file import Lines, TableFault, text_rows
from fronts.pages.shared.xlsx_in import OLE, ZIP, xlsx_rows
from fronts.pages.suppliers.rows.columns import (
    COLUMNS,
    NEEDED,
    Unreadable,
    read_count,
    read_pack,
    read_unit,
    read_yes,
)
from fronts.rules.limits import LONGEST_ITEM, LONGEST_NOTE, LONGEST_SUPPLIER
from fronts.rules.money import NoAmount, read_price
from fronts.rules.offers import LONGEST_CODE, MOST_OFFERS, OfferFacts, offer_faults
from fronts.services.offers_file import OfferLine
from shopjobs.words import fits_one_line

WIDEST = 40
"""Columns that a file may have; those of other headings are left out."""
MOST_LETTERS = 700_000
"""In all cells of a file together."""
Cells = list[tuple[int, list[str]]]
"""Lines by their numbers, each with a cell for every one of `COLUMNS`."""
_NAMES = {head: name for name, head in COLUMNS.items()}


@dataclass(frozen=True, slots=True)
class LineFault:
    """What is wrong in a line: in which column, what was found, and what is wanted."""

    number: int
    column: str
    found: str
    wanted: str


@dataclass(frozen=True, slots=True)
class FileRead:
    """The lines that can be read, and what is wrong in the others."""

    lines: tuple[OfferLine, ...]
    faults: tuple[LineFault, ...]


def cells_in(data: bytes) -> tuple[Cells, list[str]]:
    """The cells of a CSV or XLSX file, and the headings that are left out; `TableFault`."""
    rows = _rows(data)
    if not rows:
        raise TableFault("This file holds nothing; its first line names the columns")
    if len(rows) > MOST_OFFERS + 1:
        raise TableFault(f"This file has more than {MOST_OFFERS} lines; take it in in parts")
    if sum(len(cell) for _, row in rows for cell in row) > MOST_LETTERS:
        raise TableFault("This file holds far more than a list of offers")
    _, heads = rows[0]
    says = [_as_headed(head) for head in heads]
    places = _places(says)
    known = {"", *_NAMES}
    unknown = [head for head, name in zip(heads, says, strict=True) if name not in known]
    return [
        (number, [_at(cells, places.get(name)) for name in COLUMNS]) for number, cells in rows[1:]
    ], unknown


def _rows(data: bytes) -> Lines:
    if not data.startswith((ZIP, OLE)):
        return text_rows(data, rows=MOST_OFFERS + 1)
    read = xlsx_rows(data, rows=MOST_OFFERS + 1, columns=WIDEST)
    numbered = (
        (number, [said(cell).strip() for cell in row]) for number, row in enumerate(read, 1)
    )
    return [(number, row) for number, row in numbered if any(row)]


def _as_headed(head: str) -> str:
    """A heading as `COLUMNS` says it, whatever its capitals and kind of apostrophe."""
    return head.casefold().replace("’", "'")


def _places(found: Sequence[str]) -> dict[str, int]:
    """Where each column stands; one must be there, and none twice."""
    twice = [head for head in _NAMES if found.count(head) > 1]
    missing = [COLUMNS[name] for name in NEEDED if COLUMNS[name] not in found]
    if twice:
        raise TableFault(f"The column “{twice[0]}” is there twice")
    if missing:
        wanted = ", ".join(f"“{each}”" for each in missing)
        raise TableFault(f"The first line names the columns; missing: {wanted}")
    return {_NAMES[head]: place for place, head in enumerate(found) if head in _NAMES}


def _at(cells: Sequence[str], place: int | None) -> str:
    return cells[place] if place is not None and place < len(cells) else ""


def read_lines(cells: Iterable[tuple[int, Sequence[str]]], usual: str) -> FileRead:
    """What the lines say; `usual` is the currency of prices that say none."""
    lines: list[OfferLine] = []
    faults: list[LineFault] = []
    keys: dict[tuple[str, str, str], int] = {}
    first: dict[str, int] = {}
    for number, row in cells:
        line, wrong = _line(number, dict(zip(COLUMNS, row, strict=True)), usual)
        if line is not None:
            wrong = list(_twice(line, keys, first))
        if line is not None and not wrong:
            lines.append(line)
        faults += wrong
    return FileRead(tuple(lines), tuple(faults))


def _twice(
    line: OfferLine, keys: dict[tuple[str, str, str], int], first: dict[str, int]
) -> Iterator[LineFault]:
    """What another line says already: the same offer, or which one is preferred."""
    here = keys.setdefault(line.key, line.number)
    if here != line.number:
        found = f"{line.item}, {line.supplier}, {line.facts.code or 'no code'}"
        wanted = f"an offer once; line {here} says the same one"
        yield LineFault(line.number, COLUMNS["code"], found, wanted)
    elif line.preferred:
        here = first.setdefault(line.key[0], line.number)
        if here != line.number:
            wanted = f"one preferred offer of an item; line {here} is that already"
            yield LineFault(line.number, COLUMNS["preferred"], "yes", wanted)


def _line(
    number: int, cells: dict[str, str], usual: str
) -> tuple[OfferLine | None, list[LineFault]]:
    wrong: list[LineFault] = []

    def read(name: str, reads: Callable[[str], Any], *, empty: Any = ...) -> Any:
        cell = cells[name]
        if not cell and empty is not ...:
            return empty
        try:
            return reads(cell)
        except (Unreadable, NoAmount) as fault:
            wrong.append(LineFault(number, COLUMNS[name], cell[:WIDEST], str(fault)))
            return None

    item, supplier = read("item", _text(LONGEST_ITEM)), read("supplier", _text(LONGEST_SUPPLIER))
    facts = {
        "price": read("price", lambda cell: _price(cell, cells["currency"], usual)),
        "code": read("code", _text(LONGEST_CODE), empty=""),
        "pack": read("pack", read_pack),
        "unit": read("unit", read_unit),
        "lead_days": read("lead_days", read_count("whole working days, or nothing"), empty=None),
        "least": read("least", read_count("a whole number of packs, or nothing"), empty=1),
        "note": read("note", _text(LONGEST_NOTE), empty=""),
    }
    preferred = read("preferred", read_yes)
    if wrong:
        return None, wrong
    offer = OfferFacts(**facts)
    wrong = [
        LineFault(number, COLUMNS[name], cells[name][:WIDEST], wanted)
        for name, wanted in offer_faults(offer).items()
    ]
    return (None, wrong) if wrong else (OfferLine(number, item, supplier, offer, preferred), [])


def _price(cell: str, stated: str, usual: str) -> Any:
    if not cell:
        raise Unreadable("a price like 12.50")
    return read_price(cell, stated=stated, usual=usual)


def _text(longest: int) -> Callable[[str], str]:
    """What reads words on one line."""

    def read(cell: str) -> str:
        words = " ".join(cell.split())
        if not words:
            raise Unreadable("something; this is empty")
        if len(words) > longest:
            raise Unreadable(f"at most {longest} letters")
        if not fits_one_line(words):
            raise Unreadable("plain text; this holds a sign that can't be kept")
        return words

    return read
