"""Every row of a job's shop as it stands."""

from functools import cache
from typing import Any

from django.db.models import Model, QuerySet

from shopjobs.models import Job, Revision, Session, Shop
from shopjobs.services.recording import UNRECORDED
from shopjobs.services.shop_files.rows import values_of
from shopjobs.services.shop_files.tables import rows_of as rows_of_shop
from shopjobs.services.shop_files.tables import shop_tables


def state_of(job: Job) -> dict[tuple[str, Any], dict[str, Any]]:
    """Every row of the job's shop with all its values, but for history itself and counters."""
    rows = {}
    for label, found in _rows_of(job.shop).items():
        left_out = UNRECORDED.get(label, set())
        for row in found.all():
            values = {name: value for name, value in values_of(row).items() if name not in left_out}
            rows[label, row.pk] = values
    return rows


@cache
def _rows_of(shop: Shop) -> dict[str, QuerySet[Model]]:
    """Where the rows of a shop are found, by their table: asked many times, made once."""
    return {
        label: rows_of_shop(shop, table)
        for label, table in shop_tables().items()
        if table not in (Revision, Session) and not table._meta.auto_created
    }
