"""Printing sheets and reading them back, once for all tests."""

import io
from dataclasses import replace
from datetime import date
from functools import cache

from pypdf import PdfReader

from fronts.cutting.plan import plan
from fronts.rules.cutting_groups import cutting_groups
from fronts.rules.kitchen import Kitchen
from fronts.services.cutting_requests import usual_request
from fronts.sheets import fitting
from fronts.sheets.pdf import Paper, render
from fronts.sheets.registry import SHEETS
from fronts.sheets.sheet_page import CutPlanSource, SheetSource, source_of
from tests.drawings.kitchens import demo

PRINTED = date(2027, 3, 1)


@cache
def demo_source() -> SheetSource:
    """The demo kitchen, with a plan for cutting it from the usual stock."""
    source = source_of(demo()[0], PRINTED)
    plans = [
        (group.material, plan(usual_request(group, "in"), 1))
        for group in cutting_groups(source.schedule.parts)
    ]
    return replace(source, plan=CutPlanSource(tuple(plans), "Made for the tests."))


@cache
def demo_pdf(name: str, paper: Paper) -> bytes:
    """A sheet of the demo kitchen as a PDF."""
    return render(SHEETS[name].content(demo_source()), paper)


@cache
def demo_pages(name: str, paper: Paper = "letter") -> tuple[str, ...]:
    """The text of each of its pages."""
    return pages_of(demo_pdf(name, paper))


def pages_of(pdf: bytes) -> tuple[str, ...]:
    """The text of each page."""
    return tuple(page.extract_text() for page in PdfReader(io.BytesIO(pdf)).pages)


def fitting_pages(kitchen: Kitchen, paper: Paper = "letter") -> tuple[str, ...]:
    """The fitting sheets of a kitchen, read back."""
    return pages_of(render(fitting.content(source_of(kitchen, PRINTED)), paper))
