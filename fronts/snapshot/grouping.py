"""Rows by what they belong to."""

from collections import defaultdict
from collections.abc import Iterable
from typing import TypeVar

from django.db.models import Model

Row = TypeVar("Row", bound=Model)


def grouped(rows: Iterable[Row], key: str) -> defaultdict[int, list[Row]]:
    grouped: defaultdict[int, list[Row]] = defaultdict(list)
    for row in rows:
        grouped[getattr(row, key)].append(row)
    return grouped
