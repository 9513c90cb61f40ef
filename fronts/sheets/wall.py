"""The drawing of one wall on a sheet of its own, as large as the paper lets it."""

from collections.abc import Mapping

from django.utils.safestring import SafeString

from fronts.drawings.drawing import PAPER
from fronts.drawings.elevation import Sheet, wall_elevation
from fronts.drawings.front_marks import Letters
from fronts.figures.findings import findings_of
from fronts.sheets.pdf import PageSize
from fronts.sheets.sheet_page import SheetSource, page

_LETTERS = Letters(12_00, 11_00)
"""No text of it is under 7 pt."""
_SMALL = Sheet(room=(860_00, 480_00), least=1, most=460, letters=_LETTERS, is_narrow=True)
_LARGE = Sheet(room=(1290_00, 740_00), least=1, most=700, letters=_LETTERS, is_narrow=True)
ROOMS: Mapping[PageSize, Sheet] = {
    "letter": _SMALL, "a4": _SMALL, "tabloid": _LARGE, "a3": _LARGE,
}  # fmt: skip


def content(source: SheetSource, wall: str, size: PageSize) -> str:
    """The wall's sheet as HTML, for paper of this size on its side."""
    schedule = source.schedule
    svg = wall_elevation(
        schedule, source.kitchen, wall, unit=schedule.job.unit, ink=PAPER, sheet=ROOMS[size]
    )
    fronts = {front.label for front in schedule.fronts if front.wall == wall}
    stops = [each for each in findings_of(schedule).stops if fronts & {*each.where, wall}]
    context = {
        "title": "Wall", "wall": wall, "drawing": SafeString(svg), "stops": stops,
    }  # fmt: skip
    return page("wall.html", source, context)
