"""The order that people gave to a list."""

from collections.abc import Sequence
from typing import Protocol, TypeVar

from django.db.models import Max, Model, QuerySet


class Placed(Protocol):
    """A row with a place in its list."""

    pk: int
    position: int


Row = TypeVar("Row", bound=Placed)
AnyModel = TypeVar("AnyModel", bound=Model)


def last_position(rows: QuerySet[AnyModel]) -> int:
    """The position behind all the rows."""
    most: int | None = rows.aggregate(most=Max("position"))["most"]
    return 0 if most is None else most + 1


def placed(rows: Sequence[Row], moved: Row, to: int) -> list[Row]:
    """The rows in their new order, with `moved` at place `to`."""
    others = [row for row in rows if row.pk != moved.pk]
    return [*others[: max(to, 0)], moved, *others[max(to, 0) :]]
