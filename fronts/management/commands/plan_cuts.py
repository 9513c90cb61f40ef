"""`plan_cuts FILE`: a parts file in, its cutting plan as JSON on standard output."""

import json
import math
import sys
from argparse import ArgumentTypeError
from pathlib import Path
from typing import Any

from django.core.management.base import BaseCommand, CommandParser

from fronts.cutting.plan import plan
from fronts.cutting.plan_json import plan_to_print
from fronts.jobfile.faults import Refused
from fronts.jobfile.parts_file import read_request

SECONDS = 2.0
MOST_SECONDS = 3_600.0
REFUSED = 2


class Command(BaseCommand):
    """Needs no database. Exits 2 where the file is refused, with a line per fault."""

    help = "Print the cutting plan of a parts file (`-` reads standard input) as JSON."
    requires_system_checks = []

    def add_arguments(self, parser: CommandParser) -> None:
        """FILE and --seconds."""
        parser.add_argument("file", metavar="FILE", help="a parts file, or - for standard input")
        parser.add_argument(
            "--seconds",
            type=_seconds,
            default=SECONDS,
            help="stop after so many seconds with the best plan so far (default 2)",
        )

    def handle(self, *args: Any, **options: Any) -> None:
        """Read, plan, print."""
        try:
            request = read_request(_read(options["file"]))
        except Refused as refused:
            self.stderr.write("\n".join(str(fault) for fault in refused.faults))
            sys.exit(REFUSED)
        except OSError as error:
            self.stderr.write(f"{options['file']}: {error.strerror}, wanted a file to read")
            sys.exit(REFUSED)
        shown = plan_to_print(plan(request, options["seconds"]))
        self.stdout.write(json.dumps(shown, ensure_ascii=False, indent=1))


def _read(name: str) -> bytes:
    return sys.stdin.buffer.read() if name == "-" else Path(name).read_bytes()


def _seconds(text: str) -> float:
    try:
        seconds = float(text)
    except ValueError:
        seconds = math.nan
    if not 0 < seconds <= MOST_SECONDS:
        raise ArgumentTypeError(f"{text!r} is not a number of seconds from 0 to {MOST_SECONDS:.0f}")
    return seconds
