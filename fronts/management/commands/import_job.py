"""`import_job FILE --shop NAME`: a job file into the database."""

from django.core.management.base import BaseCommand, CommandParser
from django.utils import timezone

from fronts.management import job_files, jobs
from fronts.services.imports import job_import
from shopjobs.management.refusals import shop_named, told


class Command(BaseCommand):
    """Keeps a job file as a job of a shop."""

    help = "Reads a job file and keeps it as a job of the shop."

    def add_arguments(self, parser: CommandParser) -> None:
        job_files.add_file(parser)
        jobs.add_shop(parser)
        parser.add_argument(
            "--replace",
            action="store_true",
            help="put it in the place of the shop's job of that number",
        )

    def handle(self, *, file: str, shop: str, replace: bool, **options: object) -> None:
        stated = job_files.job_file_in(self, file)
        with told(self):
            job = job_import(
                kitchen=stated.kitchen,
                records=stated.records,
                shop=shop_named(self, shop),
                at=timezone.now(),
                replace=replace,
            )
        self.stdout.write(f"{shop} has job {job.number}: {len(stated.kitchen.cabinets)} cabinets")
