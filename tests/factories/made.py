"""How a factory keeps its rows: by a service, at the time of the tests."""

from collections.abc import Callable
from datetime import UTC, datetime
from typing import Any, ClassVar, TypeVar

from django.db.models import Model
from factory.django import DjangoModelFactory

Row = TypeVar("Row", bound=Model)

NOW = datetime(2027, 3, 1, 9, 30, tzinfo=UTC)
"""The time at which a test does what it does."""


class ServedFactory(DjangoModelFactory[Row]):
    """Rows that a service keeps: checked, in their order, and written into the diary."""

    service: ClassVar[Callable[..., Any]]

    class Meta:
        abstract = True
        exclude = ("service",)

    @classmethod
    def _create(cls, model_class: type[Row], *args: Any, **values: Any) -> Row:
        row: Row = cls.service(at=NOW, **values)
        return row
