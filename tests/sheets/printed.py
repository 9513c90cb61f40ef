"""Printing sheets and reading them back, once for all tests and all their processes."""

import json
import os
from collections.abc import Callable
from dataclasses import replace
from datetime import date
from functools import cache
from pathlib import Path

from fronts.cutting.plan import plan
from fronts.rules.cutting_groups import cutting_groups
from fronts.rules.kitchen import Kitchen
from fronts.services.cutting_requests import usual_request
from fronts.sheets import fitting
from fronts.sheets.pdf import Paper, render
from fronts.sheets.registry import SHEETS
from fronts.sheets.sheet_page import CutPlanSource, SheetSource, source_of
from tests.drawings.kitchens import demo
from tests.pdf_text import page_texts

PRINTED = date(2027, 3, 1)
SHARED: list[Path] = []
"""Where what is printed lies for every process of this run; without it each prints its own."""


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
    return _once(f"{name}-{paper}.pdf", lambda: render(SHEETS[name].content(demo_source()), paper))


@cache
def demo_pages(name: str, paper: Paper = "letter") -> tuple[str, ...]:
    """The text of each of its pages."""

    def read() -> bytes:
        return json.dumps(pages_of(demo_pdf(name, paper))).encode()

    return tuple(json.loads(_once(f"{name}-{paper}.json", read)))


def _once(name: str, make: Callable[[], bytes]) -> bytes:
    """What one of the processes of this run made; of two that start at once the last one's."""
    if not SHARED:
        return make()
    kept, mine = SHARED[0] / name, SHARED[0] / f"{name}-{os.getpid()}"
    if not kept.exists():
        mine.write_bytes(make())
        mine.replace(kept)
    return kept.read_bytes()


def pages_of(pdf: bytes) -> tuple[str, ...]:
    """The text of each page."""
    return page_texts(pdf)


def fitting_pages(kitchen: Kitchen, paper: Paper = "letter") -> tuple[str, ...]:
    """The fitting sheets of a kitchen, read back."""
    return pages_of(render(fitting.content(source_of(kitchen, PRINTED)), paper))
