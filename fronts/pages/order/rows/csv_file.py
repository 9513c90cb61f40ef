"""The hardware list as a CSV file that a spreadsheet opens as it stands."""

from django.http import HttpResponse

from fronts.figures.purchase import amount_words
from fronts.pages.order.rows.lines import HardwareList, Row
from fronts.pages.shared.csv_cells import csv_bytes
from fronts.pages.shared.file_answers import attachment
from fronts.selectors.approved_items import ItemOrdered
from fronts.selectors.orders import OrderLine
from shopjobs.models import Job

COLUMNS = (
    "item", "need", "spares", "why", "fronts", "checked by", "checked at",
    "need when checked", "change", "note", "unit", "approved", "sent", "came", "from stock",
)  # fmt: skip
NONE = ("", "", "", "")
"""Of a line that nobody approved."""


def order_csv(job: Job, hardware: HardwareList) -> HttpResponse:
    """The list with one line an item."""
    rows = [COLUMNS, *(_cells(row) for row in hardware.rows)]
    return attachment(csv_bytes(rows), "text/csv; charset=utf-8", f"{job.number} order.csv")


def _cells(row: Row) -> tuple[str, ...]:
    line = row.line
    return (
        line.item,
        str(line.need),
        str(line.spares),
        line.why,
        row.where,
        line.checked_by if line.is_checked else "",
        _minute(line) if line.is_checked else "",
        str(line.was) if line.is_checked else "",
        row.change,
        line.note,
        line.unit,
        *(_ordered(row.item) if row.item else NONE),
    )


def _ordered(item: ItemOrdered) -> tuple[str, ...]:
    amounts = item.ordered, item.sent, item.came
    return (*map(str, amounts), amount_words(item.stocked, "") if item.stocked else "0")


def _minute(line: OrderLine) -> str:
    return line.checked_at.isoformat(timespec="minutes") if line.checked_at else ""
