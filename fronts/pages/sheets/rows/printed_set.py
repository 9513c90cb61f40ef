"""The printed set as its page shows it: how far it is, or what it holds."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime

from fronts.models import CutPlan, SheetSet
from fronts.pages.shared.task_progress import TaskProgress, task_progress
from fronts.selectors.sheet_sets import files_of, fittings_of, is_kept
from fronts.sheets.registry import FITTING, SHEETS, has_fittings_together
from fronts.sheets.sheet_page import SheetSource
from shopjobs.services.lost_tasks import KEPT_FOR


@dataclass(frozen=True, slots=True)
class Progress:
    """How many sheets of the set are printed."""

    task: TaskProgress
    done: int
    wanted: int


@dataclass(frozen=True, slots=True)
class SetShown:
    """A finished set; `outdated` where the kitchen, its plan or the paper is another by now."""

    sheets: int
    made_by: str
    made_at: datetime
    kept_until: datetime
    fingerprint: str
    outdated: bool
    has_fittings: bool


def progress_of(sheet_set: SheetSet | None) -> Progress | None:
    """How far a set is that is being printed."""
    if sheet_set is None or not sheet_set.task.is_open:
        return None
    done = files_of(sheet_set).count()
    return Progress(task_progress(sheet_set.task), done, sheet_set.sheets)


def set_shown(
    sheet_set: SheetSet | None, source: SheetSource, plan: CutPlan | None, at: datetime
) -> SetShown | None:
    """The set, beside what would be printed now."""
    if sheet_set is None or not is_kept(sheet_set, at):
        return None
    task = sheet_set.task
    made_at = task.ended_at or at
    same = (sheet_set.fingerprint, sheet_set.plan_id, sheet_set.paper)
    now = (source.fingerprint, plan and plan.pk, sheet_set.job.shop.paper)
    return SetShown(
        sheets=sheet_set.sheets,
        made_by=task.asked_by.shown_name if task.asked_by else "",
        made_at=made_at,
        kept_until=made_at + KEPT_FOR,
        fingerprint=sheet_set.fingerprint,
        outdated=same != now,
        has_fittings=has_fittings_together(_cabinets(sheet_set)),
    )


def _cabinets(sheet_set: SheetSet) -> Iterable[str]:
    return fittings_of(sheet_set).values_list("cabinet", flat=True)


def single_sheets(source: SheetSource) -> list[str]:
    """The keys of the sheets that are made while one waits."""
    return [key for key, sheet in SHEETS.items() if key != FITTING and sheet.is_there(source)]
