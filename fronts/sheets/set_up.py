"""One set-up for the kitchen: what an installer takes along, and in which order to go."""

from fractions import Fraction

from fronts.figures import cautions
from fronts.figures.findings import findings_of
from fronts.figures.set_ups import bits, spared_jigs, step_rows, supports
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import show
from fronts.rules.materials import PERCENT
from fronts.rules.order_of_cabinets import changes_along, least_changes
from fronts.rules.results import Schedule
from fronts.rules.set_ups import set_ups, tools_used
from fronts.sheets.sheet_page import SheetSource, page


def content(source: SheetSource) -> str:
    """The sheet as HTML."""
    schedule, kitchen, plan = source.schedule, source.kitchen, source.jig_plan
    used = tools_used(schedule, kitchen, plan)
    of = set_ups(schedule, used)
    walked = {label: of[label] for label in walking_order(schedule, kitchen)}
    order = least_changes(walked)
    context = {
        "title": "Set-up",
        "stops": findings_of(schedule).stops,
        "supports": supports(used, schedule, plan),
        "spared": spared_jigs(plan, schedule.job.unit),
        "left": _left_to_true(kitchen.practice.jig_play),
        "exact": plan.exact,
        "bits": bits(used, schedule),
        "screws": [need for need in schedule.hardware if need.is_screw],
        "steps": step_rows(order, used, schedule, kitchen),
        "several_walls": len({kitchen.cabinet(label).wall for label in walked}) > 1,
        "changes": order.changes,
        "over": order.changes - order.least,
        "as_they_stand": changes_along([tools for tools in walked.values() if tools]),
        "without": [label for label, tools in walked.items() if not tools],
        "cautions": cautions.on_site(schedule.fronts),
    }
    return page("set_up.html", source, context)


def _left_to_true(taken: Fraction) -> str:
    """How much of the play a merged jig leaves: `half`, `30 %`."""
    return "half" if 2 * taken == PERCENT else f"{show(PERCENT - taken, 'mm')} %"


def walking_order(schedule: Schedule, kitchen: Kitchen) -> list[str]:
    """The cabinets that have fronts, wall by wall."""
    having = {front.cabinet for front in schedule.fronts}
    return [
        cabinet.label
        for wall in kitchen.wall_names
        for cabinet in kitchen.cabinets
        if cabinet.wall == wall and cabinet.label in having
    ]
