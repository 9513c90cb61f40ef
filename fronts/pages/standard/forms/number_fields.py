"""The fields of the shop's numbers: plain ones, ones in the unit people weigh in, and sizes."""

from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from django import forms

from fronts.facts.number_form_field import NumberField, plain, rounded
from fronts.facts.size_form_fields import Size
from fronts.rules.lengths import INCH, Mm, terminating
from fronts.rules.practice import PLAIN, POUND

PLACES = 10
"""Decimals of a number that are kept."""
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


class Number(NumberField):
    """One of the shop's plain numbers, typed in the unit of its label."""

    def __init__(self, *, name: str, unit: str, **kwargs: Any) -> None:
        self.measured = OTHERWISE.get((name, unit), AS_IT_IS)
        least, most = (self.measured.shown(each) for each in PLAIN[name])
        super().__init__(least, most, **kwargs)

    def to_python(self, value: Any) -> Fraction | None:
        found = super().to_python(value)
        if found is None or self.measured is AS_IT_IS:
            return found
        return round(self.measured.kept(found), PLACES)

    def about(self, kept: Fraction) -> str:
        """The number as it is offered: to a tenth where it stands in another unit."""
        if self.measured is AS_IT_IS:
            return plain(kept)
        return plain(Fraction(round(self.measured.shown(kept) * 10), 10))

    def prepare_value(self, value: Any) -> Any:
        if not isinstance(value, Fraction) or self.measured is AS_IT_IS:
            return super().prepare_value(value)
        return rounded(self.measured.shown(value))


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
