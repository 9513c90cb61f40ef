"""The hardware sheet: every item, how many, why, and for which fronts."""

from dataclasses import dataclass

from fronts.figures.findings import findings_of
from fronts.sheets.sheet_page import SheetSource, page


@dataclass(frozen=True, slots=True)
class ItemRow:
    """One item to order."""

    item: str
    need: str
    why: str
    fronts: tuple[str, ...]


def content(source: SheetSource) -> str:
    """The job's hardware sheet as HTML."""
    schedule = source.schedule
    rows = [ItemRow(each.item, str(each.need), each.why, each.fronts) for each in schedule.hardware]
    findings = findings_of(schedule)
    context = {"title": "Hardware", "rows": rows, "stops": findings.stops}
    return page("hardware.html", source, context)
