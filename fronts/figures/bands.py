"""The banded edges of a part, and its size with its bands on, in words."""

from fronts.figures.sizes import size
from fronts.rules.items import BandItem
from fronts.rules.kinds import SIDES
from fronts.rules.results import Part


def band_words(part: Part) -> str:
    """`band E-1 left, right; E-2 top`; sides are those of the hanging front. "" where bare."""
    if part.banding is None:
        return ""
    sides: dict[BandItem, list[str]] = {}
    for side, band, _ in part.banding.edges():
        sides.setdefault(band, []).append(side)
    return f"band {'; '.join(_on(band, edges) for band, edges in sides.items())}"


def _on(band: BandItem, edges: list[str]) -> str:
    if len(edges) == len(SIDES):
        return f"{band.code} all 4 edges".strip()
    return f"{band.code or 'plain'} {', '.join(edges)}"


def finished_words(part: Part, unit: str) -> str:
    """`finished 15 7/8 × 28 1/2`; "" where that is the size that it is cut to."""
    finished = part.finished_length, part.finished_width
    if finished == (part.length, part.width):
        return ""
    return f"finished {size(unit, *finished)}"
