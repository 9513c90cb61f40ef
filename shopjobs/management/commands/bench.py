"""`manage.py bench`: how fast it is, as a table with the targets."""

import os
import sys

from django.core.management.base import BaseCommand


class Command(BaseCommand):
    """Hands over to the benchmarks, in a process that has loaded nothing yet."""

    help = "Runs the benchmarks, or those that are named: bench [NAME ...]"

    def run_from_argv(self, argv: list[str]) -> None:
        """Replace this process by the benchmarks."""
        os.environ["DJANGO_SETTINGS_MODULE"] = "tests.settings"
        sys.stdout.flush()
        os.execv(sys.executable, [sys.executable, "-m", "tests.benchmarks", *argv[2:]])
