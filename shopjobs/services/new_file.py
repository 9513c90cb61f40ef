"""A file that is there when it is whole, and not before."""

import os
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import IO

from shopjobs.services.refused import Refused


@contextmanager
def new_file(path: Path) -> Iterator[IO[bytes]]:
    """Open a file that only its user reads; it gets its name once all of it is on the disk.

    A file of that name is not overwritten.
    """
    if path.exists():
        raise Refused(f"{path} is there already. Give another name.")
    draft = path.with_name(f".{path.name}.{os.getpid()}")
    descriptor = os.open(draft, os.O_RDWR | os.O_CREAT | os.O_TRUNC, 0o600)
    try:
        with os.fdopen(descriptor, "w+b") as file:
            yield file
            file.flush()
            os.fsync(file.fileno())
        draft.replace(path)
    finally:
        draft.unlink(missing_ok=True)
