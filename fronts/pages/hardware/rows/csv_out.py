"""Items of one kind as a CSV file, in the shop's order."""

from collections.abc import Sequence
from typing import Any

from django.http import HttpResponse

from fronts.facts.rows import columns_of
from fronts.pages.hardware.rows.csv_columns import columns_of_kind
from fronts.pages.shared.csv_cells import csv_bytes
from fronts.pages.shared.file_answers import attachment


def items_csv(kind: type, items: Sequence[Any], *, unit: str, name: str) -> HttpResponse:
    """The file, one line an item; its lengths are in the unit that its headings say."""
    columns = columns_of_kind(kind)
    rows = [[column.heading(unit) for column in columns]]
    for item in items:
        values = columns_of(item)
        rows.append([column.written(values[column.name], unit) for column in columns])
    return attachment(csv_bytes(rows), "text/csv; charset=utf-8", name)
