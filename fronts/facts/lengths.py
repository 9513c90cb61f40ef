"""The model fields for one length and for a list of them."""

from collections.abc import Callable, Sequence
from decimal import Decimal
from fractions import Fraction
from functools import lru_cache
from typing import Any

from django.core.exceptions import ValidationError
from django.db import models
from django.db.backends.base.base import BaseDatabaseWrapper
from django.db.models.expressions import Expression
from django.utils.functional import cached_property

from fronts.facts.exactness import (
    DIGITS,
    NUMBER_PLACES,
    PLACES,
    checked,
    checked_number,
    fraction_of,
)
from fronts.facts.length_form_field import LengthField
from fronts.facts.typed import GT, ST, DecimalFieldOf, TextFieldOf
from fronts.rules.lengths import as_decimal, exact


class MmField(DecimalFieldOf[ST, GT]):
    """A length in millimetres: a `Fraction` in Python, 8 decimal places in the database.

    `signed` allows a place or a shift to the left or down, `zero` allows nothing at all.
    """

    description = "exact length in millimetres"
    places = PLACES
    _pyi_private_set_type: Fraction | int
    _pyi_private_get_type: Fraction

    def __init__(self, *args: Any, signed: bool = False, zero: bool = True, **kwargs: Any) -> None:
        self.signed, self.zero = signed, zero
        kwargs["max_digits"], kwargs["decimal_places"] = DIGITS, self.places
        if "default" in kwargs:
            kwargs["default"] = fraction_of(kwargs["default"])
        super().__init__(*args, **kwargs)

    def deconstruct(self) -> tuple[str, str, Sequence[Any], dict[str, Any]]:
        name, path, args, kwargs = super().deconstruct()
        del kwargs["max_digits"], kwargs["decimal_places"]
        if self.signed:
            kwargs["signed"] = True
        if not self.zero:
            kwargs["zero"] = False
        if "default" in kwargs:
            kwargs["default"] = as_decimal(kwargs["default"], self.places)
        return name, path, args, kwargs

    @cached_property
    def validators(self) -> list[Callable[[Any], None]]:
        return [self._keepable]

    def to_python(self, value: Any) -> Any:
        return None if value is None else fraction_of(value)

    def from_db_value(
        self, value: Decimal | None, expression: Expression, connection: BaseDatabaseWrapper
    ) -> Fraction | None:
        return None if value is None else _fraction(value)

    def get_prep_value(self, value: Any) -> Any:
        if value is None or hasattr(value, "resolve_expression") or hasattr(value, "as_sql"):
            return value
        return as_decimal(fraction_of(value), self.places)

    def get_db_prep_value(
        self,
        value: Any,
        connection: BaseDatabaseWrapper,
        prepared: bool = False,  # noqa: FBT001, FBT002 - Django's own signature
    ) -> Any:
        kept = self.get_prep_value(value)
        if hasattr(kept, "as_sql"):
            return kept
        return connection.ops.adapt_decimalfield_value(kept, self.max_digits, self.decimal_places)

    def get_db_prep_save(self, value: Any, connection: BaseDatabaseWrapper) -> Any:
        return value if hasattr(value, "as_sql") else self.get_db_prep_value(value, connection)

    def value_to_string(self, obj: models.Model) -> str:
        value = self.value_from_object(obj)
        return "" if value is None else exact(fraction_of(value))

    def formfield(self, **kwargs: Any) -> Any:
        asked = {"unit": "mm", "signed": self.signed, "zero": self.zero}
        return models.Field.formfield(self, **{"form_class": LengthField, **asked, **kwargs})

    def _keepable(self, value: Any) -> None:
        checked(fraction_of(value), signed=self.signed, zero=self.zero)


class NumberColumn(MmField[ST, GT]):
    """A number that is no length, such as a weight in kilograms: with finer decimals."""

    description = "exact number"
    places = NUMBER_PLACES

    def _keepable(self, value: Any) -> None:
        number = fraction_of(value)
        checked_number(number)
        super()._keepable(Fraction(round(number * 10**PLACES), 10**PLACES))


@lru_cache(maxsize=4096)
def _fraction(kept: Decimal) -> Fraction:
    """A kitchen holds the same few sizes over and over."""
    return Fraction(kept)


class MmListField(TextFieldOf[ST, GT]):
    """Lengths in their order, kept as decimal millimetres with commas.

    Rows of older databases hold `-` for a height that was left blank; it is read as None.
    `zero` allows nothing at all.
    """

    description = "exact lengths in millimetres"
    _pyi_private_set_type: Sequence[Fraction | None]
    _pyi_private_get_type: tuple[Fraction | None, ...]
    BLANK = "-"

    def __init__(self, *args: Any, zero: bool = False, **kwargs: Any) -> None:
        self.zero = zero
        kwargs.setdefault("default", ())
        kwargs.setdefault("blank", True)
        super().__init__(*args, **kwargs)

    def deconstruct(self) -> tuple[str, str, Sequence[Any], dict[str, Any]]:
        name, path, args, kwargs = super().deconstruct()
        return name, path, args, {**kwargs, "zero": True} if self.zero else kwargs

    def to_python(self, value: Any) -> Any:
        if value is None or value == "":
            return ()
        parts = value.split(",") if isinstance(value, str) else value
        return tuple(None if part in (None, self.BLANK) else fraction_of(part) for part in parts)

    def from_db_value(
        self, value: str | None, expression: Expression, connection: BaseDatabaseWrapper
    ) -> tuple[Fraction | None, ...]:
        return tuple(self.to_python(value))

    def validate(self, value: Any, model_instance: models.Model | None) -> None:
        super().validate(value, model_instance)
        for length in value:
            if length is None:
                raise ValidationError("enter a length in every place")
            checked(length, signed=False, zero=self.zero)

    def get_prep_value(self, value: Any) -> Any:
        lengths = self.to_python(value)
        return ",".join(self.BLANK if each is None else exact(each) for each in lengths)

    def value_to_string(self, obj: models.Model) -> str:
        return str(self.get_prep_value(self.value_from_object(obj)))
