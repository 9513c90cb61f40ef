"""A table as a spreadsheet file: text stays text, numbers are numbers; the door to it."""

import io
from collections.abc import Sequence
from decimal import Decimal

from xlsxwriter import Workbook

from fronts.pages.shared.csv_cells import plain

WIDEST = 40
"""Letters to which a column is opened at most."""
KIND = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"
_AS_TEXT = {
    "in_memory": True,
    "strings_to_formulas": False,
    "strings_to_urls": False,
    "strings_to_numbers": False,
}


def xlsx_bytes(rows: Sequence[Sequence[str | int | Decimal]], name: str) -> bytes:
    """A file of one sheet of this name; its first row heads the others and stays in sight.

    Cells are made plain as in a CSV file, so that a copy saved as one holds no formula either.
    """
    out = io.BytesIO()
    with Workbook(out, _AS_TEXT) as book:
        sheet, bold = book.add_worksheet(name), book.add_format({"bold": True})
        for down, row in enumerate(rows):
            for across, cell in enumerate(row):
                if isinstance(cell, int | Decimal):
                    sheet.write_number(down, across, cell)
                else:
                    sheet.write_string(down, across, plain(cell), None if down else bold)
        sheet.freeze_panes(1, 0)
        for across, cells in enumerate(zip(*rows, strict=True)):
            longest = max(len(str(cell)) for cell in cells)
            sheet.set_column(across, across, min(longest, WIDEST) + 1)
    return out.getvalue()
