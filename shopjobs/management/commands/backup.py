"""`backup [--to FILE_OR_FOLDER]`: the whole installation in one file."""

from datetime import UTC
from pathlib import Path

from django.conf import settings
from django.core.management.base import BaseCommand, CommandParser
from django.utils import timezone

from shopjobs.management.refusals import told
from shopjobs.services.backups.making import backup_make


class Command(BaseCommand):
    """Saves the database and what people uploaded; the site goes on meanwhile."""

    help = "Writes the whole installation into one file."

    def add_arguments(self, parser: CommandParser) -> None:
        """Take where the backup goes."""
        parser.add_argument(
            "--to",
            metavar="FILE_OR_FOLDER",
            type=Path,
            default=settings.BASE_DIR / "var" / "backups",
            help="a new file whose name ends in .zip, or a folder for it (var/backups)",
        )

    def handle(self, *, to: Path, **options: object) -> None:
        """Say where it is and how large."""
        with told(self):
            path = backup_make(to=to, at=timezone.now().astimezone(UTC))
        self.stdout.write(f"{path}: {path.stat().st_size:,} bytes")
