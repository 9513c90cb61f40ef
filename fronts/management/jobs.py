"""What the commands on kept jobs share: naming the shop, and finding the job."""

from django.core.management.base import BaseCommand, CommandParser

from shopjobs.management.refusals import refuse
from shopjobs.models import Job, Shop


def add_shop(parser: CommandParser) -> None:
    """The option --shop."""
    parser.add_argument("--shop", metavar="NAME", required=True, help="the shop's name")


def job_numbered(command: BaseCommand, shop: Shop, number: str) -> Job:
    """The shop's job; else a line that says so, and exit 2."""
    job = Job.objects.filter(shop=shop, number=number).first()
    if job is None:
        refuse(command, f"{shop.name} has no job {number}")
    return job
