"""The code of a fitting sheet: it changes with what the sheet shows, and with nothing else."""

import io
import re
from collections.abc import Iterator
from dataclasses import fields, replace
from fractions import Fraction
from typing import Any

import pytest
from pypdf import PdfReader

from fronts.figures.cabinet_words import cabinet_words
from fronts.figures.shown_figures import code_of
from fronts.rules.kitchen import FrontFacts, Kitchen
from fronts.rules.lengths import INCH
from fronts.sheets import fitting
from fronts.sheets.pdf import PAPERS, Paper, render
from fronts.sheets.sheet_page import source_of
from tests.drawings.kitchens import demo
from tests.facts.distinct import at, changed, paths
from tests.pdf_text import page_texts
from tests.rules.small_kitchens import BOX, cabinet, door, inch, kitchen, opening
from tests.sheets.printed import PRINTED
from tests.sheets.scanned import scanned

pytestmark = pytest.mark.slow

SITE = "https://fronts.example/"
SMALL = kitchen(
    cabinet(opening("pull-out", boxes=(BOX,))),
    cabinet(opening(front=FrontFacts(door_on_hand="D1")), label="B2", x=inch("18")),
    doors=[door()],
)
CODE = re.compile(r"Sheet <b>[^<]*</b>")


def codes(of: Kitchen) -> dict[str, str]:
    """The codes of all its sheets."""
    source = source_of(of, PRINTED)
    return {
        each.label: code_of(cabinet_words(source.schedule, source.kitchen, each, source.jig_plan))
        for each in source.kitchen.cabinets
    }


def sheets(of: Kitchen) -> dict[str, str]:
    """All that its sheets show but for the codes."""
    source = source_of(of, PRINTED)
    labels = [each.label for each in source.kitchen.cabinets]
    return {label: CODE.sub("", fitting.content(source, [label])) for label in labels}


def numbers(of: Kitchen) -> Iterator[str]:
    """The path of every number that a sheet may depend on."""
    yield from (f"practice.{each.name}" for each in fields(of.practice))
    for part in ("stock", "standard"):
        yield from (f"{part}.{path}" for path in paths(getattr(of, part)))
    for part in ("cabinets", "doors_on_hand"):
        for index, thing in enumerate(getattr(of, part)):
            yield from (f"{part}.{index}.{path}" for path in paths(thing))


def nudged(of: Kitchen, path: str) -> Kitchen | None:
    """The kitchen with this number a little larger; None where it is none, or not said."""
    value: Any = at(of, path)
    if isinstance(value, bool) or not isinstance(value, (Fraction, int)):
        return None
    more = value + INCH / 16 if isinstance(value, Fraction) else value + 1
    found: Kitchen = changed(of, path, more)
    return found


def test_a_code_is_another_just_where_its_sheet_is() -> None:
    """Every number of a small kitchen is nudged: to the letter, drawings and all, the sheet of
    each cabinet has changed where its code has, and only there."""
    before, before_codes = sheets(SMALL), codes(SMALL)
    tried, otherwise = 0, 0
    for path in numbers(SMALL):
        of = nudged(SMALL, path)
        if of is None or path == "practice.knob_hole":  # How wide a ring is drawn; no figure says.
            continue
        now, now_codes = sheets(of), codes(of)
        for label in before:
            tried += 1
            otherwise += now_codes[label] != before_codes[label]
            is_other = now[label] != before[label]
            assert is_other == (now_codes[label] != before_codes[label]), (path, label)
    assert 0 < otherwise < tried


@pytest.mark.parametrize(
    ("path", "changing"),
    [
        ("10.openings.0.fronts.0.box.rise", ["T1"]),  # under its pull-out, which nothing faces
        ("8.openings.0.width", ["W4", "W5"]),  # the gap between them stands on both
    ],
)
def test_only_sheets_that_show_what_changed_get_a_new_code(path: str, changing: list[str]) -> None:
    """1/16 in less, in the demo kitchen of 20 cabinets."""
    of, whole = demo()[0], f"cabinets.{path}"
    before, after = codes(of), codes(changed(of, whole, at(of, whole) - INCH / 16))

    assert [each for each in before if before[each] != after[each]] == changing
    assert len(set(before.values())) == len(of.cabinets)


def test_another_client_is_no_other_sheet() -> None:
    """Whose kitchen it is stands at the head; the cabinets are the same."""
    other = replace(demo()[0], job=replace(demo()[0].job, client="Somebody else", number="Z-9"))
    assert codes(other) == codes(demo()[0])


@pytest.mark.parametrize("paper", PAPERS)
def test_the_printed_code_is_scanned(paper: Paper) -> None:
    """Read back from the PDF by its black squares, as a phone sees it: the site's address with
    the code at the sheet's foot, on the first page of each cabinet."""
    source = replace(source_of(demo()[0], PRINTED), site=SITE)
    pdf = render(fitting.content(source, ["B1", "T1"]), paper)

    first, second, third = PdfReader(io.BytesIO(pdf)).pages  # The tall cabinet's sheet has two.
    texts = page_texts(pdf)
    for page, text, label in ((first, texts[0], "B1"), (second, texts[1], "T1")):
        code = codes(demo()[0])[label]
        assert f"Sheet {code}, first printed 2027-03-01" in text
        found = scanned(page)
        assert found.text == f"{SITE}s/{code}/"
        # ISO/IEC 18004: four modules are quiet; 0.4 mm is common practice for phones, no source.
        assert found.quiet >= 4
        assert found.module_mm >= 0.4
    assert scanned(third).text == ""
    assert codes(demo()[0])["T1"] in texts[2]


def test_without_a_site_the_code_stands_alone() -> None:
    """From the command line nothing could look it up: no square that leads nowhere."""
    html = fitting.content(source_of(demo()[0], PRINTED), ["B1"])
    assert f"Sheet <b>{codes(demo()[0])['B1']}</b>, first printed 2027-03-01" in html
    assert "qr-code" not in html


def test_a_sheet_printed_again_says_when_it_was_first() -> None:
    """The same sheet on another day is the same to the letter."""
    of, code = demo()[0], codes(demo()[0])["B1"]
    first = source_of(of, PRINTED)
    again = replace(source_of(of, PRINTED.replace(day=30)), first_printed={code: PRINTED})
    assert fitting.content(again, ["B1"]) == fitting.content(first, ["B1"])
