"""The drawing of one wall on a sheet of its own, as large as the paper lets it."""

from collections.abc import Mapping
from dataclasses import replace

from django.utils.safestring import SafeString

from fronts.drawings.drawing import PAPER
from fronts.drawings.elevation import Sheet, wall_elevation
from fronts.drawings.front_marks import Letters
from fronts.figures.findings import findings_of, places_at
from fronts.sheets.pdf import PageSize
from fronts.sheets.sheet_page import SheetSource, page

_LETTERS = Letters(12_00, 11_00)
"""No text of it is under 7 pt."""
_SMALL = Sheet(room=(860_00, 480_00), least=1, most=460, letters=_LETTERS, is_narrow=True)
_LARGE = Sheet(room=(1290_00, 740_00), least=1, most=700, letters=_LETTERS, is_narrow=True)
_STOPS, _A_STOP = 45_00, 22_00
"""What stops take of the page: their box, and each of them."""
ROOMS: Mapping[PageSize, Sheet] = {
    "letter": _SMALL, "a4": _SMALL, "tabloid": _LARGE, "a3": _LARGE,
}  # fmt: skip


def content(source: SheetSource, wall: str, size: PageSize) -> str:
    """The wall's sheet as HTML, for paper of this size on its side."""
    schedule = source.schedule
    places = {wall}.union(
        *(
            places_at(cabinet, schedule.fronts_of(cabinet.label))
            for cabinet in source.kitchen.cabinets
            if cabinet.wall == wall
        )
    )
    stops = findings_of(schedule, frozenset(places)).stops
    room = ROOMS[size]
    if stops:  # They stand above it, on the same page.
        taken = _STOPS + len(stops) * _A_STOP
        room = replace(room, room=(room.room[0], max(room.room[1] - taken, room.room[1] // 2)))
    unit = schedule.job.unit
    svg = wall_elevation(schedule, source.kitchen, wall, unit=unit, ink=PAPER, sheet=room)
    context = {"title": "Wall", "wall": wall, "drawing": SafeString(svg), "stops": stops}
    return page("wall.html", source, context)
