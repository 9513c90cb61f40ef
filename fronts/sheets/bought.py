"""The door maker's list: fronts that are bought, line by line, to send and to check off."""

from dataclasses import dataclass

from fronts.figures.bought import BoughtWords, bought_words
from fronts.figures.findings import findings_of
from fronts.sheets.sheet_page import SheetSource, page


@dataclass(frozen=True, slots=True)
class BoughtRow:
    """One line: how many, what they are, and which fronts."""

    count: int
    words: BoughtWords
    fronts: tuple[str, ...]


def content(source: SheetSource) -> str:
    """The job's bought fronts as HTML."""
    schedule = source.schedule
    unit = schedule.job.unit
    rows = [
        BoughtRow(line.count, bought_words(line.front, unit), line.labels)
        for line in schedule.bought
    ]
    context = {
        "title": "Bought fronts",
        "rows": rows,
        "total": sum(row.count for row in rows),
        "stops": findings_of(schedule).stops,
    }
    return page("bought.html", source, context)
