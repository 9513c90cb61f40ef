"""What the commands on kept jobs share: finding the shop, and saying what is wrong."""

from collections.abc import Iterator
from contextlib import contextmanager

from django.core.exceptions import ValidationError
from django.core.management.base import BaseCommand, CommandParser
from django.db import DatabaseError

from fronts.management.job_files import refuse
from shopjobs.models import Job, Shop
from shopjobs.services.refused import Refused


def add_shop(parser: CommandParser) -> None:
    """The option --shop."""
    parser.add_argument("--shop", metavar="NAME", required=True, help="the shop's name")


@contextmanager
def told(command: BaseCommand) -> Iterator[None]:
    """Say in a line each what a service or the database refuses, and exit 2."""
    try:
        yield
    except Refused as refused:
        refuse(command, refused.message)
    except ValidationError as error:
        refuse(command, *_lines(error))
    except DatabaseError as error:
        first = str(error).partition("\n")[0]
        refuse(command, f"the database can't be used ({first}); has it been migrated?")


def shop_named(command: BaseCommand, name: str) -> Shop:
    """The shop; else a line that names those there are, and exit 2."""
    shop = Shop.objects.filter(name=name).first()
    if shop is None:
        names = ", ".join(Shop.objects.order_by("name").values_list("name", flat=True))
        refuse(command, f"no shop is called {name}; there are: {names or 'none yet'}")
    return shop


def job_numbered(command: BaseCommand, shop: Shop, number: str) -> Job:
    """The shop's job; else a line that says so, and exit 2."""
    job = Job.objects.filter(shop=shop, number=number).first()
    if job is None:
        refuse(command, f"{shop.name} has no job {number}")
    return job


def _lines(error: ValidationError) -> list[str]:
    if not hasattr(error, "error_dict"):
        return error.messages
    named = error.message_dict.items()
    return [f"{name}: {each}" for name, several in named for each in several]
