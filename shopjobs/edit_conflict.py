"""Who saved a field that somebody else was typing in."""

from collections.abc import Sequence

from django.db.models import Model
from django.utils import timezone

from shopjobs.forms.seen import somebody
from shopjobs.models import Job, Shop
from shopjobs.selectors import last_touching, revisions_of


def last_writer(owner: Job | Shop, rows: Sequence[Model], column: str) -> str:
    """Who saved this column of the rows last, else any of them: `Ada, at 10:54,`."""
    keys = {(row._meta.label_lower, row.pk) for row in rows}
    revisions = revisions_of(owner).filter(can_undo=True)
    revision = last_touching(revisions, keys, column) or last_touching(revisions, keys)
    if revision is None or revision.person is None:
        return somebody(column)
    return f"{revision.person.shown_name}, at {timezone.localtime(revision.at):%H:%M},"
