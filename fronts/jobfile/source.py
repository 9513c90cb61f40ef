"""Where a job file comes from: a path, or standard input."""

import sys
from pathlib import Path

from fronts.jobfile.faults import refused
from fronts.jobfile.json_text import LARGEST_FILE, decoded
from fronts.jobfile.read import JobFile, read_bytes

STANDARD_INPUT = "-"


def read_file(name: str) -> JobFile:
    """All that the file `name` states, or standard input for `-`; else `Refused`."""
    return read_bytes(_bytes_of(name, "a job file that can be read"))


def read_text(name: str, wanted: str) -> str:
    """The text in UTF-8 of the file `name`, or of standard input for `-`; else `Refused`."""
    return decoded(_bytes_of(name, f"{wanted} that can be read"), "text in UTF-8")


def _bytes_of(name: str, wanted: str) -> bytes:
    """One byte more than is allowed at most, so that an endless source ends."""
    try:
        if name == STANDARD_INPUT:
            return sys.stdin.buffer.read(LARGEST_FILE + 1)
        with Path(name).open("rb") as file:
            return file.read(LARGEST_FILE + 1)
    except OSError as error:
        why = (error.strerror or str(error)).lower()
        raise refused(name, why, wanted) from None
