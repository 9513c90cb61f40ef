"""The door maker's list as a table for a spreadsheet, in CSV and XLSX alike."""

from django.http import HttpResponse

from fronts.figures.bought import bought_cells, bought_heads
from fronts.pages.bought.rows.lines import BoughtList, Row
from fronts.pages.shared.csv_cells import csv_bytes
from fronts.pages.shared.file_answers import attachment
from fronts.pages.shared.xlsx_cells import KIND, xlsx_bytes
from shopjobs.models import Job

Table = list[list[str | int]]


def table(bought: BoughtList, unit: str) -> Table:
    """A line of the list in each row, under the row that heads them."""
    heads = ["quantity", "fronts", *bought_heads(unit), "came", "still to come", "checked off"]
    return [[*heads], *(_cells(row, unit) for row in bought.rows)]


def bought_csv(job: Job, bought: BoughtList) -> HttpResponse:
    """The list as a CSV file."""
    rows = ([str(cell) for cell in row] for row in table(bought, job.unit))
    return attachment(csv_bytes(rows), "text/csv; charset=utf-8", f"{job.number} bought fronts.csv")


def bought_xlsx(job: Job, bought: BoughtList) -> HttpResponse:
    """The list as a spreadsheet file."""
    content = xlsx_bytes(table(bought, job.unit), "Bought fronts")
    return attachment(content, KIND, f"{job.number} bought fronts.xlsx")


def _cells(row: Row, unit: str) -> list[str | int]:
    line = row.received.line
    marks = (
        " ".join(filter(None, (f"{one.count}, {one.at:%Y-%m-%d}", one.by, one.note)))
        for one in row.came
    )
    return [
        row.count, ", ".join(line.labels), *bought_cells(line.front, unit),
        row.received.came, row.missing, "; ".join(marks),
    ]  # fmt: skip
