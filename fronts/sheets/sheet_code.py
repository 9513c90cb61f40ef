"""The code that a cabinet's fitting sheet bears, by which one learns whether it is still true."""

from dataclasses import dataclass
from datetime import date
from urllib.parse import urljoin

from django.urls import reverse
from django.utils.safestring import SafeString

from fronts.figures.cabinet_words import CabinetWords
from fronts.figures.shown_figures import code_of
from fronts.sheets.qr_code import qr_code
from fronts.sheets.sheet_page import SheetSource


@dataclass(frozen=True, slots=True)
class CodeOnSheet:
    """The code, since when there are sheets with it, and the address that looks it up as a QR
    code; "" where no site is known.

    The day is that of the first print, so that a sheet printed again is the same to the letter.
    """

    code: str
    since: str
    qr: SafeString | str = ""


def code_on_sheet(words: CabinetWords, source: SheetSource) -> CodeOnSheet:
    """The code of a cabinet's sheet. Without a site nothing could look it up: no QR code then."""
    code = code_of(words)
    since = printed_since(code, source).isoformat()
    if not source.site:
        return CodeOnSheet(code, since)
    address = urljoin(source.site, reverse("fronts:sheet-code", args=[code]))
    return CodeOnSheet(code, since, qr_code(address))


def printed_since(code: str, source: SheetSource) -> date:
    """When a sheet with this code was printed first, which is now where none was."""
    return source.first_printed.get(code, source.printed)
