"""Findings stand where they arise: at their rows, and the list leads there and back."""

from collections.abc import Callable

from django.test import Client

from fronts.models import Cabinet, Opening
from fronts.pages.measure.rows.marks import marks_of
from fronts.pages.shared.finding_links import FindingRow
from shopjobs.models import Job, Person
from tests.dom import dom
from tests.factories import CabinetFactory, OpeningFactory, overlaid
from tests.pages.kitchens import HTMX

SignIn = Callable[[Person], Client]


def row(level: str, word: str, *where: str, at: int) -> FindingRow:
    """A finding."""
    return FindingRow(level, word[0], word, "it is", (), where, f"finding-{at}")  # type: ignore[arg-type]


def test_the_gravest_marks_each_place() -> None:
    """A front is in its opening, and that in its cabinet; one finding counts once at each."""
    marks = marks_of([
        row("note", "Note", "B1.a.1", "B1.a.2", at=1), row("stop", "Stop", "B1.b", at=2),
        row("check", "Check", "North", at=3),
    ])  # fmt: skip

    assert {place: (mark.level, mark.count, mark.href) for place, mark in marks.items()} == {
        "B1": ("stop", 2, "#finding-2"), "B1.a": ("note", 1, "#finding-1"),
        "B1.a.1": ("note", 1, "#finding-1"), "B1.a.2": ("note", 1, "#finding-1"),
        "B1.b": ("stop", 1, "#finding-2"), "North": ("check", 1, "#finding-3"),
    }  # fmt: skip


def test_a_row_is_marked_and_leads_to_its_finding(
    job: Job, owner: Person, signed_in: SignIn
) -> None:
    """In the whole page, and in the table that follows a change."""
    overlaid(job)
    OpeningFactory.create(cabinet=CabinetFactory.create(job=job))
    OpeningFactory.create(cabinet=CabinetFactory.create(job=job, label="B2"), closed_by="drawer")
    desk = signed_in(owner)

    for headers in ({}, {**HTMX, "HX-Target": "follows-drawn"}):
        page = dom(desk.get(f"/jobs/{job.pk}/", headers=headers))
        plain, marked = Cabinet.objects.order_by("pk")
        assert not page.all(f"#cabinet-{plain.pk} .mark")
        mark = page.one(f"#cabinet-{marked.pk} > .row:first-child .mark")
        finding = page.one(f"li{mark.attribute('href')}")
        assert "its box is not measured" in finding.words
        assert "to settle at B2" in mark.words
    opening = Opening.objects.get(cabinet=marked)
    assert page.one(f"#opening-{opening.pk} .mark").attribute("href") == mark.attribute("href")
