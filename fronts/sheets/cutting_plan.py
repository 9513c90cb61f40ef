"""The cutting plan on paper: each layout to scale, with its cuts in order."""

from fronts.drawings.cut_layout import paper_layouts
from fronts.figures import cautions
from fronts.figures.cutting_plan import materials_shown
from fronts.figures.findings import findings_of
from fronts.sheets.sheet_page import SheetSource, page


class NoPlan(LookupError):  # noqa: N818 - it says what is missing
    """There is no cutting plan yet."""


def content(source: SheetSource) -> str:
    """The plan as HTML; a source without one has no such sheet."""
    if source.plan is None:
        raise NoPlan
    schedule, plan, unit = source.schedule, source.plan, source.kitchen.job.unit
    context = {
        "title": "Cutting plan",
        "materials": materials_shown(plan.plans, unit, paper_layouts(unit), plan.numbers),
        "made": plan.made,
        "outdated": plan.outdated,
        "lost": plan.lost,
        "stops": findings_of(schedule).stops,
        "cautions": cautions.at_bench(schedule.jigs, schedule.shims, schedule.fronts),
    }
    return page("cutting_plan.html", source, context)
