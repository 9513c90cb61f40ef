"""`export_shop NAME --to FILE`: a shop as a file, on its way to another installation."""

from pathlib import Path

from django.core.management.base import BaseCommand, CommandParser

from shopjobs.management.refusals import shop_named, told
from shopjobs.services.new_file import new_file
from shopjobs.services.shop_files.exporting import shop_export


class Command(BaseCommand):
    """Writes everything that belongs to a shop into one file."""

    help = "Writes a shop, with all that belongs to it, into a file for another installation."

    def add_arguments(self, parser: CommandParser) -> None:
        """Take the shop's name, the file, and whether its people's passwords go along."""
        parser.add_argument("name", metavar="NAME", help="the shop's name")
        parser.add_argument("--to", metavar="FILE", required=True, type=Path, help="the new file")
        parser.add_argument(
            "--without-people",
            action="store_true",
            help="people go by name only, without passwords",
        )

    def handle(self, *, name: str, to: Path, without_people: bool, **options: object) -> None:
        """Write the file, or leave none."""
        with told(self):
            shop = shop_named(self, name)
            with new_file(to) as file:
                rows = shop_export(shop=shop, to=file, with_people=not without_people)
        self.stdout.write(f"{to} holds {shop}: {rows} rows")
