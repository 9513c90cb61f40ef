"""Walls on paper: on a sheet of their own and in the front schedule; nothing runs off the page."""

import io
import re
from collections.abc import Callable
from dataclasses import replace
from datetime import date

import pytest
from django.test import Client
from pypdf import PdfReader

from fronts.models import Cabinet
from fronts.notebook import read_notebook
from fronts.rules.practice import inches
from fronts.rules.standard_keys import Sides
from fronts.sheets import front_schedule, wall
from fronts.sheets.pdf import PageSize, render
from fronts.sheets.sheet_page import SheetSource, source_of
from shopjobs.models import Job, Person
from tests.pages.kitchens import furnish
from tests.pdf_text import page_texts

SignIn = Callable[[Person], Client]
POINTS: dict[PageSize, tuple[int, int]] = {
    "letter": (792, 612), "a4": (842, 595), "tabloid": (1224, 792), "a3": (1191, 842),
}  # fmt: skip
"""On their side: ANSI/ASME Y14.1 sizes A and B, 8 1/2 × 11 and 11 × 17 in; ISO 216 A4 and A3."""
LEAST_ROOM = 950, 640
"""CSS pixels within the margins and under the heading of Letter, on its side."""


def crowded(cabinets: int) -> SheetSource:
    """A wall of narrow cabinets whose drawers have no room for their sizes."""
    lines = "\n".join(f"B{n} 12 4 drawers 4, , ," for n in range(1, cabinets + 1))
    text = f"wall North\nbase 30 1/2 high 24 deep 4 up\n{lines}"
    kitchen = read_notebook(text, "in", inches(1, 16))
    half = inches(1, 2)
    standard = replace(kitchen.standard, overlay=Sides(half, half, half, half))
    return source_of(replace(kitchen, standard=standard), date(2026, 11, 27))


def drawn_size(html: str) -> tuple[float, float]:
    """The width and height of the drawing."""
    found = re.search(r'<svg[^>]*? width="([\d.]+)" height="([\d.]+)"', html)
    assert found
    return float(found[1]), float(found[2])


@pytest.mark.parametrize("cabinets", [1, 6, 14, 25])
def test_every_size_stands_on_the_page(cabinets: int) -> None:
    """Those that find no room in the drawing stand below it, on the same page."""
    source = crowded(cabinets)
    for html in (front_schedule.content(source), wall.content(source, "North", "letter")):
        width, height = drawn_size(html)
        assert width <= LEAST_ROOM[0]
        assert height <= LEAST_ROOM[1]
        for front in source.schedule.fronts:
            assert f"{front.label}: " in html or f">{front.label}<" in html
    assert len(PdfReader(io.BytesIO(render(html, "letter"))).pages) == 1


@pytest.mark.parametrize("size", POINTS)
def test_a_wall_takes_one_page_of_each_size(size: PageSize) -> None:
    """On its side; on larger paper it is drawn larger."""
    source = crowded(8)
    html = wall.content(source, "North", size)
    (page,) = PdfReader(io.BytesIO(render(html, size))).pages
    assert (round(page.mediabox.width), round(page.mediabox.height)) == POINTS[size]
    small = drawn_size(wall.content(source, "North", "letter"))
    assert (drawn_size(html)[0] > 1.3 * small[0]) == (size in ("tabloid", "a3"))


@pytest.mark.slow
def test_its_link_on_the_wall(job: Job, owner: Person, signed_in: SignIn) -> None:
    """On the shop's paper, or on larger; a wall that isn't there is not found."""
    furnish(job)
    desk = signed_in(owner)
    name = Cabinet.objects.first().wall  # type: ignore[union-attr]
    address = f"/jobs/{job.pk}/sheets/wall/?wall={name}"
    assert f'href="{address}"' in desk.get(f"/jobs/{job.pk}/").content.decode()
    for query, width in (("", 792), ("&larger", 1224)):
        answer = desk.get(address + query)
        assert answer["Content-Type"] == "application/pdf"
        (page,) = PdfReader(io.BytesIO(answer.content)).pages
        assert round(page.mediabox.width) == width
        assert f"Wall {name}" in page_texts(answer.content)[0]
    assert desk.get(f"/jobs/{job.pk}/sheets/wall/?wall=none").status_code == 404
    assert desk.get(f"/jobs/{job.pk}/sheets/wall/").status_code == 404


def test_its_own_stops_stand_on_its_sheet() -> None:
    """Those of the wall and of its openings; not another wall's."""
    text = "wall North 20\nbase 30 high 24 deep 4 up\nB1 36 pair\nwall East 20\nB2 36 pair"
    source = source_of(read_notebook(text, "in", inches(1, 16)), date(2026, 11, 27))
    html = wall.content(source, "North", "letter")
    assert "Wall North" in html
    assert "past the wall" in html
    assert "B1.a: nobody has said" in html
    assert "B2.a" not in html
    assert "Wall East" not in html
