"""Printing sheets and reading them back, once for all tests."""

import io
from collections.abc import Callable
from datetime import date
from functools import cache

from pypdf import PdfReader

from fronts.rules.fingerprint import fingerprint
from fronts.rules.kitchen import Kitchen
from fronts.rules.schedule import schedule
from fronts.sheets import fitting, front_schedule, hardware, jigs
from fronts.sheets.pdf import Paper, render
from fronts.sheets.sheet_page import Imprint
from tests.drawings.kitchens import demo

PRINTED = date(2027, 3, 1)


def imprint() -> Imprint:
    """The demo schedule's imprint."""
    return Imprint(PRINTED, fingerprint(demo()[1]))


SHEETS: dict[str, Callable[[], str]] = {
    "fitting": lambda: fitting.content(demo()[1], demo()[0], imprint()),
    "schedule": lambda: front_schedule.content(demo()[1], demo()[0], imprint()),
    "hardware": lambda: hardware.content(demo()[1], imprint()),
    "jigs": lambda: jigs.content(demo()[1], demo()[0], imprint()),
}


@cache
def demo_pdf(name: str, paper: Paper) -> bytes:
    """A sheet of the demo kitchen as a PDF."""
    return render(SHEETS[name](), paper)


@cache
def demo_pages(name: str, paper: Paper = "letter") -> tuple[str, ...]:
    """The text of each of its pages."""
    return pages_of(demo_pdf(name, paper))


def pages_of(pdf: bytes) -> tuple[str, ...]:
    """The text of each page."""
    return tuple(page.extract_text() for page in PdfReader(io.BytesIO(pdf)).pages)


def fitting_pages(kitchen: Kitchen, paper: Paper = "letter") -> tuple[str, ...]:
    """The fitting sheets of a kitchen, read back."""
    worked_out = schedule(kitchen)
    html = fitting.content(worked_out, kitchen, Imprint(PRINTED, fingerprint(worked_out)))
    return pages_of(render(html, paper))
