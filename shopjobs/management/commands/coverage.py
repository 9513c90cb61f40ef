"""`manage.py coverage`: the whole suite, and how much of the trade's code it runs through."""

import os
import secrets
import subprocess
import sys
import tomllib
from collections.abc import Sequence

from django.conf import settings
from django.core.management.base import BaseCommand

from shopjobs.management.commands.test import MOST_SEED, explored, spread


class Command(BaseCommand):
    """Runs pytest under coverage.py and reports each package, lines and branches."""

    help = "Runs the tests and says which lines and branches no test runs through."

    def run_from_argv(self, argv: list[str]) -> None:
        """Run the tests, then report; fail where either does."""
        os.environ.pop("DJANGO_SETTINGS_MODULE", None)
        (settings.BASE_DIR / "var" / "coverage").mkdir(parents=True, exist_ok=True)
        words = explored(argv[2:], secrets.randbelow(MOST_SEED))
        words += spread(words, len(os.sched_getaffinity(0)))
        _coverage("erase")
        tests = _coverage("run", "-m", "pytest", *words)
        combined = _coverage("combine", "--quiet")
        reports = [_report(package) for package in _measured_packages()]
        sys.exit(tests or combined or max(reports))


def _measured_packages() -> list[str]:
    """Return the packages that must be run through nearly whole."""
    project = tomllib.loads((settings.BASE_DIR / "pyproject.toml").read_text(encoding="utf-8"))
    packages: list[str] = project["tool"]["coverage"]["run"]["source_pkgs"]
    return packages


def _report(package: str) -> int:
    """Show what of a package no test runs through; fail under the share in pyproject.toml."""
    print(f"\n{package}", flush=True)
    return _coverage("report", f"--include={package.replace('.', '/')}/*")


def _coverage(*words: str) -> int:
    command: Sequence[str] = [sys.executable, "-m", "coverage", *words]
    return subprocess.run(command, cwd=settings.BASE_DIR).returncode
