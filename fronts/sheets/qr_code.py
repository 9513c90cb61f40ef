"""An address as a QR code (ISO/IEC 18004) for a sheet; the one door to segno."""

from collections.abc import Iterable
from itertools import groupby

import segno
from django.utils.safestring import SafeString

QUIET = 4
"""Modules left white all round, as the standard asks."""


def qr_code(address: str) -> SafeString:
    """The code as an `<svg>` in black on white, quiet zone and all, to be sized by its place.

    A module is one unit wide. Level M, or a higher one where that takes no more room, bears
    dirt and a crease.
    """
    rows = [*segno.make(address, error="m", micro=False).matrix_iter(border=QUIET)]
    dark = "".join(_dark(row, at) for at, row in enumerate(rows))
    side = len(rows)
    return SafeString(
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {side} {side}" role="img"'
        f' aria-label="QR code of the sheet’s code"><path d="{dark}" fill="#000"/></svg>'
    )


def _dark(row: Iterable[int], at: int) -> str:
    """The row's runs of dark modules."""
    path, x = "", 0
    for is_dark, several in groupby(bool(each) for each in row):
        wide = len([*several])
        if is_dark:
            path += f"M{x} {at}h{wide}v1h-{wide}z"
        x += wide
    return path
