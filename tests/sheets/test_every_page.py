"""What every page of every sheet carries."""

import re

import pytest

from fronts.rules.kitchen import FrontFacts
from fronts.sheets import front_schedule
from fronts.sheets.pdf import PAPERS, Paper
from fronts.sheets.registry import FITTING, SHEETS
from fronts.sheets.sheet_page import source_of
from tests.drawings.kitchens import demo
from tests.rules.small_kitchens import cabinet, kitchen, opening
from tests.sheets.printed import PRINTED, demo_pages, demo_source

pytestmark = pytest.mark.slow


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("name", SHEETS)
def test_every_page_says_whose_it_is(name: str, paper: Paper) -> None:
    """Job, client, site, day of printing, page of pages and the schedule's fingerprint.

    A fitting sheet has a code of its own instead, which outlives changes elsewhere.
    """
    job = demo()[0].job
    pages = demo_pages(name, paper)
    assert pages
    for number, text in enumerate(pages, 1):
        plain = " ".join(text.split())
        assert f"Job {job.number}" in plain
        assert job.client in plain
        assert job.site in plain
        assert PRINTED.isoformat() in plain
        if name == FITTING:
            assert re.search(r"Sheet [0-9a-f]{4}-[0-9a-f]{4}, first printed", plain)
            assert demo_source().fingerprint not in plain
        else:
            assert demo_source().fingerprint in plain
        assert f"page {number} of {len(pages)}" in plain


TO_WORK_FROM = [name for name, sheet in SHEETS.items() if not sheet.needs_records]
"""What is signed once all is done is not worked from any more."""


@pytest.mark.parametrize("name", TO_WORK_FROM)
def test_a_stop_is_printed_in_the_way(name: str) -> None:
    """A finding that says stop stands on the sheets in words, under a heading to match."""
    stops = [each for each in demo()[1].findings if each.level == "stop"]
    assert stops
    text = " ".join(" ".join(demo_pages(name)).split())
    assert "STOP — do not cut" in text
    for each in stops:
        assert each.message in text


def test_fronts_and_parts_are_all_on_the_front_schedule() -> None:
    """Every front with its size, and as many pieces to cut as the schedule has."""
    worked_out = demo()[1]
    text = " ".join(" ".join(demo_pages("schedule")).split())
    for front in worked_out.fronts:
        assert front.label in text
    assert f"{len(worked_out.fronts)} fronts" in text
    thicknesses = {(each.material, each.thickness) for each in worked_out.parts}
    for material, thickness in thicknesses:
        same = [each for each in worked_out.parts
                if (each.material, each.thickness) == (material, thickness)]  # fmt: skip
        assert f"{sum(each.count for each in same)} pieces" in text
        assert material in text


def test_every_need_is_on_the_hardware_sheet() -> None:
    """Item, count, what is spare beside it, and the reason for it."""
    text = " ".join(" ".join(demo_pages("hardware")).split())
    assert any(need.spares for need in demo()[1].hardware)
    for need in demo()[1].hardware:
        counted = f"{need.need} {need.unit}".strip()
        spare = f"{need.spares} {need.unit}".strip() if need.spares else "–"
        assert f"{counted} {spare} {need.item} {need.why}" in text


def test_grain_is_kept_in_order_only_where_there_is_grain() -> None:
    """The demo's stacks are of MDF; the same in maple are to be kept in order, as its set is."""
    grained, plain = (_cut_sheet_of_stack(material) for material in ("hard maple", "MDF"))
    demos = " ".join(front_schedule.content(demo_source()).split())
    assert "one stack, B1.a: keep the grain in order" in grained
    assert "keep the grain in order" not in plain
    assert "one stack" not in demos
    assert "grain set East uppers: keep the grain in order" in demos


def _cut_sheet_of_stack(material: str) -> str:
    """The front schedule and cut sheet of two drawers over each other."""
    stack = opening("drawers", count=2, front=FrontFacts(material=material))
    return " ".join(front_schedule.content(source_of(kitchen(cabinet(stack)), PRINTED)).split())


def test_every_jig_and_shim_is_on_their_sheet() -> None:
    """Once each, with all the fronts that it serves."""
    worked_out = demo()[1]
    text = " ".join(" ".join(demo_pages("jigs")).split())
    assert text.count("Jig ") == len(worked_out.jigs)
    for jig in worked_out.jigs:
        assert ", ".join(jig.fronts) in text
    assert "Shims for inset fronts" in text
