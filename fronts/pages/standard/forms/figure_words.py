"""A value of a short page in words: in its drawing, and on the index."""

from collections.abc import Iterable
from fractions import Fraction
from typing import Any, cast

from django import forms

from fronts.facts.item_form_field import ItemField
from fronts.facts.number_form_field import plain
from fronts.pages.standard.forms.number_fields import Number
from fronts.pages.standard.forms.number_words import number_unit
from fronts.pages.standard.forms.table_fields import TableField
from fronts.rules.practice import NUMBERS

_SAYS = {number.name: number.metadata["says"] for number in NUMBERS}


def said_as(field: forms.Field, value: Any, unit: str, name: str = "") -> str:
    """The value as its field shows it; with `name`, with what it is counted in."""
    if value in (None, "", (), []):
        return "not set"
    if isinstance(field, ItemField):
        return str(dict(field.beside).get(value, value))
    if isinstance(field, forms.ChoiceField):
        key = plain(value) if isinstance(value, Fraction) else value
        return dict(cast(Iterable[tuple[str, str]], field.choices)).get(key, str(key))
    if isinstance(field, TableField) and name:
        return field.in_brief(value)
    words = field.about(value) if isinstance(field, Number) else str(field.prepare_value(value))
    if not name:
        return words
    after = number_unit(name, _SAYS.get(name, ""), unit)
    return f"{words} {after}".rstrip()
