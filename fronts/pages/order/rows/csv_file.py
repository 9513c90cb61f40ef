"""The hardware list as a CSV file that a spreadsheet opens as it stands."""

import csv
import io
import re

from django.http import HttpResponse

from fronts.pages.order.rows.lines import HardwareList, Row
from fronts.pages.shared.file_answers import attachment
from shopjobs.models import Job

COLUMNS = (
    "item", "need", "spares", "why", "fronts", "checked by", "checked at", "need when checked",
    "change", "note",
)  # fmt: skip
_START = "[=+\\-@＝＋－＠]"
_UNSEEN = "[\\s\ufeff\u200b]*"
_FORMULA = re.compile(rf"{_UNSEEN}{_START}|[\t\r\n]")
_INSIDE = re.compile(rf"([;\t\r\n]{_UNSEEN}[\"']*)({_START})")
"""What a spreadsheet could take for the start of a formula (OWASP, CSV injection).

Unseen signs may come before it. Inside a cell it begins anew after what some split lines at.
"""


def order_csv(job: Job, hardware: HardwareList) -> HttpResponse:
    """The list with one line an item; the mark at its start tells spreadsheets that it is UTF-8."""
    out = io.StringIO()
    out.write("\N{BYTE ORDER MARK}")
    writer = csv.writer(out)
    writer.writerow(COLUMNS)
    for row in hardware.rows:
        writer.writerow(plain(cell) for cell in _cells(row))
    return attachment(out.getvalue().encode(), "text/csv; charset=utf-8", f"{job.number} order.csv")


def plain(cell: str) -> str:
    """The cell as text: what begins like a formula gets an apostrophe before it."""
    inside = _INSIDE.sub(r"\1'\2", cell)
    return f"'{inside}" if _FORMULA.match(cell) else inside


def _cells(row: Row) -> tuple[str, ...]:
    line = row.line
    return (
        line.item,
        str(line.need),
        str(line.spares),
        line.why,
        row.where,
        line.checked_by,
        line.checked_at.isoformat(timespec="minutes") if line.checked_at else "",
        "" if line.was is None else str(line.was),
        row.change,
        line.note,
    )
