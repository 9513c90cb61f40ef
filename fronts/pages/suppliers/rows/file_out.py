"""All offers of a shop as a file: CSV, or a spreadsheet's own."""

from collections.abc import Iterator
from decimal import Decimal

from django.http import HttpResponse

from fronts.pages.shared.csv_cells import csv_bytes
from fronts.pages.shared.file_answers import attachment
from fronts.pages.shared.xlsx_cells import KIND, xlsx_bytes
from fronts.pages.suppliers.rows.columns import COLUMNS, cells_of, texts_of
from fronts.selectors.offers import offers_by_name
from shopjobs.models import Shop

NAME = "suppliers and prices"
Cells = dict[str, str | Decimal | int]


def offer_rows(shop: Shop) -> Iterator[Cells]:
    """A row for each offer, by item, the preferred one first."""
    for name, offers in offers_by_name(shop).items():
        for offer in offers:
            yield cells_of(name, offer.supplier.name, offer.facts, preferred=offer is offers[0])


def offers_csv(shop: Shop) -> HttpResponse:
    """Every offer as a line under the headings."""
    rows = [list(COLUMNS.values()), *(texts_of(row) for row in offer_rows(shop))]
    return attachment(csv_bytes(rows), "text/csv; charset=utf-8", f"{NAME}.csv")


def offers_xlsx(shop: Shop) -> HttpResponse:
    """The same as a spreadsheet; prices, packs and days are numbers there."""
    rows: list[list[str | int | Decimal]] = [list(COLUMNS.values())]
    rows += [list(row.values()) for row in offer_rows(shop)]
    return attachment(xlsx_bytes(rows, NAME), KIND, f"{NAME}.xlsx")
