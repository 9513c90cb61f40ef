"""`read_notebook FILE`: a kitchen as it was written down on site, as a job file; no database."""

from django.core.management.base import BaseCommand, CommandParser

from fronts.jobfile import Refused, read_text, write
from fronts.management.job_files import print_text
from fronts.notebook import NotebookRefused, read_notebook
from fronts.rules.kinds import UNITS, Unit
from fronts.rules.lengths import LengthError, Mm, read
from fronts.rules.limits import COARSEST_STEP, length_fault
from shopjobs.management.refusals import refuse
from shopjobs.steps import USUAL


class Command(BaseCommand):
    """Prints the job file of a notebook; a line on standard error for every fault in it."""

    help = "Reads a kitchen as it was written down on site, and prints it as a job file."
    requires_system_checks = []

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument("file", metavar="FILE", help="a notebook, or - for standard input")
        parser.add_argument(
            "--unit", required=True, choices=tuple(UNITS), help="the unit of bare numbers"
        )
        parser.add_argument(
            "--step", help="what shared openings come down to, like 1/16 (default 1/16 in, 1 mm)"
        )

    def handle(self, *, file: str, unit: Unit, step: str | None, **options: object) -> None:
        sharing = Mm(USUAL[unit]) if step is None else self._step(step, unit)
        try:
            kitchen = read_notebook(read_text(file, "a notebook"), unit, sharing)
        except (NotebookRefused, Refused) as refused:
            refuse(self, *(str(fault) for fault in refused.faults))
        print_text(self, write(kitchen, of_no_shop=True))

    def _step(self, text: str, unit: str) -> Mm:
        try:
            step = read(text, unit)
        except LengthError as error:
            refuse(self, f"--step: {error}")
        fault = length_fault(step, zero=False, signed=False, most=COARSEST_STEP)
        if fault:
            refuse(self, f"--step: found “{text}”, wanted a length above zero, at most 1 in")
        return step
