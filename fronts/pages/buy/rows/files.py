"""What one supplier is asked for as a table for a spreadsheet, in CSV and XLSX alike."""

from decimal import Decimal

from django.http import HttpResponse

from fronts.figures.purchase import HEADS, Cell, PurchaseWords
from fronts.pages.shared.csv_cells import csv_bytes
from fronts.pages.shared.file_answers import attachment
from fronts.pages.shared.xlsx_cells import KIND, xlsx_bytes
from fronts.rules.money import number_text

SHEET = "Purchase"


def purchase_csv(words: PurchaseWords) -> HttpResponse:
    """A line for each thing, under the row that heads them."""
    rows = [list(HEADS), *([_text(cell) for cell in row.cells] for row in words.rows)]
    return attachment(csv_bytes(rows), "text/csv; charset=utf-8", f"{words.file_name}.csv")


def purchase_xlsx(words: PurchaseWords) -> HttpResponse:
    """The same as a spreadsheet's own file; amounts are numbers there."""
    rows: list[list[Cell]] = [[*HEADS], *(row.cells for row in words.rows)]
    return attachment(xlsx_bytes(rows, SHEET), KIND, f"{words.file_name}.xlsx")


def _text(cell: Cell) -> str:
    return number_text(cell) if isinstance(cell, Decimal) else str(cell)
