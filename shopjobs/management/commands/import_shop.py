"""`import_shop FILE [--as NAME]`: a shop from another installation."""

from pathlib import Path

from django.core.management.base import BaseCommand, CommandParser

from shopjobs.management.refusals import told
from shopjobs.services.shop_files.importing import shop_import


class Command(BaseCommand):
    """Brings in a shop with all that belongs to it, or nothing."""

    help = "Brings in a shop from a file that export_shop wrote."

    def add_arguments(self, parser: CommandParser) -> None:
        """Take the file, another name, and whether its people may sign in as before."""
        parser.add_argument("file", metavar="FILE", type=Path, help="what export_shop wrote")
        parser.add_argument("--as", metavar="NAME", default="", dest="name", help="another name")
        parser.add_argument(
            "--without-people",
            action="store_true",
            help="people come by name only: without passwords, and with a number where a "
            "sign-in name is taken",
        )

    def handle(self, *, file: Path, name: str, without_people: bool, **options: object) -> None:
        """Say what came, and who is called otherwise here."""
        with told(self), file.open("rb") as opened:
            arrival = shop_import(file=opened, name=name, with_people=not without_people)
        self.stdout.write(f"{arrival.shop} is here: {arrival.rows} rows")
        for before, after in arrival.renamed.items():
            self.stdout.write(f"{before} signs in as {after}")
