"""The cutting plan on paper: each layout to scale, with its cuts in order."""

from collections.abc import Sequence

from fronts.rules.results import Schedule
from fronts.sheets import cautions
from fronts.sheets.cutting_words import MaterialShown
from fronts.sheets.sheet_page import Imprint, findings_of, page


def content(
    schedule: Schedule,
    imprint: Imprint,
    materials: Sequence[MaterialShown],
    *,
    made: str,
    outdated: bool,
) -> str:
    """The plan as HTML; `made` says by whom, when and from which parts."""
    context = {
        "title": "Cutting plan",
        "materials": materials,
        "made": made,
        "outdated": outdated,
        "stops": findings_of(schedule).stops,
        "cautions": cautions.at_bench(schedule.jigs, schedule.shims, schedule.fronts),
    }
    return page("cutting_plan.html", schedule.job, imprint, context)
