"""The order that people gave to a list."""

from typing import Any

from django.db.models import Max, QuerySet

from fronts.services.saving import enter, saved


def last_position(rows: QuerySet[Any]) -> int:
    """The position behind all the rows."""
    most: int | None = rows.aggregate(most=Max("position"))["most"]
    return 0 if most is None else most + 1


def put_at(rows: QuerySet[Any], moved: Any, to: int) -> None:
    """Put one of the rows at place `to` of them, counted from 0."""
    others = list(rows.exclude(pk=moved.pk).order_by("position", "pk"))
    others.insert(max(to, 0), moved)
    for position, row in enumerate(others):
        enter(row, {"position": position})
        saved(row)
