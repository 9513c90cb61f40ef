"""The cutting plan on paper: each layout to scale, with its cuts in order."""

from collections.abc import Sequence

from fronts.cutting.model import Plan
from fronts.drawings.cut_layout import paper_layouts
from fronts.figures import cautions
from fronts.figures.cutting_plan import materials_shown
from fronts.figures.findings import findings_of
from fronts.rules.results import Schedule
from fronts.sheets.sheet_page import Imprint, page


def content(
    schedule: Schedule,
    imprint: Imprint,
    plans: Sequence[tuple[str, Plan]],
    *,
    made: str,
    outdated: bool,
) -> str:
    """The plan as HTML; `made` says by whom, when and from which parts."""
    unit = schedule.job.unit
    context = {
        "title": "Cutting plan",
        "materials": materials_shown(plans, unit, paper_layouts(unit)),
        "made": made,
        "outdated": outdated,
        "stops": findings_of(schedule).stops,
        "cautions": cautions.at_bench(schedule.jigs, schedule.shims, schedule.fronts),
    }
    return page("cutting_plan.html", schedule.job, imprint, context)
