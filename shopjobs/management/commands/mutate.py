"""`manage.py mutate`: changes the code in one place at a time and says what no test notices."""

import os
import sys

from django.core.management.base import BaseCommand


class Command(BaseCommand):
    """Hands over to the trials, in a process that has loaded nothing yet."""

    help = "Tries small changes of the code and says which of them no test notices."

    def run_from_argv(self, argv: list[str]) -> None:
        """Replace this process by the trials."""
        os.environ["DJANGO_SETTINGS_MODULE"] = "tests.settings"
        sys.stdout.flush()
        os.execv(sys.executable, [sys.executable, "-m", "tests.mutation", *argv[2:]])
