"""Cuts and ticks of fronts, which a file's kitchen that replaces theirs does not take away."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from fronts.models import FrontCut, WorkTick
from fronts.selectors.kitchens import front_keys_of
from shopjobs.models import Job
from shopjobs.services.recording import made

Work = type[FrontCut] | type[WorkTick]
_TABLES: tuple[Work, ...] = (FrontCut, WorkTick)


@dataclass(frozen=True, slots=True)
class WorkStood:
    """A row of one of these tables: what its front was called, and its other columns."""

    table: Work
    front: str
    said: dict[str, Any]


def work_stood(job: Job) -> tuple[WorkStood, ...]:
    """Every cut and tick of the job's fronts, before a file replaces them."""
    called = {key: label for label, key in front_keys_of(job).items()}
    return tuple(
        WorkStood(table, called[row.front_id], _said(row))
        for table in _TABLES
        for row in table._default_manager.filter(front__in=called).order_by("pk")
    )


def work_add(job: Job, stood: Iterable[WorkStood]) -> None:
    """They are those of the fronts that are called so now; what is called so no more is gone."""
    keys = front_keys_of(job)
    for table in _TABLES:
        rows = [
            table(front_id=keys[one.front], **one.said)
            for one in stood
            if one.table is table and one.front in keys
        ]
        made(table, rows)


def _said(row: FrontCut | WorkTick) -> dict[str, Any]:
    columns = (column.attname for column in row._meta.concrete_fields)
    return {name: getattr(row, name) for name in columns if name not in ("id", "front_id")}
