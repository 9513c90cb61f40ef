"""`manage.py test`: the whole suite, run by pytest with the arguments that are given."""

import os
import sys

from django.core.management.base import BaseCommand


class Command(BaseCommand):
    """Hands over to pytest, whose exit code and closing line are the command's own."""

    help = "Runs the tests; whatever follows goes to pytest."

    def run_from_argv(self, argv: list[str]) -> None:
        """Replace this process by pytest."""
        os.environ.pop("DJANGO_SETTINGS_MODULE", None)
        sys.stdout.flush()
        os.execv(sys.executable, [sys.executable, "-m", "pytest", *argv[2:]])
