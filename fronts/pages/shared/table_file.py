"""A file of rows as people send it: text in any usual form."""

import csv
import io
from collections.abc import Iterator

from fronts.pages.shared.csv_cells import said

DELIMITERS = ",;\t"
UTF_16 = (b"\xff\xfe", b"\xfe\xff")
Lines = list[tuple[int, list[str]]]


class TableFault(ValueError):  # noqa: N818 - what is wrong with a file as a whole
    """Why nothing of a file can be read; says what to do."""


def text_rows(data: bytes, *, rows: int) -> Lines:
    """The rows of a text file that hold something, by their lines; at most one more than asked."""
    text = _decoded(data)
    if "\0" in text:
        raise TableFault("This is no text; save the list as CSV or XLSX")
    heading = text.lstrip("\r\n").partition("\n")[0]
    delimiter = max(DELIMITERS, key=heading.count)
    return list(_read(text, delimiter, rows))


def _read(text: str, delimiter: str, rows: int) -> Iterator[tuple[int, list[str]]]:
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=delimiter, strict=True)
    found = 0
    try:
        for cells in reader:
            if any(cell.strip() for cell in cells):
                yield reader.line_num, [said(cell).strip() for cell in cells]
                found += 1
            if found > rows:
                return
    except csv.Error as error:
        raise TableFault(f"Line {reader.line_num} can't be read as CSV ({error})") from error


def _decoded(data: bytes) -> str:
    """UTF-8 or, where that is marked, UTF-16; else as older spreadsheets write (Windows-1252)."""
    try:
        if data.startswith(UTF_16):
            return data.decode("utf-16")
        return data.decode("utf-8-sig")
    except UnicodeDecodeError:
        pass
    try:
        return data.decode("cp1252")
    except UnicodeDecodeError as error:
        raise TableFault("This is no text; save the list as CSV in UTF-8, or as XLSX") from error
