"""Uploaded files that nothing names: what a request put that came to nothing, or lost its job.

A file is named by its row; where that was deleted, by the history that can bring it back. Only
what this installation put itself, and wrote down before, or what a job that is gone for good had,
is ever removed: another one may keep files in the same place.
"""

import logging
import re
from collections.abc import Iterable, Sequence
from datetime import datetime, timedelta
from functools import reduce
from operator import or_

from django.apps import apps
from django.core.files.base import ContentFile
from django.core.files.storage import default_storage
from django.db.models import FileField, Q, QuerySet, TextField
from django.db.models.functions import Cast

from shopjobs.models import FilePut, Revision

UPLOADED = re.compile(r"[a-z]+(?:/[0-9]+)*/[0-9a-f]{16,64}\.[a-z]+")
"""What an uploaded file is called."""
MAY_COME = timedelta(days=1)
"""So long a row may come after its file: longer than any request takes."""

log = logging.getLogger(__name__)


def file_put(*, name: str, content: bytes, at: datetime) -> str:
    """Put a file under a name that is nobody's yet; written down first, so that it is not lost."""
    FilePut.objects.create(name=name, at=at)
    return default_storage.save(name, ContentFile(content))


def files_settle(names: Sequence[str]) -> None:
    """Of some files that were put, keep those that something names by now; the others go.

    One that the store does not remove now is tried again when it is tidied up.
    """
    waiting = files_let_go(names)
    FilePut.objects.filter(name__in=set(names) - set(waiting)).delete()


def files_tidy(*, at: datetime) -> None:
    """Settle the files of requests that never came to their end."""
    old = FilePut.objects.filter(at__lt=at - MAY_COME)
    files_settle([*old.values_list("name", flat=True)])


def files_let_go(names: Iterable[str]) -> list[str]:
    """Remove those of some files that nothing names; which of them the store did not remove."""
    waiting = []
    for name in unnamed(names):
        try:
            default_storage.delete(name)
        except OSError as hindered:
            log.warning("the uploaded file %s stays for now: %s", name, hindered)
            waiting.append(name)
    return waiting


def unnamed(names: Iterable[str]) -> list[str]:
    """Those of some files that neither a row nor history names."""
    left = set(names)
    left -= _in_rows(left)
    if left:
        folders = {name.partition("/")[0] for name in left}
        is_named = reduce(or_, (Q(said__contains=f'"{folder}/') for folder in folders))
        left -= named_in(Revision.objects.all(), is_named)
    return sorted(left)


def named_in(revisions: "QuerySet[Revision]", where: Q | None = None) -> set[str]:
    """Every file that some revisions name: what they can bring back, or show."""
    said = revisions.annotate(said=Cast("changes", TextField())).filter(where or Q())
    texts = said.order_by().values_list("said", flat=True).iterator()
    return {found.group() for text in texts for found in UPLOADED.finditer(text)}


def _in_rows(names: set[str]) -> set[str]:
    """Those that a row names, a deleted job's too."""
    found: set[str] = set()
    for table in apps.get_models():
        for field in table._meta.concrete_fields:
            if isinstance(field, FileField):
                rows = table._base_manager.filter(**{f"{field.attname}__in": names})
                found.update(rows.values_list(field.attname, flat=True))
    return found
