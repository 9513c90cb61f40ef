"""How long the demo job's fitting sheets take, beside WeasyPrint alone on the same pages.

python3 manage.py bench sheets
"""

from collections.abc import Iterator
from datetime import date
from pathlib import Path

from weasyprint import CSS, HTML
from weasyprint.text.fonts import FontConfiguration

from fronts.jobfile import read_file
from fronts.sheets import fitting
from fronts.sheets.pdf import BUNDLED, render
from fronts.sheets.sheet_page import source_of
from tests.benchmarks.figures import Figure, median_ms_in_turn

DEMO = Path(__file__).resolve().parents[2] / "fixtures" / "demo.job.json"
ROUNDS = 5
MOST_TIMES = 1.3


def figures() -> Iterator[Figure]:
    """From the kitchen to the PDF, beside the PDF of its finished HTML; each in turn."""
    kitchen = read_file(str(DEMO)).kitchen
    printed = date(2027, 3, 1)
    static = fitting.content(source_of(kitchen, printed))
    fonts = FontConfiguration()
    style = CSS(filename=str(BUNDLED / "sheet.css"), font_config=fonts)

    def ours() -> bytes:
        return render(fitting.content(source_of(kitchen, printed)), "letter")

    def alone() -> bytes:
        document = HTML(string=static)
        written: bytes = document.write_pdf(stylesheets=[style], font_config=fonts, pdf_tags=True)
        return written

    mine, theirs = median_ms_in_turn((ours, alone), ROUNDS)
    yield Figure("WeasyPrint alone on the same pages as static HTML", theirs, "ms")
    count = f"{len(kitchen.cabinets)} cabinets"
    yield Figure(f"fitting sheets of {count}, schedule to PDF", mine, "ms", MOST_TIMES * theirs)
    yield Figure("  in times of WeasyPrint alone", mine / theirs, "times", MOST_TIMES)
