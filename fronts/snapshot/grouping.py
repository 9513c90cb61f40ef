"""Rows by what they belong to."""

from collections import defaultdict
from collections.abc import Iterable
from typing import Any, TypeVar

from django.db.models import Model

Row = TypeVar("Row", bound=Model)


def grouped(rows: Iterable[Row], key: str) -> defaultdict[Any, list[Row]]:
    """The rows by what stands in this column, in the order in which each first stood there."""
    grouped: defaultdict[Any, list[Row]] = defaultdict(list)
    for row in rows:
        grouped[getattr(row, key)].append(row)
    return grouped
