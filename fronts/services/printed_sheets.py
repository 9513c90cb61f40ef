"""Freezing what a fitting sheet shows when it is printed, so that its code can be looked up."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import datetime

from django.db import transaction

from fronts.models import Cabinet, PrintedSheet
from fronts.rules.shown_figures import ShownFigure
from shopjobs.models import Job

CODES_OF_A_CABINET = 20
"""So many sheets that differ are known of one cabinet; who works from older paper than that is
told that nobody knows it."""
CODES_OF_A_JOB = 2000


@dataclass(frozen=True, slots=True)
class SheetShown:
    """A cabinet's sheet as it is printed."""

    label: str
    code: str
    figures: tuple[ShownFigure, ...]


@transaction.atomic
def printed_sheets_keep(
    *, job: Job, sheets: Iterable[SheetShown], at: datetime
) -> Mapping[str, datetime]:
    """Freeze what the sheets show, once a code, and give when each was printed first, by code."""
    wanted = {(sheet.label, sheet.code): sheet for sheet in sheets}
    rows = PrintedSheet.objects.filter(job=job, code__in={code for _, code in wanted})
    known = {(row.label, row.code): row for row in rows}
    keys = _keys_of(job, {label for label, _ in wanted})
    missing = [sheet for key, sheet in wanted.items() if key not in known]
    # What another request prints at the same time is no fault: it froze the same figures.
    PrintedSheet.objects.bulk_create(
        [_row(job, sheet, keys.get(sheet.label), at) for sheet in missing], ignore_conflicts=True
    )
    for key, row in known.items():
        if key in wanted and row.cabinet_id != keys.get(row.label):
            row.cabinet_id = keys.get(row.label)
            row.save(update_fields=["cabinet"])
    if missing:
        _forget_oldest(job, {sheet.label for sheet in missing}, set(wanted))
    return {code: at for _, code in wanted} | {
        row.code: row.printed_at for key, row in known.items() if key in wanted
    }


def _keys_of(job: Job, labels: set[str]) -> Mapping[str, int]:
    cabinets = Cabinet.objects.filter(job=job, label__in=labels)
    return dict(cabinets.values_list("label", "pk"))


def _row(job: Job, sheet: SheetShown, cabinet: int | None, at: datetime) -> PrintedSheet:
    figures = [[each.of, each.name, each.says] for each in sheet.figures]
    return PrintedSheet(
        job=job, cabinet_id=cabinet, label=sheet.label, code=sheet.code, figures=figures,
        printed_at=at,
    )  # fmt: skip


def _forget_oldest(job: Job, labels: set[str], current: set[tuple[str, str]]) -> None:
    """Let the oldest go beyond what is kept; never what is being printed."""
    rows = PrintedSheet.objects.filter(job=job).order_by("-printed_at", "-pk")
    kept: dict[str, int] = {}
    gone: list[int] = []
    for place, (key, label, code) in enumerate(rows.values_list("pk", "label", "code")):
        kept[label] = kept.get(label, 0) + 1
        too_many = label in labels and kept[label] > CODES_OF_A_CABINET
        if (too_many or place >= CODES_OF_A_JOB) and (label, code) not in current:
            gone.append(key)
    PrintedSheet.objects.filter(pk__in=gone).delete()
