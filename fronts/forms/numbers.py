"""The form of the shop's own numbers, each with its words and where the usual one is from."""

from collections.abc import Mapping
from fractions import Fraction
from typing import Any

from django import forms
from django.core.exceptions import ValidationError

from fronts.forms.kitchen import Group, KitchenForm
from fronts.forms.sizes import Size
from fronts.jobfile.shop_numbers import PLAIN, POSITIVE
from fronts.rules.lengths import terminating
from fronts.rules.practice import NUMBERS, PRACTICE, Practice

NAMES = tuple(each.name for each in NUMBERS)


class Number(forms.Field):
    """A plain number, typed as a decimal; exact."""

    widget = forms.TextInput

    def to_python(self, value: Any) -> Fraction | None:
        typed = str(value or "").strip()
        if not typed:
            return None
        try:
            found = Fraction(typed) if len(typed) <= 30 and "e" not in typed.lower() else None
        except (ValueError, ZeroDivisionError):
            found = None
        if found is None:
            raise ValidationError(f"“{typed[:24]}” is not a number; enter one like 5 or 0.25.")
        return found

    def prepare_value(self, value: Any) -> Any:
        return plain(value) if isinstance(value, Fraction) else value


class NumbersForm(KitchenForm):
    """Every number of common practice; what is empty, common practice says."""

    groups = (Group("", NAMES, kind="cells numbers"),)

    def __init__(self, *args: Any, held: Practice, **kwargs: Any) -> None:
        own = {name: getattr(held, name) for name in NAMES}
        usual = {name: getattr(PRACTICE, name) for name in NAMES}
        kwargs.setdefault("initial", {k: own[k] for k in NAMES if own[k] != usual[k]})
        super().__init__(*args, **kwargs)
        for each in NUMBERS:
            self.fields[each.name] = self._field(each.name, each.metadata)

    def _field(self, name: str, metadata: Mapping[str, str]) -> forms.Field:
        words: dict[str, Any] = {
            "label": metadata["says"][:1].upper() + metadata["says"][1:],
            "help_text": sourced(metadata["source"]),
        }
        usual = getattr(PRACTICE, name)
        if name in PLAIN:
            field: forms.Field = Number(required=False, **words)
            field.widget.attrs["placeholder"] = plain(usual)
            return field
        size = Size(required=False, zero=name not in POSITIVE, **words)
        size.speak(self.unit)
        size.widget.attrs["placeholder"] = str(size.prepare_value(usual))
        return size

    @property
    def values(self) -> dict[str, Any]:
        return {name: self.cleaned_data[name] for name in NAMES}


def sourced(source: str) -> str:
    """Where the usual number is from, as a sentence."""
    words = {"practice": "Common practice.", "practice, memory": "Common practice, from memory."}
    return words.get(source, f"{source}.")


def plain(value: Fraction) -> str:
    """A number as people type it."""
    return terminating(value) or f"{value.numerator}/{value.denominator}"
