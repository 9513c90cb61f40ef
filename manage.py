#!/usr/bin/env python3
"""Runs the project's commands; outside an activated environment it prepares one first."""

import os
import sys

from shopjobs import bootstrap


def main() -> None:
    """Run one command."""
    bootstrap.enter(sys.argv[1:])
    os.environ.setdefault("DJANGO_SETTINGS_MODULE", "shopjobs.settings")
    from django.core.management import execute_from_command_line

    execute_from_command_line(sys.argv)


if __name__ == "__main__":
    main()
