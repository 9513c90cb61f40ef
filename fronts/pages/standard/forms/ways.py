"""The form of the shop's own numbers, each with its words and where the usual one is from."""

from collections.abc import Mapping
from typing import Any

from django import forms

from fronts.pages.shared.kitchen_form import KitchenForm
from fronts.pages.standard.forms.number_fields import Number, NumberSize, SolidField
from fronts.pages.standard.forms.number_words import number_groups, number_label
from fronts.rules.practice import NUMBER_NAMES, NUMBERS, PLAIN, POSITIVE, PRACTICE, Practice


class NumbersForm(KitchenForm):
    """Every number of common practice; what is empty, common practice says."""

    groups = tuple(number_groups(NUMBER_NAMES))

    def __init__(self, *args: Any, held: Practice, **kwargs: Any) -> None:
        own = {name: getattr(held, name) for name in NUMBER_NAMES}
        usual = {name: getattr(PRACTICE, name) for name in NUMBER_NAMES}
        kwargs.setdefault("initial", {k: own[k] for k in NUMBER_NAMES if own[k] != usual[k]})
        super().__init__(*args, **kwargs)
        for each in NUMBERS:
            self.fields[each.name] = self._field(each.name, each.metadata)

    def _field(self, name: str, metadata: Mapping[str, str]) -> forms.Field:
        words: dict[str, Any] = {
            "label": number_label(name, metadata["says"], self.unit),
            "help_text": sourced(metadata["source"]),
            "required": False,
        }
        usual = getattr(PRACTICE, name)
        if name == "solid_panels":
            return SolidField(usual=usual, **words)
        field: Number | NumberSize
        if name in PLAIN:
            field = Number(name=name, unit=self.unit, **words)
        else:
            field = NumberSize(usual=usual, zero=name not in POSITIVE, **words)
            field.speak(self.unit)
        field.widget.attrs["placeholder"] = field.about(usual)
        return field

    @property
    def values(self) -> dict[str, Any]:
        return {name: self.cleaned_data[name] for name in NUMBER_NAMES}


def sourced(source: str) -> str:
    """Where the usual number is from, as a sentence."""
    words = {"practice": "Common practice.", "practice, memory": "Common practice, from memory."}
    return words.get(source, f"{source}.")
