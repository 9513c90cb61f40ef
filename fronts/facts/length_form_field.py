"""The form field in which a person types a length."""

from fractions import Fraction
from typing import Any

from django import forms
from django.core.exceptions import ValidationError

from fronts.facts.exactness import PLACES
from fronts.rules.length_sums import read_sum
from fronts.rules.lengths import LengthError, Mm, as_decimal, write


class LengthField(forms.Field):
    """A length as people type it, or a sum of them, in the job's unit unless they name another.

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
            length = read_sum(str(value), self.unit, signed=self.signed, zero=self.zero)
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
