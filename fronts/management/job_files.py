"""What the commands on job files share: reading one, saying what is wrong, printing."""

import io
import json
import sys

from django.core.management.base import BaseCommand, CommandParser

from fronts.jobfile import JobFile, Refused, read_file
from shopjobs.management.refusals import refuse


def add_file(parser: CommandParser) -> None:
    """The argument FILE."""
    parser.add_argument("file", metavar="FILE", help="a job file, or - for standard input")


def job_file_in(command: BaseCommand, name: str) -> JobFile:
    """What a job file states; else one line per fault on standard error, and exit 2."""
    try:
        return read_file(name)
    except Refused as refused:
        refuse(command, *(str(each) for each in refused.faults))


def print_json(command: BaseCommand, said: object) -> None:
    """Print plain values as JSON."""
    print_text(command, json.dumps(said, ensure_ascii=False, indent=1))


def print_text(command: BaseCommand, text: str) -> None:
    """Print in UTF-8, whatever the terminal is set to: files and programs read this."""
    if isinstance(sys.stdout, io.TextIOWrapper):
        sys.stdout.reconfigure(encoding="utf-8")
    command.stdout.write(text)
