"""`schedule FILE`: a whole kitchen worked out, as JSON; needs no database."""

from django.core.management.base import BaseCommand, CommandParser

from fronts.jobfile import schedule_json
from fronts.management import job_files
from fronts.rules.schedule import schedule
from fronts.rules.truing import truings


class Command(BaseCommand):
    """Prints the schedule of a job file."""

    help = "Reads a job file and prints its whole schedule as JSON."
    requires_system_checks = []

    def add_arguments(self, parser: CommandParser) -> None:
        job_files.add_file(parser)

    def handle(self, *, file: str, **options: object) -> None:
        stated = job_files.job_file_in(self, file)
        planned = schedule(stated.kitchen)
        trued = truings(stated.records.fits, planned, stated.kitchen)
        job_files.print_json(self, schedule_json(planned, trued))
