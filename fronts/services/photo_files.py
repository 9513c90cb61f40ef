"""The files of photos: put before their job is held, and removed where nothing comes of them.

A store may be slow; meanwhile others work on the job.
"""

import logging
from collections.abc import Iterator, Sequence
from contextlib import contextmanager

from django.db import DatabaseError
from django.utils import timezone

from fronts.models.photos import place_of
from shopjobs.models import Job
from shopjobs.services.unnamed_files import file_put, files_settle

log = logging.getLogger(__name__)


@contextmanager
def pictures_put(job: Job, pictures: Sequence[bytes]) -> Iterator[list[str]]:
    """The names of files for some pictures; what no row names after the block is removed.

    To be entered before the transaction that writes the rows, and left after it.
    """
    names = [place_of(job) for _ in pictures]
    try:
        for name, picture in zip(names, pictures, strict=True):
            file_put(name=name, content=picture, at=timezone.now())
        yield names
    finally:
        _settle(names)


def _settle(names: Sequence[str]) -> None:
    try:
        if names:
            files_settle(names)
    except DatabaseError:
        log.warning("it can't be asked now which photos came to nothing; it is when tidied up")
