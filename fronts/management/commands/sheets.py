"""`sheets FILE --out DIR`: every PDF sheet of a job file; needs no database."""

from argparse import ArgumentTypeError
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

from django.core.management.base import BaseCommand, CommandError, CommandParser
from django.utils import timezone

from fronts.cutting.plan import plan
from fronts.figures.parts import material_name
from fronts.management import job_files
from fronts.rules.cutting_groups import cutting_groups
from fronts.rules.fingerprint import parts_fingerprint
from fronts.rules.lengths import show_with_unit
from fronts.rules.results import Schedule
from fronts.services.cutting_requests import usual_request
from fronts.sheets.pdf import PAPERS, Paper, PrintingError, render
from fronts.sheets.registry import (
    FITTINGS_TOGETHER,
    every_printout,
    fittings_together,
    has_fittings_together,
)
from fronts.sheets.sheet_page import CutPlanSource, SheetSource, source_of

SECONDS = 2.0
"""How long each material's plan is searched for, so that a job's sheets take seconds."""


class Command(BaseCommand):
    """Writes a job file's sheets into a folder and prints their names."""

    help = "Reads a job file and writes every PDF sheet of it into a folder."
    requires_system_checks = []

    def add_arguments(self, parser: CommandParser) -> None:
        job_files.add_file(parser)
        parser.add_argument("--out", metavar="DIR", required=True, type=Path, help="the folder")
        parser.add_argument("--paper", type=_paper, default="letter", help="letter or a4")

    def handle(self, *, file: str, out: Path, paper: Paper, **options: object) -> None:
        kitchen = job_files.job_file_in(self, file).kitchen
        unplanned = source_of(kitchen, timezone.localdate())
        source = replace(unplanned, plan=_usual_plan(unplanned.schedule))
        try:
            out.mkdir(parents=True, exist_ok=True)
            for file, content in _printed(source, paper):
                (out / file).write_bytes(content)
                self.stdout.write(str(out / file))
        except OSError as failed:
            raise CommandError(f"{out}: {failed.strerror or failed}") from failed
        except PrintingError as failed:
            raise CommandError(str(failed)) from failed


def _printed(source: SheetSource, paper: Paper) -> Iterator[tuple[str, bytes]]:
    fittings, printouts = [], list(every_printout(source))
    for printout in printouts:
        content = render(printout.html(), paper)
        yield printout.file, content
        if printout.cabinet:
            fittings.append((printout.cabinet, content))
    if has_fittings_together(each.cabinet for each in printouts):
        yield FITTINGS_TOGETHER, fittings_together(source.kitchen.job.number, fittings)


def _usual_plan(schedule: Schedule) -> CutPlanSource | None:
    """Each material planned from stock of the usual size; None where there is nothing to cut."""
    unit, groups = schedule.job.unit, cutting_groups(schedule.parts)
    plans = [
        (
            material_name(group.material, unit, group.thickness, group.width),
            plan(usual_request(group, unit), SECONDS),
        )
        for group in groups
    ]
    if not plans:
        return None
    kerf = show_with_unit(plans[0][1].request.kerf, unit)
    parts = parts_fingerprint(schedule.parts)
    made = f"Made here from stock of the usual sizes, with a kerf of {kerf}, from parts {parts}."
    return CutPlanSource(tuple(plans), made)


def _paper(text: str) -> str:
    if text.lower() not in PAPERS:
        raise ArgumentTypeError(f"“{text}” is not a paper; choose {' or '.join(PAPERS)}")
    return text.lower()
