"""The hardware sheet: every item, how many, why, and for which fronts."""

from dataclasses import dataclass

from fronts.figures.findings import findings_of
from fronts.rules.results import Need
from fronts.sheets.sheet_page import SheetSource, page


@dataclass(frozen=True, slots=True)
class ItemRow:
    """One item to order; `spares` come beside the need, "" where none do.

    `ordered` says how far that is, "" where nobody approved it.
    """

    item: str
    need: str
    spares: str
    why: str
    fronts: tuple[str, ...]
    ordered: str = ""


def content(source: SheetSource) -> str:
    """The job's hardware sheet as HTML."""
    schedule = source.schedule
    order = source.order
    rows = [
        _item_row(need, order.items.get(need.item, "") if order else "")
        for need in schedule.hardware
    ]
    findings = findings_of(schedule)
    context = {"title": "Hardware", "rows": rows, "stops": findings.stops, "order": order}
    return page("hardware.html", source, context)


def _item_row(need: Need, ordered: str) -> ItemRow:
    spares = f"{need.spares} {need.unit}".strip() if need.spares else ""
    amount = f"{need.need} {need.unit}".strip()
    return ItemRow(need.item, amount, spares, need.why, need.fronts, ordered)
