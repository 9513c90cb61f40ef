"""Model and form fields for lengths: exact in Python, exact in the database."""

from collections.abc import Callable, Sequence
from decimal import Decimal, InvalidOperation
from fractions import Fraction
from typing import TYPE_CHECKING, Any, TypeVar

from django import forms
from django.core.exceptions import ValidationError
from django.core.validators import ProhibitNullCharactersValidator
from django.db import models
from django.db.backends.base.base import BaseDatabaseWrapper
from django.db.models.expressions import Expression
from django.utils.functional import cached_property

from fronts.rules.lengths import LONGEST, LengthError, Mm, as_decimal, exact, read, write

_ST = TypeVar("_ST", contravariant=True)
_GT = TypeVar("_GT", covariant=True)
if TYPE_CHECKING:
    # To the type checker these are plain fields, so that each may say what it holds.
    class _DecimalField(models.Field[_ST, _GT]):
        max_digits: int
        decimal_places: int

    class _TextField(models.Field[_ST, _GT]): ...

    class _CharField(models.Field[_ST, _GT]): ...
else:

    class _OfTypes:
        def __class_getitem__(cls, types):
            return cls

    class _DecimalField(_OfTypes, models.DecimalField): ...

    class _TextField(_OfTypes, models.TextField): ...

    class _CharField(_OfTypes, models.CharField): ...


PLACES = 8
"""Decimal places of a millimetre that are kept: 1/128 in is 0.1984375 mm."""
DIGITS = 14
"""Digits in all: no more than SQLite's numbers keep exactly (15)."""


def fraction_of(value: object) -> Fraction:
    """The number as an exact fraction; binary floats are refused, they are exact by accident."""
    if isinstance(value, Fraction):
        return value
    if isinstance(value, (int, Decimal)):
        return Fraction(value)
    if isinstance(value, str):
        try:
            return Fraction(Decimal(value))
        except (InvalidOperation, ValueError, OverflowError) as error:
            raise ValidationError(f"“{value}” is not a number of millimetres") from error
    raise ValidationError(f"{value!r} is not an exact number of millimetres")


def checked(length: Mm, *, signed: bool, zero: bool) -> Decimal:
    """The length as it is kept; ValidationError where it can't be kept or is no such size."""
    if length < 0 and not signed:
        raise ValidationError("this is negative; enter a size")
    if length == 0 and not zero:
        raise ValidationError("this is nothing; enter a size above zero")
    if abs(length) > LONGEST:
        raise ValidationError("this is more than 20 m")
    try:
        return as_decimal(length, PLACES)
    except LengthError as error:
        raise ValidationError(str(error)) from error


class MmField(_DecimalField[_ST, _GT]):
    """A length in millimetres: a `Fraction` in Python, 8 decimal places in the database.

    `signed` allows a place or a shift to the left or down, `zero` allows nothing at all.
    """

    description = "exact length in millimetres"
    _pyi_private_set_type: Fraction | int
    _pyi_private_get_type: Fraction

    def __init__(self, *args: Any, signed: bool = False, zero: bool = True, **kwargs: Any) -> None:
        self.signed, self.zero = signed, zero
        kwargs["max_digits"], kwargs["decimal_places"] = DIGITS, PLACES
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
            kwargs["default"] = as_decimal(kwargs["default"], PLACES)
        return name, path, args, kwargs

    @cached_property
    def validators(self) -> list[Callable[[Any], None]]:
        return [self._keepable]

    def to_python(self, value: Any) -> Any:
        return None if value is None else fraction_of(value)

    def from_db_value(
        self, value: Decimal | None, expression: Expression, connection: BaseDatabaseWrapper
    ) -> Fraction | None:
        return None if value is None else Fraction(value)

    def get_prep_value(self, value: Any) -> Any:
        if value is None or hasattr(value, "resolve_expression") or hasattr(value, "as_sql"):
            return value
        return as_decimal(fraction_of(value), PLACES)

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


class MmListField(_TextField[_ST, _GT]):
    """Lengths in their order, kept as decimal millimetres with commas; `-` where one is blank."""

    description = "exact lengths in millimetres"
    _pyi_private_set_type: Sequence[Fraction | None]
    _pyi_private_get_type: tuple[Fraction | None, ...]
    BLANK = "-"

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        kwargs.setdefault("default", ())
        kwargs.setdefault("blank", True)
        super().__init__(*args, **kwargs)

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
            if length is not None:
                checked(length, signed=False, zero=False)

    def get_prep_value(self, value: Any) -> Any:
        lengths = self.to_python(value)
        return ",".join(self.BLANK if each is None else exact(each) for each in lengths)

    def value_to_string(self, obj: models.Model) -> str:
        return str(self.get_prep_value(self.value_from_object(obj)))


class WordsField(_CharField[_ST, _GT]):
    """A short text of people's own: any characters that a database can keep."""

    _pyi_private_set_type: str
    _pyi_private_get_type: str
    default_validators = [ProhibitNullCharactersValidator()]


class LengthField(forms.Field):
    """A length as people type it, in the job's unit unless they name another.

    What was typed stays as typed when it is refused.
    """

    widget = forms.TextInput

    def __init__(
        self, *, unit: str, zero: bool = False, signed: bool = False, **kwargs: Any
    ) -> None:
        self.unit, self.zero, self.signed = unit, zero, signed
        super().__init__(**kwargs)

    def to_python(self, value: Any) -> Mm | None:
        if value in self.empty_values or not str(value).strip():
            return None
        if isinstance(value, Fraction):
            return value
        try:
            length = read(str(value), self.unit, signed=self.signed, zero=self.zero)
            as_decimal(length, PLACES)
        except LengthError as error:
            raise ValidationError(str(error), code="length") from error
        return length

    def prepare_value(self, value: Any) -> Any:
        return write(value, self.unit) if isinstance(value, Fraction) else value

    def has_changed(self, initial: Any, data: Any) -> bool:
        try:
            return bool(self.to_python(initial) != self.to_python(data))
        except ValidationError:
            return True

    def widget_attrs(self, widget: forms.Widget) -> dict[str, Any]:
        return {"inputmode": "text" if self.unit == "in" else "decimal", "autocomplete": "off"}
