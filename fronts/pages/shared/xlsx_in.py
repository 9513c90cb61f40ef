"""A spreadsheet file read as text, cell by cell; the one door to openpyxl.

The file is a stranger's: what it holds unpacked is counted before anything is read, and XML
that names outside things is refused (openpyxl reads by defusedxml where that is installed).
"""

import io
import zipfile
from typing import Any
from warnings import catch_warnings, simplefilter

from openpyxl import load_workbook

from fronts.pages.shared.table_file import TableFault

MOST_UNPACKED = 30 * 1024 * 1024
MOST_MEMBERS = 200
OLE = b"\xd0\xcf\x11\xe0"
"""How an older spreadsheet begins, and one with a password (MS-CFB, Compound File Binary)."""
ZIP = b"PK\x03\x04"
DIGITS = ".15g"
"""A spreadsheet keeps numbers to 15 digits; what is behind them is noise of its arithmetic."""


def xlsx_rows(data: bytes, *, rows: int, columns: int) -> list[list[str]]:
    """The cells of the first sheet as text, at most one row and column more than asked for."""
    if data.startswith(OLE):
        raise TableFault(
            "This file has a password or is of an older kind; save it as XLSX without one, or CSV"
        )
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as packed:
            _refuse_bombs(packed)
        with catch_warnings():
            simplefilter("ignore")  # It warns of what it leaves out: styles, drawings.
            return _read(data, rows, columns)
    except TableFault:
        raise
    except Exception as fault:  # Whatever a broken file makes a reader of it raise.
        raise TableFault("This can't be read as a spreadsheet; save it anew, or as CSV") from fault


def _refuse_bombs(packed: zipfile.ZipFile) -> None:
    members = packed.infolist()
    if len(members) > MOST_MEMBERS or sum(each.file_size for each in members) > MOST_UNPACKED:
        raise TableFault("This spreadsheet holds far more than a list of offers; save it as CSV")


def _read(data: bytes, rows: int, columns: int) -> list[list[str]]:
    book = load_workbook(io.BytesIO(data), read_only=True, data_only=True, keep_links=False)
    try:
        sheet = book.worksheets[0]
        sheet.reset_dimensions()
        cells = sheet.iter_rows(max_row=rows + 1, max_col=columns + 1, values_only=True)
        return [[_text(cell) for cell in row] for row in cells]
    finally:
        book.close()


def _text(cell: Any) -> str:
    match cell:
        case None:
            return ""
        case bool():
            return "yes" if cell else "no"
        case float():
            return format(cell, DIGITS)
    return str(cell)
