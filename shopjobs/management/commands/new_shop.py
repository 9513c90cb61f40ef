"""`manage.py new_shop`: a shop and its first owner, on a new installation."""

from argparse import ArgumentParser
from getpass import getpass
from typing import Any

from django.contrib.auth.password_validation import validate_password
from django.core.exceptions import ValidationError
from django.core.management.base import BaseCommand, CommandError
from django.db import transaction
from django.utils import timezone

from shopjobs.models import Person, Role
from shopjobs.models.shop import Unit
from shopjobs.services.people import person_create
from shopjobs.services.refused import Refused
from shopjobs.services.shops import shop_create
from shopjobs.steps import USUAL


class Command(BaseCommand):
    """Makes a shop and its owner, whose password is asked for."""

    help = "Makes a shop and its owner; asks for the owner's password."

    def add_arguments(self, parser: ArgumentParser) -> None:
        """Take the shop's name, its owner's sign-in name and its unit."""
        parser.add_argument("name", help="the shop's name")
        parser.add_argument("--owner", required=True, help="the owner's sign-in name")
        parser.add_argument(
            "--unit", choices=Unit.values, default=Unit.INCH, help="in (default) or mm"
        )

    def handle(self, *args: Any, **options: Any) -> None:
        """Make both, or neither."""
        password = getpass(f"Password for {options['owner']}: ")
        try:
            validate_password(password, Person(username=options["owner"]))
            with transaction.atomic():
                shop = shop_create(
                    name=options["name"], unit=options["unit"], step=USUAL[options["unit"]]
                )
                person_create(
                    shop=shop,
                    username=options["owner"],
                    role=Role.OWNER,
                    password=password,
                    at=timezone.now(),
                )
        except ValidationError as fault:
            raise CommandError(" ".join(fault.messages)) from fault
        except Refused as refused:
            raise CommandError(refused.message) from refused
        self.stdout.write(f"{shop} is ready; {options['owner']} can sign in.")
