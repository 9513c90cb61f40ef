"""The index of the shop's standard: what each short page is about, and its few figures."""

from collections.abc import Iterator
from dataclasses import dataclass

from django.http import HttpResponse
from django.views.decorators.http import require_http_methods

from fronts.drawings.standard.figure import Figure
from fronts.pages.standard.forms.held import Held, held_by
from fronts.pages.standard.forms.number_words import sourced
from fronts.pages.standard.forms.short_pages import SHORT_PAGES, ShortPage
from fronts.pages.standard.forms.sources import source_of
from fronts.pages.standard.forms.ways import WaysForm
from fronts.rules.kinds import SIDES
from shopjobs.access import SignedInRequest, needs
from shopjobs.pages import render_page

PAGE = "fronts/standard/index.html"


@dataclass(frozen=True, slots=True)
class FigureRow:
    """One of the few figures: what it is called, its value, and whose word that is."""

    words: str
    value: str
    source: str
    own: bool


@dataclass(frozen=True, slots=True)
class PageRow:
    """A short page on the index; `own` counts the fields in which the shop says something."""

    page: ShortPage
    figures: tuple[FigureRow, ...]
    own: int


@needs("standard")
@require_http_methods(["GET", "HEAD"])
def standard_index(request: SignedInRequest) -> HttpResponse:
    """Show what the shop's standard is about, page by page."""
    held = held_by(request.shop)
    rows = [_row(page, held) for page in SHORT_PAGES.values()]
    return render_page(request, PAGE, {"rows": rows, "shop": request.shop})


def _row(page: ShortPage, held: Held) -> PageRow:
    figures = WaysForm(page=page, held=held).figures()
    few = tuple(_few(words, list(_of(name, figures))) for words, name in page.few)
    return PageRow(page, few, sum(figure.own for figure in figures.values()))


def _of(name: str, figures: dict[str, Figure]) -> Iterator[tuple[str, Figure]]:
    """The figure, or those of all sides."""
    names = [name] if name in figures else [f"{name}_{side}" for side in SIDES]
    yield from ((each, figures[each]) for each in names)


def _few(words: str, sides: list[tuple[str, Figure]]) -> FigureRow:
    """One value, or that of each side where they differ."""
    (name, first), *_ = sides
    texts = [figure.text for _, figure in sides]
    value = first.text if len(set(texts)) == 1 else ", ".join(texts)
    own = any(figure.own for _, figure in sides)
    nobody = first.value in (None, "", ())
    source = "This shop" if own else "" if nobody else sourced(source_of(name)).rstrip(".")
    return FigureRow(words, value, source, own)
