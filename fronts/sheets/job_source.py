"""What a job's sheets are made from, as it stands in the database."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import replace
from datetime import date, datetime

from django.utils import timezone

from fronts.figures.cabinet_words import cabinet_words
from fronts.figures.offcuts import lost_words
from fronts.figures.shown_figures import shown_figures
from fronts.models import CutPlan
from fronts.rules.fingerprint import parts_fingerprint, sheet_code
from fronts.rules.kitchen import Kitchen
from fronts.rules.results import Schedule
from fronts.rules.runs import stood
from fronts.selectors.approved_items import ItemOrdered
from fronts.selectors.offcuts import offcuts_kept
from fronts.selectors.order_progress import order_progress
from fronts.selectors.plans import named_plans
from fronts.selectors.printed_sheets import first_printed
from fronts.selectors.schedules import schedule_for
from fronts.services.printed_sheets import SheetShown, printed_sheets_keep
from fronts.sheets.sheet_page import CutPlanSource, OrderSource, SheetSource
from fronts.snapshot import kitchen_of
from shopjobs.models import Job


def source_of_job(job: Job, printed: date, plan: CutPlan | None = None) -> SheetSource:
    """The job's kitchen with its schedule, its order, and the plan where there is one."""
    return source_of_kitchen(job, kitchen_of(job), printed, plan)


def source_of_kitchen(
    job: Job, kitchen: Kitchen, printed: date, plan: CutPlan | None
) -> SheetSource:
    """The same of the job's kitchen as it is, or was: worked out once, then remembered."""
    kitchen = stood(kitchen)
    schedule = schedule_for(job, kitchen)
    source = SheetSource(kitchen, schedule, printed, order=_order(job, schedule))
    return _with_plan(source, plan)


def _order(job: Job, schedule: Schedule) -> OrderSource:
    """How far the order is by what was approved; what has changed since is said too."""
    progress = order_progress(job)
    approval = progress.approval
    if approval is None:
        return OrderSource("Not approved yet: not to be ordered from.")
    at = timezone.localtime(approval.approved_at)
    state = f"Approved by {approval.approved_by.shown_name}, {at:%Y-%m-%d}."
    changed = len(progress.differences(schedule))
    if changed:
        lines = "1 line has" if changed == 1 else f"{changed} lines have"
        state = f"{state} {lines} changed since and wait to be decided on."
    return OrderSource(state, {item.item: _so_far(item) for item in progress.items.values()})


def _so_far(item: ItemOrdered) -> str:
    """`12 approved, 12 sent, 10 came`."""
    sent = f", {item.sent} sent, {item.came} came" if item.sent else ""
    return f"{item.ordered} approved{sent}"


def _with_plan(source: SheetSource, plan: CutPlan | None) -> SheetSource:
    """The same with a cutting plan, if any, that says by whom and from which parts it was made."""
    if plan is None:
        return source
    made_at = timezone.localtime(plan.finished_at or plan.started_at)
    shown = CutPlanSource(
        plans=tuple(named_plans(plan)),
        made=f"Made by {plan.made_by.shown_name}, {made_at:%Y-%m-%d %H:%M}, "
        f"from parts {plan.fingerprint}.",
        outdated=plan.fingerprint != parts_fingerprint(source.schedule.parts),
        numbers={place: row.label for place, row in offcuts_kept(plan).items() if not row.gone_at},
        lost=tuple(lost_words(plan)),
    )
    return replace(source, plan=shown)


def with_codes_kept(
    source: SheetSource, job: Job, labels: Iterable[str], site: str, at: datetime
) -> SheetSource:
    """The same, to print the fitting sheets of these cabinets: what they show is frozen.

    Their codes lead to the `site`.
    """
    kept = printed_sheets_keep(job=job, sheets=_shown(source, labels), at=at)
    return replace(source, first_printed=_days(kept), site=site)


def with_codes(source: SheetSource, job: Job, site: str) -> SheetSource:
    """The same, to print fitting sheets whose figures were frozen before."""
    return replace(source, first_printed=_days(first_printed(job)), site=site)


def _shown(source: SheetSource, labels: Iterable[str]) -> Iterator[SheetShown]:
    for label in labels:
        cabinet = source.kitchen.cabinet(label)
        words = cabinet_words(source.schedule, source.kitchen, cabinet, source.jig_plan)
        figures = shown_figures(words)
        yield SheetShown(label, sheet_code(figures), figures)


def _days(times: Mapping[str, datetime]) -> Mapping[str, date]:
    return {code: timezone.localtime(at).date() for code, at in times.items()}
