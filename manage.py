#!/usr/bin/env python3
"""Runs the project's commands; outside an activated environment it prepares one first."""

import os
import sys

from shopjobs import bootstrap


def main() -> None:
    """Run one command."""
    bootstrap.enter(sys.argv[1:])
    os.environ.setdefault("DJANGO_SETTINGS_MODULE", "shopjobs.settings")
    try:
        from django.core.management import execute_from_command_line
    except ImportError:
        sys.exit(
            "Django is not installed in the environment that is active. Deactivate it and run "
            "this again, or install the packages that pyproject.toml names."
        )
    execute_from_command_line(sys.argv)


if __name__ == "__main__":
    main()
