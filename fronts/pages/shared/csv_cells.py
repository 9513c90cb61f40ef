"""Cells of a CSV file that a spreadsheet opens as it stands, and never as a formula."""

import csv
import io
import re
from collections.abc import Iterable

_START = "[=+\\-@＝＋－＠]"
_UNSEEN = "[\\s\ufeff\u200b]*"
_FORMULA = re.compile(rf"{_UNSEEN}{_START}|[\t\r\n]")
_INSIDE = re.compile(rf"([;\t\r\n]{_UNSEEN}[\"']*)({_START})")
"""What a spreadsheet could take for the start of a formula (OWASP, CSV injection).

Unseen signs may come before it. Inside a cell it begins anew after what some split lines at.
"""


def csv_bytes(rows: Iterable[Iterable[str]]) -> bytes:
    """A file of these rows; the mark at its start tells spreadsheets that it is UTF-8."""
    out = io.StringIO()
    out.write("\N{BYTE ORDER MARK}")
    writer = csv.writer(out)
    for row in rows:
        writer.writerow(plain(cell) for cell in row)
    return out.getvalue().encode()


def plain(cell: str) -> str:
    """The cell as text: what begins like a formula gets an apostrophe before it.

    So does what begins like that behind apostrophes of its own, so that none is lost in `said`.
    """
    inside = _INSIDE.sub(r"\1'\2", cell)
    return f"'{inside}" if _FORMULA.match(cell.lstrip("'")) else inside


def said(cell: str) -> str:
    """What a cell of such a file said before it was made plain."""
    bare = _MADE_PLAIN.sub(r"\1\2", cell)
    return bare[1:] if bare.startswith("'") and _FORMULA.match(bare.lstrip("'")) else bare


_MADE_PLAIN = re.compile(rf"([;\t\r\n]{_UNSEEN}[\"']*)'({_START})")
