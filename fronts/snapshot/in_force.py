"""Which row of the shop's ways holds for a shop or a job: the job's own, else its shop's."""

from typing import TypeVar

from django.db.models import F, Model, Q

from shopjobs.models import Job, Shop

Row = TypeVar("Row", bound=Model)


def row_in_force(table: type[Row], owner: Shop | Job) -> Row | None:
    """The job's own row, else its shop's; None where neither has one."""
    rows = table._default_manager.filter(rows_for(owner))
    return rows.order_by(F("job").asc(nulls_last=True)).first()


def rows_for(owner: Shop | Job) -> Q:
    """The shop's own rows, and the job's where a job asks.

    A row without a job is its shop's: it is never asked for without naming that shop.
    """
    if isinstance(owner, Shop):
        return Q(shop=owner, job=None)
    return Q(job=owner) | Q(shop=owner.shop_id, job=None)
