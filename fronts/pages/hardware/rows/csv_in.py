"""A CSV file of items read back: all of it, or each fault with its line and column."""

import csv
import io
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from django.core.exceptions import ValidationError

from fronts.facts.rows import by_column, from_values
from fronts.pages.hardware.rows.csv_columns import Column, columns_of_kind, headings
from fronts.pages.shared.csv_cells import said
from fronts.rules.facts import Fact, incomplete
from fronts.rules.validity import faults_of
from shopjobs.forms.house import sentence

MOST_TOLD = 50
_MOST_LINES = 1000


class CsvFaults(ValueError):  # noqa: N818 - what is wrong in a file, all of it
    """Everything that is wrong in a file, a line each: `Line 3, code: …`."""

    def __init__(self, faults: Sequence[str]) -> None:
        super().__init__("; ".join(faults))
        self.faults = tuple(faults)


@dataclass(frozen=True, slots=True)
class _Line:
    number: int
    cells: list[str]


@dataclass(frozen=True, slots=True)
class _Header:
    """What stands over the cells: the columns in their order, each with what reads it.

    `left_out` is what holds of the columns that the file does not have.
    """

    columns: tuple[tuple[Column, Callable[[str], Any]], ...]
    left_out: Mapping[str, Any]

    def says(self, name: str) -> str:
        """What a column is called in its heading."""
        return next((column.says for column, _ in self.columns if column.name == name), name)


def items_from_csv(kind: type, data: bytes) -> list[Any]:
    """The items that a file says, in its order; `CsvFaults` with all that is wrong."""
    lines = list(_lines(data))
    if not lines:
        raise CsvFaults(["Line 1: a heading for each column is missing"])
    header = _header(kind, lines[0])
    items: list[Any] = []
    faults: list[str] = []
    codes: dict[str, int] = {}
    for line in lines[1:]:
        item, wrong = _item(kind, header, line)
        faults += [f"Line {line.number}, {where}: {what}" for where, what in wrong]
        if item is None:
            continue
        code = getattr(item, "code", None)
        if code is not None and code in codes:
            faults.append(f"Line {line.number}, code: {code} stands in line {codes[code]} already")
        codes.setdefault(code or "", line.number)
        items.append(item)
    if faults:
        raise CsvFaults(faults[:MOST_TOLD])
    return items


def one_from_csv(kind: type, data: bytes) -> Any:
    """The one thing that a file says, in the line under its headings."""
    things = items_from_csv(kind, data)
    if len(things) != 1:
        raise CsvFaults([f"One line stands under the headings; here are {len(things)}"])
    return things[0]


def _lines(data: bytes) -> Iterator[_Line]:
    """The lines that hold something; semicolons part them where the first line has more of them."""
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise CsvFaults(["This is no text in UTF-8; save it as CSV, UTF-8"]) from error
    first = text.partition("\n")[0]
    delimiter = ";" if first.count(";") > first.count(",") else ","
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=delimiter, strict=True)
    try:
        for count, cells in enumerate(reader):
            if count > _MOST_LINES:
                raise CsvFaults([f"This file has more than {_MOST_LINES} lines"])
            if any(cell.strip() for cell in cells):
                yield _Line(reader.line_num, [said(cell).strip() for cell in cells])
    except csv.Error as error:
        raise CsvFaults([f"Line {reader.line_num}: this can't be read as CSV ({error})"]) from error


def _header(kind: type, line: _Line) -> _Header:
    """Which column stands where, and its unit; each fault names the heading."""
    columns = columns_of_kind(kind)
    known = headings(columns)
    stand: list[tuple[Column, Callable[[str], Any]]] = []
    faults: list[str] = []
    seen: set[str] = set()
    for place, cell in enumerate(line.cells, start=1):
        found = known.get(cell.casefold())
        where = f"Line {line.number}, column {place}"
        if found is None:
            faults.append(f"{where}: no column is called “{cell[:40]}”")
        elif found[0].name in seen:
            faults.append(f"{where}: “{cell[:40]}” stands there twice")
        else:
            seen.add(found[0].name)
            stand.append((found[0], found[0].reader(found[1])))
    faults += [
        f"Line {line.number}: the column “{column.heading('mm')}” is missing"
        for column in columns
        if column.needed and column.name not in seen
    ]
    if faults:
        raise CsvFaults(faults)
    return _Header(tuple(stand), {column.name: _left_out(column.fact) for column in columns})


def _item(kind: type, header: _Header, line: _Line) -> tuple[Any, list[tuple[str, str]]]:
    """The item of a line, and what is wrong with it: in which column, and what."""
    count = len(header.columns)
    if len(line.cells) > count:
        return None, [(f"column {count + 1}", "there is no heading over this")]
    cells = [*line.cells, *[""] * (count - len(line.cells))]
    values = dict(header.left_out)
    wrong: list[tuple[str, str]] = []
    for (column, read), cell in zip(header.columns, cells, strict=True):
        try:
            values[column.name] = read(cell)
        except ValidationError as error:
            wrong.append((column.says, " ".join(error.messages).rstrip(".")))
    if not wrong:
        wrong = [(header.says(name), fault) for name, fault in incomplete(kind, values)]
    if wrong:
        return None, wrong
    item: Any = from_values(kind, values)
    faults = by_column(kind, faults_of(item))
    return item, [(header.says(name), sentence(fault)[:-1]) for name, fault in faults.items()]


def _left_out(fact: Fact) -> Any:
    """What holds of a fact whose column a file does not have."""
    return fact.default if fact.has_default else None
