"""The sign-off: what a client signs once every front is done, or what is missing until then."""

from fronts.figures.sign_off import sign_off_shown
from fronts.sheets.sheet_page import SheetSource, page


def content(source: SheetSource) -> str:
    """The job's sign-off as HTML."""
    shown = sign_off_shown(source.schedule, source.kitchen, source.records)
    title = "Sign-off" if shown.is_ready else "Sign-off: not yet"
    return page("sign_off.html", source, {"title": title, "shown": shown})
