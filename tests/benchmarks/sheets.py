"""How long the demo job's fitting sheets take, beside WeasyPrint alone on the same pages.

python3 manage.py bench sheets
"""

import io
from collections.abc import Iterator, Mapping
from dataclasses import replace
from datetime import date
from functools import partial
from pathlib import Path

from pypdf import PdfReader
from weasyprint import CSS, HTML
from weasyprint.text.fonts import FontConfiguration

from fronts.jobfile import read_file
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import INCH
from fronts.sheets import fitting
from fronts.sheets.pdf import BUNDLED, render
from fronts.sheets.registry import every_printout, fittings_together
from fronts.sheets.sheet_page import source_of
from tests.benchmarks.figures import Figure, median_ms_in_turn

DEMO = Path(__file__).resolve().parents[2] / "fixtures" / "demo.job.json"
PRINTED = date(2027, 3, 1)
BARE = f"<p>{'A page of plain text, and nothing else on it. ' * 60}</p>"
ROUNDS = 5
MOST_TIMES = 1.15
CHANGED, UNCHANGED = 1.3, 1 / 20
"""One cabinet's sheet is the measure of a reprint after one change; all of them, of one after
none. All of them in one file is part of each."""


def figures() -> Iterator[Figure]:
    """From the kitchen to the PDF, beside the PDF of its finished HTML; each in turn."""
    kitchen = read_file(str(DEMO)).kitchen
    static = fitting.content(source_of(kitchen, PRINTED))
    fonts = FontConfiguration()
    style = CSS(filename=str(BUNDLED / "sheet.css"), font_config=fonts)

    def ours() -> bytes:
        return render(fitting.content(source_of(kitchen, PRINTED)), "letter")

    def alone(html: str) -> bytes:
        document = HTML(string=html)
        written: bytes = document.write_pdf(stylesheets=[style], font_config=fonts, pdf_tags=True)
        return written

    pages = len(PdfReader(io.BytesIO(alone(static))).pages)
    mine, theirs, bare = median_ms_in_turn(
        (ours, partial(alone, static), partial(alone, BARE)), ROUNDS
    )
    yield Figure("WeasyPrint alone on the same pages as static HTML", theirs, "ms")
    yield Figure("  a page of it", theirs / pages, "ms")
    yield Figure("  a bare page of text", bare, "ms")
    count = f"{len(kitchen.cabinets)} cabinets"
    yield Figure(f"fitting sheets of {count}, schedule to PDF", mine, "ms", MOST_TIMES * theirs)
    yield Figure("  a page of it", mine / pages, "ms")
    yield Figure("  in times of WeasyPrint alone", mine / theirs, "times", MOST_TIMES)
    yield from _printed_again(kitchen)


def _printed_again(kitchen: Kitchen) -> Iterator[Figure]:
    """A set of fitting sheets printed, what is known already left as it is; then all in one file.

    Nothing else is remembered: the schedule is worked out, and the one file made, each time.
    """
    changed = _changed(kitchen)
    label = changed.cabinets[0].label
    known = _printed(kitchen, {})

    def one() -> bytes:
        return render(fitting.content(source_of(changed, PRINTED), [label]), "letter")

    def of(kitchen: Kitchen, known: Mapping[str, bytes]) -> bytes:
        printed = _printed(kitchen, known)
        return fittings_together("HL", zip(printed, printed.values(), strict=True))

    whole, single, after_one, one_and_file, after_none, none_and_file = median_ms_in_turn(
        (
            partial(of, kitchen, {}), one,
            partial(_printed, changed, known), partial(of, changed, known),
            partial(_printed, kitchen, known), partial(of, kitchen, known),
        ),
        ROUNDS,
    )  # fmt: skip
    other = len(_printed(changed, known).keys() - known.keys())
    yield Figure("the same, a file each, and all in one file", whole, "ms")
    yield Figure("one cabinet's sheet", single, "ms")
    yield Figure(f"printed again, {other} changed", after_one, "ms")
    yield Figure("  in times of one cabinet's sheet", after_one / single, "times", CHANGED)
    yield Figure("  and all in one file", one_and_file / single, "times", CHANGED)
    yield Figure("printed again, unchanged", after_none, "ms")
    yield Figure("  in times of the whole set", after_none / whole, "times", UNCHANGED)
    yield Figure("  and all in one file", none_and_file / whole, "times", UNCHANGED)


def _changed(kitchen: Kitchen) -> Kitchen:
    """The kitchen, one box of its first cabinet a little higher."""
    first = kitchen.cabinets[0]
    opening = first.openings[0]
    front = opening.fronts[0]
    if front.box is None:
        raise ValueError(f"{first.label} has no box to change")
    higher = replace(front, box=replace(front.box, rise=front.box.rise + INCH / 16))
    first = replace(first, openings=(replace(opening, fronts=(higher,)),))
    return replace(kitchen, cabinets=(first, *kitchen.cabinets[1:]))


def _printed(kitchen: Kitchen, known: Mapping[str, bytes]) -> dict[str, bytes]:
    """A sheet for each cabinet, by the names of what they are made from."""
    sheets = [each for each in every_printout(source_of(kitchen, PRINTED)) if each.cabinet]
    named = {each.made_from("letter"): each for each in sheets}
    return {name: known.get(name) or render(each.html(), "letter") for name, each in named.items()}
