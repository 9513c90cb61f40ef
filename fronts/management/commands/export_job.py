"""`export_job NUMBER --shop NAME`: a job of the database as a job file."""

from django.core.management.base import BaseCommand, CommandParser

from fronts.jobfile import write
from fronts.management import job_files, jobs
from fronts.selectors.records import records_of
from fronts.snapshot import kitchen_of
from shopjobs.management.refusals import shop_named, told


class Command(BaseCommand):
    """Prints a job of a shop as a job file."""

    help = "Prints a job of the shop as a job file."

    def add_arguments(self, parser: CommandParser) -> None:
        parser.add_argument("number", metavar="NUMBER", help="the job's number")
        jobs.add_shop(parser)

    def handle(self, *, number: str, shop: str, **options: object) -> None:
        with told(self):
            job = jobs.job_numbered(self, shop_named(self, shop), number)
            kitchen, records = kitchen_of(job), records_of(job)
        job_files.print_text(self, write(kitchen, records))
