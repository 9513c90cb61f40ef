"""The one door to WeasyPrint: HTML in, PDF out, from nothing but bundled files."""

import atexit
import hashlib
import re
from collections.abc import Mapping, Sequence
from functools import cache
from importlib.metadata import version
from pathlib import Path
from threading import Lock
from typing import TYPE_CHECKING, Any, Literal, TypeAlias, get_args
from urllib.parse import unquote, urlsplit

if TYPE_CHECKING:
    from weasyprint import CSS
    from weasyprint.text.fonts import FontConfiguration

Paper: TypeAlias = Literal["letter", "a4"]
PAPERS: tuple[Paper, ...] = get_args(Paper)
PageSize: TypeAlias = Literal["letter", "a4", "tabloid", "a3"]
LARGER: Mapping[Paper, PageSize] = {"letter": "tabloid", "a4": "a3"}
"""Twice as large as the shop's paper, for a drawing."""
_UPRIGHT: Mapping[PageSize, str] = {"tabloid": "11in 17in"}
_ACROSS: Mapping[PageSize, str] = {"tabloid": "17in 11in"}
ROOT = Path(__file__).resolve().parents[2]
BUNDLED = ROOT / "static" / "sheets"
_MADE_BY = ("fronts/figures", "fronts/drawings", "fronts/sheets", "templates/sheets",
            "static/sheets")  # fmt: skip
_WRITTEN = (".py", ".html", ".css")
FONTS = BUNDLED / "fonts"
_NO_SIGN = "□"
_BEFORE_FRACTION = re.compile(r"(?<=\d) (?=\d+/\d)")
_SVG = re.compile(r"<svg\b.*?</svg>", re.DOTALL)
_LABEL = re.compile(r'aria-label="([^"]*)"')
_DRAWING = "drawing"
PATIENCE = 20.0
"""For so many seconds a sheet waits for those that are being made."""
ONE_AT_A_TIME = Lock()
"""The font configuration is shared, and WeasyPrint does not say that two threads may use it."""


class PrintingError(RuntimeError):
    """The system lacks what WeasyPrint draws text with; the message says which package."""


class PrintingBusyError(PrintingError):
    """Other sheets are being made, and took longer than this one could wait."""


def render(html: str, paper: PageSize) -> bytes:
    """The PDF of a sheet's whole HTML, tagged for reading aloud."""
    weasyprint = _weasyprint()
    if not ONE_AT_A_TIME.acquire(timeout=PATIENCE):
        raise PrintingBusyError("Other sheets are being made just now.")
    try:
        text, drawings = _drawings_apart(printable(unbroken(html)))
        document = weasyprint.HTML(string=text, base_url=None, url_fetcher=_fetcher()(drawings))
        written: bytes = document.write_pdf(
            stylesheets=[_style(paper)], font_config=_fonts(), pdf_tags=True
        )
    finally:
        ONE_AT_A_TIME.release()
    return written


def _drawings_apart(html: str) -> tuple[str, list[str]]:
    """The text with an image for each drawing, and the drawings.

    So they are read by a quicker reader than HTML's, and no style is looked for on every line of
    them: half of all elements of a fitting sheet.
    """
    drawings: list[str] = []

    def apart(found: re.Match[str]) -> str:
        drawings.append(found[0])
        label = _LABEL.search(found[0])
        return f'<img src="{_DRAWING}:{len(drawings) - 1}" alt="{label[1] if label else ""}">'

    return _SVG.sub(apart, html), drawings


def made_from(said: str, paper: PageSize) -> str:
    """A name for all that a sheet's PDF is made from.

    `said` is its HTML, or what that follows from; beside it the paper, and how sheets are made.
    """
    return hashlib.sha256("\n".join((paper, _how_made(), said)).encode()).hexdigest()


@cache
def _how_made() -> str:
    """A name for what sheets are written, drawn and set by."""
    digest = hashlib.sha256(version("weasyprint").encode())
    for folder in _MADE_BY:
        for file in sorted(
            each for each in (ROOT / folder).rglob("*.*") if each.suffix in _WRITTEN
        ):
            digest.update(file.read_bytes())
    return digest.hexdigest()


def unbroken(html: str) -> str:
    """The text with every mixed number on one line: broken, `1 1/4` reads as two figures."""
    return _BEFORE_FRACTION.sub("\u00a0", html)


def printable(html: str) -> str:
    """The text with an open box for every sign that the bundled fonts don't have.

    One missing sign would make the whole page's text unreadable to search and to readers.
    """
    missing = {each for each in set(html) if each > "~" and ord(each) not in _covered()}
    return html.translate({ord(each): _NO_SIGN for each in missing})


@cache
def _covered() -> frozenset[int]:
    """The signs that both bundled fonts have."""
    from fontTools.ttLib import TTFont  # type: ignore[import-untyped]

    both = [frozenset(TTFont(each).getBestCmap()) for each in sorted(FONTS.glob("*.ttf"))]
    return frozenset.intersection(*both)


def _weasyprint() -> Any:
    """WeasyPrint, loaded when the first sheet is printed: it costs 0.4 s and 50 MB."""
    try:
        import weasyprint
    except OSError as failed:
        raise PrintingError(
            "Sheets can't be printed: install the system packages libpango-1.0-0, "
            "libpangoft2-1.0-0 and libharfbuzz-subset0."
        ) from failed
    return weasyprint


@cache
def _fonts() -> "FontConfiguration":
    """One for the whole process: every new one stays in memory."""
    from weasyprint.text.fonts import FontConfiguration

    # Its own end needs modules that Python has already cleared at exit.
    atexit.register(_style.cache_clear)
    atexit.register(_fonts.cache_clear)
    return FontConfiguration()


@cache
def _style(paper: PageSize) -> "CSS":
    upright, across = _UPRIGHT.get(paper, paper), _ACROSS.get(paper, f"{paper} landscape")
    size = f"@page {{ size: {upright} }}\n@page across {{ size: {across} }}\n"
    style = size + (BUNDLED / "sheet.css").read_text("utf-8")
    css: CSS = _weasyprint().CSS(
        string=style,
        base_url=f"{BUNDLED.as_uri()}/",
        font_config=_fonts(),
        url_fetcher=_fetcher()(),
    )
    return css


@cache
def _fetcher() -> Any:
    from weasyprint.urls import URLFetcher, URLFetcherResponse

    class BundledFiles(URLFetcher):  # type: ignore[misc]
        """Opens what lies in the sheets' own folder, the sheet's own drawings, and nothing else."""

        def __init__(self, drawings: Sequence[str] = ()) -> None:
            super().__init__(allowed_protocols=["file"], allow_redirects=False)
            self._drawings = drawings

        def fetch(self, url: str, headers: dict[str, str] | None = None) -> Any:
            scheme, _, place = url.partition(":")
            if scheme == _DRAWING and place.isdecimal() and int(place) < len(self._drawings):
                body = self._drawings[int(place)].encode()
                return URLFetcherResponse(url, body, {"Content-Type": "image/svg+xml"})
            if not is_bundled(url):
                raise ValueError("sheets use bundled files only")
            return super().fetch(url, headers)

    return BundledFiles


def is_bundled(url: str) -> bool:
    """Whether a URL names a file in the sheets' own folder."""
    parts = urlsplit(url)
    if parts.scheme != "file" or parts.netloc:
        return False
    return Path(unquote(parts.path)).resolve().is_relative_to(BUNDLED)
