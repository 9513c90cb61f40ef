"""`sheets FILE --out DIR`: every PDF sheet of a job file; needs no database."""

from argparse import ArgumentTypeError
from pathlib import Path

from django.core.management.base import BaseCommand, CommandError, CommandParser
from django.utils import timezone

from fronts.management import job_files
from fronts.rules.fingerprint import fingerprint
from fronts.rules.schedule import schedule
from fronts.sheets.every import every_sheet
from fronts.sheets.pdf import PAPERS, Paper, PrintingError, render
from fronts.sheets.sheet_page import Imprint


class Command(BaseCommand):
    """Writes a job file's sheets into a folder and prints their names."""

    help = "Reads a job file and writes every PDF sheet of it into a folder."
    requires_system_checks = []

    def add_arguments(self, parser: CommandParser) -> None:
        job_files.add_file(parser)
        parser.add_argument("--out", metavar="DIR", required=True, type=Path, help="the folder")
        parser.add_argument("--paper", type=_paper, default="letter", help="letter or a4")

    def handle(self, *, file: str, out: Path, paper: Paper, **options: object) -> None:
        kitchen = job_files.kitchen_in(self, file)
        worked_out = schedule(kitchen)
        imprint = Imprint(timezone.localdate(), fingerprint(worked_out))
        try:
            out.mkdir(parents=True, exist_ok=True)
            for sheet in every_sheet(worked_out, kitchen, imprint):
                target = out / sheet.file
                target.write_bytes(render(sheet.html(), paper))
                self.stdout.write(str(target))
        except OSError as failed:
            raise CommandError(f"{out}: {failed.strerror or failed}") from failed
        except PrintingError as failed:
            raise CommandError(str(failed)) from failed


def _paper(text: str) -> str:
    if text.lower() not in PAPERS:
        raise ArgumentTypeError(f"“{text}” is not a paper; choose {' or '.join(PAPERS)}")
    return text.lower()
