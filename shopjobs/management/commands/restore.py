"""`restore FILE [--replace]`: the whole installation from a backup."""

from pathlib import Path

from django.core.management.base import BaseCommand, CommandParser

from shopjobs.management.refusals import told
from shopjobs.services.backups.restoring import backup_restore


class Command(BaseCommand):
    """Brings back what a backup holds, all of it or nothing."""

    help = "Brings back the whole installation from a backup."

    def add_arguments(self, parser: CommandParser) -> None:
        """Take the backup, and whether it may replace what is here."""
        parser.add_argument("file", metavar="FILE", type=Path, help="what backup wrote")
        parser.add_argument(
            "--replace", action="store_true", help="put it in the place of everything that is here"
        )

    def handle(self, *, file: Path, replace: bool, **options: object) -> None:
        """Say of when it is, and what it took to bring it up to this version."""
        with told(self), file.open("rb") as opened:
            restored = backup_restore(file=opened, replace=replace)
        self.stdout.write(
            f"Restored what was saved at {restored.manifest.made_at} by version "
            f"{restored.manifest.version}; migrations since: {restored.migrated}. "
            "Everybody signs in again."
        )
