"""The form fields in which people enter declared facts: words and limits are the declaration's.

A form says which kind of thing it asks for (`facts = Box`), and lays the fields out; what it
declares itself comes before what follows from the declaration.
"""

from collections.abc import Callable, Mapping
from typing import Any

from django import forms
from django.forms.forms import DeclarativeFieldsMetaclass

from fronts.facts.item_form_field import ItemField
from fronts.facts.number_form_field import NumberField, WeightField
from fronts.facts.size_form_fields import Size, Sizes
from fronts.rules.fact_kinds import (
    Count,
    DoorName,
    ItemCode,
    Label,
    Length,
    Lengths,
    Number,
    Text,
    Thread,
    Word,
    YesNo,
)
from fronts.rules.facts import Fact, may_be_missing, single_facts
from fronts.rules.limits import LONGEST_THREAD
from shopjobs.words import capitalized


class FactsFormMeta(DeclarativeFieldsMetaclass):
    """Gives a form a field for each single fact of its `facts`, but for those it is `without`.

    What it is without is named by its path: `planned` with all that is in it, `gaps.left_top`.

    `also` are other kinds of thing that it asks for, each with what begins its fields' names
    and what is left out of it.
    """

    def __new__(mcs, name: str, bases: tuple[type, ...], attrs: dict[str, Any]) -> Any:
        own: dict[str, Any] = {}
        if attrs.get("facts") is not None:
            own |= fields_of(attrs["facts"], without=attrs.get("without", ()))
        for kind, prefix, without in attrs.get("also", ()):
            own |= fields_of(kind, prefix, without)
        return super().__new__(mcs, name, bases, {**own, **attrs})


def fields_of(kind: type, prefix: str = "", without: tuple[str, ...] = ()) -> dict[str, Any]:
    """A form field for every single fact of a kind of thing, by the name of its column."""
    return {
        f"{prefix}{name}": form_field(fact, required=not _may_be_empty(kind, path, fact))
        for name, path, fact in single_facts(kind)
        if not {path, path.partition(".")[0]} & {*without}
        and not isinstance(fact.declared, DoorName)
    }


def form_field(fact: Fact, *, required: bool) -> forms.Field:
    """The field in which people enter a fact."""
    make = _FIELDS[type(fact.declared)]
    says = fact.declared.says
    field: forms.Field = make(fact.declared, required)
    field.required = required
    field.label = capitalized(says)
    field.help_text = getattr(fact.declared, "hint", "")
    return field


def _may_be_empty(kind: type, path: str, fact: Fact) -> bool:
    """What may be missing, or has something that holds instead, may be left empty."""
    if isinstance(fact.declared, YesNo):
        return True
    chosen = isinstance(fact.declared, Word)
    return may_be_missing(kind, path) or (fact.has_default and not chosen)


def _size(declared: Length, required: bool) -> forms.Field:  # noqa: FBT001
    field = Size(
        asks=declared.asks, small=declared.small, zero=declared.zero, signed=declared.signed
    )
    if declared.empty:
        field.widget.attrs["placeholder"] = declared.empty
    return field


def _choice(declared: Word, required: bool) -> forms.Field:  # noqa: FBT001
    nothing = () if required else (("", declared.empty),)
    return forms.ChoiceField(choices=(*nothing, *declared.words.items()))


def _count(declared: Count, required: bool) -> forms.Field:  # noqa: FBT001
    field = forms.IntegerField(
        min_value=declared.least,
        max_value=declared.most,
        widget=forms.TextInput(attrs={"inputmode": "numeric"}),
    )
    if declared.asks:
        field.error_messages["required"] = f"Enter {declared.asks}."
    return field


def _number(declared: Number, required: bool) -> forms.Field:  # noqa: FBT001
    weighs = declared.unit == "kg"
    return (WeightField if weighs else NumberField)(
        declared.least, declared.most, unit=declared.unit, is_kept=True
    )


def _label(declared: Label, required: bool) -> forms.Field:  # noqa: FBT001
    field = forms.CharField(max_length=declared.most)
    field.widget.attrs["autocomplete"] = "off"
    called = {"label": "a label", "code": "the code"}
    asks = called.get(declared.says, f"the {declared.says}'s name")
    field.error_messages["required"] = f"Enter {asks}, like {declared.example}."
    return field


def _thread(declared: Thread, required: bool) -> forms.Field:  # noqa: FBT001
    field = forms.CharField(max_length=LONGEST_THREAD)
    field.error_messages["required"] = "Enter the thread, like 8-32 or M4."
    return field


_FIELDS: Mapping[type, Callable[[Any, bool], forms.Field]] = {
    Length: _size,
    Lengths: lambda declared, _: Sizes(zero=declared.zero),
    Number: _number,
    YesNo: lambda *_: forms.BooleanField(),
    Word: _choice,
    Count: _count,
    Label: _label,
    Text: lambda declared, _: forms.CharField(max_length=declared.most),
    Thread: _thread,
    ItemCode: lambda declared, _: ItemField(nothing=declared.empty),
}
