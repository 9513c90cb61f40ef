"""How every command says what it will not or can't do: lines on standard error, and exit 2."""

import sys
from collections.abc import Iterator
from contextlib import contextmanager
from typing import NoReturn

from django.core.exceptions import ValidationError
from django.core.management.base import BaseCommand
from django.db import DatabaseError

from shopjobs.models import Shop
from shopjobs.services.refused import Refused, first_line

REFUSED = 2
"""The exit code when something that was given can't be used."""


def refuse(command: BaseCommand, *lines: str) -> NoReturn:
    """Say why on standard error, a line each, and exit 2."""
    for line in lines:
        command.stderr.write(line)
    sys.exit(REFUSED)


@contextmanager
def told(command: BaseCommand) -> Iterator[None]:
    """Say in a line each what a service, the database or the system refuses, and exit 2."""
    try:
        yield
    except Refused as refused:
        refuse(command, refused.message)
    except ValidationError as error:
        refuse(command, *_lines(error))
    except DatabaseError as error:
        first = first_line(error)
        refuse(command, f"the database can't be used ({first}); has it been migrated?")
    except OSError as error:
        why = (error.strerror or str(error)).lower()
        refuse(command, f"{error.filename}: {why}" if error.filename else why)


def shop_named(command: BaseCommand, name: str) -> Shop:
    """The shop; else a line that names those there are, and exit 2."""
    shop = Shop.objects.filter(name=name).first()
    if shop is None:
        names = ", ".join(Shop.objects.order_by("name").values_list("name", flat=True))
        refuse(command, f"no shop is called {name}; there are: {names or 'none yet'}")
    return shop


def _lines(error: ValidationError) -> list[str]:
    if not hasattr(error, "error_dict"):
        return error.messages
    named = error.message_dict.items()
    return [f"{name}: {each}" for name, several in named for each in several]
