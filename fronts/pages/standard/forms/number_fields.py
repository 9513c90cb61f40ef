"""The fields of the shop's numbers: plain ones, ones in the unit people weigh in, and sizes."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from django import forms
from django.core.exceptions import ValidationError

from fronts.facts.size_form_fields import Size
from fronts.rules.lengths import INCH, Mm, terminating
from fronts.rules.practice import PLAIN, POUND

PLACES = 10
"""Decimals of a number that are kept."""
_SHOWN = 3
_SHORT = 6


@dataclass(frozen=True, slots=True)
class Measured:
    """What people read is `kept * times + plus`."""

    times: Fraction = Fraction(1)
    plus: Fraction = Fraction(0)

    def shown(self, kept: Fraction) -> Fraction:
        return kept * self.times + self.plus

    def kept(self, typed: Fraction) -> Fraction:
        return (typed - self.plus) / self.times


AS_IT_IS = Measured()
_FOOT = 12 * INCH
OTHERWISE = {
    ("drawer_load", "in"): Measured(_FOOT * _FOOT / POUND),
    ("drawer_load", "mm"): Measured(Fraction(1_000_000)),
    ("site_celsius", "in"): Measured(Fraction(9, 5), Fraction(32)),
}
"""Numbers that people read in lb/ft² (kept in kg/mm²), kg/m², or °F (kept in °C)."""


class Number(forms.Field):
    """A plain number, typed as a decimal, in the unit of its label; from `least` to `most`."""

    widget = forms.TextInput

    def __init__(self, *, name: str, unit: str, **kwargs: Any) -> None:
        self.measured = OTHERWISE.get((name, unit), AS_IT_IS)
        self.least, self.most = (self.measured.shown(each) for each in PLAIN[name])
        super().__init__(**kwargs)

    def to_python(self, value: Any) -> Fraction | None:
        typed = str(value or "").strip()
        if not typed:
            return None
        found = _number(typed)
        if not self.least <= found <= self.most:
            raise ValidationError(
                f"Enter a number from {_rounded(self.least)} to {_rounded(self.most)}."
            )
        if self.measured is AS_IT_IS:
            return found
        return round(self.measured.kept(found), PLACES)

    def about(self, kept: Fraction) -> str:
        """The number as it is offered: to a tenth where it stands in another unit."""
        if self.measured is AS_IT_IS:
            return plain(kept)
        return plain(Fraction(round(self.measured.shown(kept) * 10), 10))

    def prepare_value(self, value: Any) -> Any:
        if not isinstance(value, Fraction):
            return value
        return plain(value) if self.measured is AS_IT_IS else _rounded(self.measured.shown(value))


class NumberSize(Size):
    """A size that is shown in decimal inches where no fraction of an inch says it."""

    def __init__(self, *, usual: Mm, **kwargs: Any) -> None:
        self.usual = usual
        super().__init__(**kwargs)

    def speak(self, unit: str) -> None:
        super().speak(unit)
        self.examples = {unit: self.about(self.usual)}

    def about(self, usual: Mm) -> str:
        """The size as it is offered."""
        return str(self.prepare_value(usual))

    def prepare_value(self, value: Any) -> Any:
        inches = terminating(value / INCH) if isinstance(value, Fraction) else None
        written = super().prepare_value(value)
        if self.unit == "in" and inches and len(inches) <= _SHORT and "mm" in written:
            return inches
        return written


class SolidField(forms.TypedChoiceField):
    """Whether a panel is of solid wood; kept as 1 or 0."""

    def __init__(self, *, usual: Fraction, **kwargs: Any) -> None:
        kinds = {"1": "Solid wood", "0": "Plywood"}
        offered = f"{kinds[plain(usual)]}, common practice"
        super().__init__(
            choices=[("", offered), *kinds.items()], coerce=Fraction, empty_value=None, **kwargs
        )

    def prepare_value(self, value: Any) -> Any:
        return plain(value) if isinstance(value, Fraction) else value


def plain(value: Fraction) -> str:
    """A number as people type it."""
    return terminating(value) or f"{value.numerator}/{value.denominator}"


def _rounded(value: Fraction) -> str:
    return plain(round(value, _SHOWN))


def _number(typed: str) -> Fraction:
    try:
        found = Fraction(typed) if len(typed) <= 30 and "e" not in typed.lower() else None
    except (ValueError, ZeroDivisionError):
        found = None
    if found is None:
        raise ValidationError(f"“{typed[:24]}” is not a number; enter one like 5 or 0.25.")
    return found
