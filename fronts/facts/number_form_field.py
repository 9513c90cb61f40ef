"""The form fields in which a person types a plain number: an angle, a percentage, a weight."""

from fractions import Fraction
from typing import Any, cast

from django import forms
from django.core.exceptions import ValidationError

from fronts.facts.exactness import NUMBER_PLACES
from fronts.measures import MeasureError, read_weight, write_weight
from fronts.rules.kinds import Unit
from fronts.rules.lengths import terminating

_LONGEST = 30
_SHOWN = 3


class NumberField(forms.Field):
    """A number from `least` to `most`, typed as a decimal; its unit may stand after it.

    `is_kept`: it goes into a column, so that what this can't hold exactly is refused.
    """

    widget = forms.TextInput

    def __init__(
        self,
        least: Fraction,
        most: Fraction,
        *,
        unit: str = "",
        is_kept: bool = False,
        **kwargs: Any,
    ) -> None:
        self.least, self.most, self.unit, self.is_kept = least, most, unit, is_kept
        super().__init__(**kwargs)

    def to_python(self, value: Any) -> Fraction | None:
        typed = str(value or "").strip()
        if not typed:
            return None
        found = self.read(typed)
        if self.is_kept and (found * 10**NUMBER_PLACES).denominator != 1:
            raise ValidationError(
                f"“{typed[:24]}” can't be kept exactly; enter it with at most two decimals."
            )
        if self.least <= found <= self.most:
            return found
        unit = f", in {self.unit}" if self.unit else ""
        raise ValidationError(
            f"Enter a number from {rounded(self.least)} to {rounded(self.most)}{unit}."
        )

    def read(self, typed: str) -> Fraction:
        """The number that was typed."""
        bare = typed.removesuffix(self.unit).rstrip().replace(",", ".")
        try:
            found = Fraction(bare) if len(bare) <= _LONGEST and "e" not in bare.lower() else None
        except (ValueError, ZeroDivisionError):
            found = None
        if found is None:
            raise ValidationError(f"“{typed[:24]}” is not a number; enter one like 5 or 0.25.")
        return found

    def prepare_value(self, value: Any) -> Any:
        return plain(value) if isinstance(value, Fraction) else value

    def has_changed(self, initial: Any, data: Any) -> bool:
        try:
            return bool(self.to_python(self.prepare_value(initial)) != self.to_python(data))
        except ValidationError:
            return True

    def widget_attrs(self, widget: forms.Widget) -> dict[str, Any]:
        return {"inputmode": "decimal", "autocomplete": "off"}


class WeightField(NumberField):
    """A weight, kept in kilograms; a bare number is in pounds where the form is in inches."""

    spoken: Unit = "mm"

    def speak(self, unit: str) -> None:
        """Take bare numbers in the weight that goes with `unit`, and show weights in it."""
        self.spoken = cast(Unit, unit)

    def read(self, typed: str) -> Fraction:
        try:
            return read_weight(typed, self.spoken)
        except MeasureError as error:
            raise ValidationError(f"{error}.") from error

    def prepare_value(self, value: Any) -> Any:
        return write_weight(value, self.spoken) if isinstance(value, Fraction) else value


def plain(value: Fraction) -> str:
    """A number as people type it."""
    return terminating(value) or f"{value.numerator}/{value.denominator}"


def rounded(value: Fraction) -> str:
    """A number as people read it."""
    return plain(round(value, _SHOWN))
