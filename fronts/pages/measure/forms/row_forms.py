"""Small tables inside a form: the rows that there are, and empty ones for more."""

from collections.abc import Sequence
from typing import Any, ClassVar

from django import forms
from django.forms.formsets import BaseFormSet, formset_factory

from fronts.facts.form_fields import FactsFormMeta
from fronts.facts.rows import from_values
from fronts.facts.size_form_fields import Size
from shopjobs.forms.house import HouseForm

MOST_ROWS = 50


class RowForm(HouseForm, metaclass=FactsFormMeta):
    """One row of a table, which states one of its `facts`; left empty it is no row at all."""

    facts: ClassVar[type]

    def __init__(self, *args: Any, unit: str, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.empty_permitted = True  # also a row that was there: emptied, it is taken out
        for name, field in self.fields.items():
            if isinstance(field, Size):
                field.speak(unit)
            field.widget.attrs["aria-label"] = field.label or name

    @property
    def row(self) -> Any:
        """What the row states."""
        return from_values(self.facts, self.cleaned_data)


def rows_form(
    form: type[RowForm],
    *,
    data: Any,
    unit: str,
    prefix: str,
    initial: Sequence[dict[str, Any]],
) -> "BaseFormSet[RowForm]":
    """A table with the rows that there are and two empty ones."""
    made = formset_factory(form, extra=2, max_num=MOST_ROWS, absolute_max=MOST_ROWS)
    table: BaseFormSet[RowForm] = made(
        data,
        initial=None if data is not None else list(initial),
        prefix=prefix,
        form_kwargs={"unit": unit},
        error_messages={"missing_management_form": "The rows of the table are missing; reload."},
    )
    return table


def stated(table: "BaseFormSet[RowForm] | None") -> list[Any]:
    """What the rows that were filled in state, in their order."""
    if table is None:
        return []
    return [form.row for form in table.forms if form.has_changed()]


def heads(table: "BaseFormSet[RowForm]") -> list[str]:
    """The heads of the table's columns."""
    fields = table.form.base_fields.values()
    return [str(field.label) for field in fields if not isinstance(field.widget, forms.HiddenInput)]
