"""All sheets of a job as a task: a few files are a piece, so that shops take turns."""

from collections.abc import Iterable, Sequence
from typing import TypeAlias, cast

from fronts.jobfile import read
from fronts.models import SheetSet
from fronts.selectors.sheet_sets import printed_before
from fronts.services.sheet_sets import (
    MadeFile,
    sheet_files_drop,
    sheet_files_keep,
    sheet_sets_drop_older,
)
from fronts.sheets.job_source import source_of_kitchen, with_codes
from fronts.sheets.pdf import Paper, PrintingError, render
from fronts.sheets.registry import (
    Printout,
    every_printout,
    has_fittings_together,
)
from fronts.sheets.sheet_page import SheetSource
from shopjobs.models import BackgroundTask, TaskState
from shopjobs.services.refused import Refused
from shopjobs.task_kinds import TaskKind

FILES_A_PIECE = 4
"""Two or three seconds' work."""

Files: TypeAlias = list[MadeFile]


def sheets_and_pieces(source: SheetSource) -> tuple[int, int]:
    """How many files the set has, and in how many pieces they are made."""
    printouts = list(every_printout(source))
    return _files_of(printouts), -(-len(printouts) // FILES_A_PIECE)


def _files_of(printouts: Sequence[Printout]) -> int:
    """With the one that has all fitting sheets; that is put together when somebody asks for it."""
    return len(printouts) + has_fittings_together(each.cabinet for each in printouts)


def _set_of(task: BackgroundTask) -> SheetSet:
    found = SheetSet.objects.filter(task=task).select_related("job", "plan__made_by").first()
    if found is None:
        raise Refused("What was to be printed is gone. Print the sheets again.")
    return found


def _make(task: BackgroundTask) -> Files:
    sheet_set = _set_of(task)
    job, kitchen = sheet_set.job, read(sheet_set.kitchen)
    source = source_of_kitchen(job, kitchen, sheet_set.printed_on, sheet_set.plan)
    source = with_codes(source, job, sheet_set.site)
    printouts = list(every_printout(source))
    if _files_of(printouts) != sheet_set.sheets:
        raise Refused("The cutting plan of these sheets is gone. Print the sheets again.")
    return _printed(printouts[task.done * FILES_A_PIECE :][:FILES_A_PIECE], sheet_set)


def _printed(printouts: Iterable[Printout], sheet_set: SheetSet) -> Files:
    """The files; one that was printed just so before is that one."""
    paper = cast(Paper, sheet_set.paper)
    named = [(each, each.made_from(paper)) for each in printouts]
    before = printed_before(sheet_set.job, [name for _, name in named])
    try:
        return [
            MadeFile(each.file, each.cabinet, name, before.get(name) or render(each.html(), paper))
            for each, name in named
        ]
    except PrintingError as lacking:
        raise Refused(str(lacking)) from lacking


def _keep(task: BackgroundTask, made: Files) -> None:
    sheet_files_keep(sheet_set=_set_of(task), made=made)


def _ended(task: BackgroundTask) -> None:
    sheet_set = SheetSet.objects.filter(task=task).first()
    if sheet_set is None:
        return
    if task.state == TaskState.DONE:
        sheet_sets_drop_older(sheet_set=sheet_set)
    else:
        sheet_files_drop(sheet_set=sheet_set)


KIND = TaskKind(
    make=_make,
    keep=_keep,
    ended=_ended,
    fault="The sheets could not be printed; the worker's log says why.",
)
