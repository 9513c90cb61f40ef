"""The file itself: lines of JSON under gzip. First what it is, then the rows, then their count.

The last line also holds the SHA-256 of all lines before it: a file that was cut short or
changed on its way is refused.
"""

import gzip
import json
import zlib
from collections.abc import Iterator, Mapping
from hashlib import sha256
from typing import IO, Any

from shopjobs.services.refused import Refused

LONGEST_LINE = 64 * 1024 * 1024


def write_lines(to: IO[bytes], lines: Iterator[Any]) -> int:
    """Write each as a line, then the line that closes the file; return how many there were."""
    digest, count = sha256(), 0
    with gzip.GzipFile(fileobj=to, mode="wb", filename="", mtime=0) as packed:
        for said in lines:
            line = _line(said)
            digest.update(line)
            packed.write(line)
            count += 1
        packed.write(_line(_closing(count, digest.hexdigest())))
    return count


def read_lines(file: IO[bytes]) -> Iterator[Any]:
    """Each line but the closing one; refuse at the end, if not before, what is not whole."""
    digest, count, last = sha256(), 0, b""
    for line in _raw_lines(file):
        if last:
            digest.update(last)
            count += 1
            yield _said(last)
        last = line
    if not last or _said(last) != _closing(count, digest.hexdigest()):
        raise Refused("This file was cut short or changed since it was written.")


def _closing(count: int, digest: str) -> Mapping[str, Any]:
    return {"lines": count, "sha256": digest}


def _line(said: Any) -> bytes:
    text = json.dumps(said, ensure_ascii=True, allow_nan=False, separators=(",", ":"))
    return text.encode() + b"\n"


def _said(line: bytes) -> Any:
    try:
        return json.loads(line)
    except (ValueError, RecursionError) as error:
        raise Refused("This file holds a line that can't be read.") from error


def _raw_lines(file: IO[bytes]) -> Iterator[bytes]:
    try:
        with gzip.GzipFile(fileobj=file, mode="rb") as packed:
            while line := packed.readline(LONGEST_LINE):
                if len(line) == LONGEST_LINE:
                    raise Refused("This file holds a line that is too long for a row.")
                yield line
    except (gzip.BadGzipFile, EOFError, zlib.error) as error:
        raise Refused("This is no file of a shop, or it is damaged.") from error
