"""What every hand-over of a purchase says, read back as a supplier would read it."""

import re
from decimal import Decimal
from typing import Any

from tests.pages.bought.test_files import csv_rows, xlsx_rows
from tests.pdf_text import page_texts

Said = list[tuple[str, int, Decimal]]
"""Each line's thing, how many packs, and its cost."""
PACKS, COST, CURRENCY = 2, 7, 8
_LINE = re.compile(r"(?P<packs>\d+) ×(?: pack of [^:]*:)? (?P<rest>.*) = (?P<cost>[\d.]+) [A-Z]{3}")


def of_csv(answer: Any) -> Said:
    """Under the heads."""
    _, *rows = csv_rows(answer)
    return _table(rows)


def of_xlsx(answer: Any) -> Said:
    """Under the heads."""
    _, *rows = xlsx_rows(answer)
    return _table(rows)


def _table(rows: list[list[str]]) -> Said:
    return [(row[0].lstrip("'"), int(row[PACKS]), Decimal(row[COST])) for row in rows]


def of_page(section: Any) -> list[tuple[int, Decimal]]:
    """The lines of a supplier's table on the page."""
    return [
        (int(row.one("td.packs").words), Decimal(row.one("td.cost").words.split()[0]))
        for row in section.all("tbody tr")
    ]


def of_message(text: str) -> list[tuple[int, Decimal]]:
    """The lines of a message."""
    found = (_LINE.fullmatch(line) for line in text.splitlines())
    return [(int(line["packs"]), Decimal(line["cost"])) for line in found if line]


def of_paper(page: Any) -> list[tuple[int, Decimal]]:
    """The lines of the sheet's HTML."""
    return [
        (int(row.one(".key").words), Decimal(row.one(".cost").words.split()[0]))
        for row in page.all("tr:has(.tick)")
    ]


def words_of_pdf(content: bytes) -> str:
    """All that a sheet says, spaces apart."""
    text = "".join(page_texts(content))
    return "".join(text.split())
