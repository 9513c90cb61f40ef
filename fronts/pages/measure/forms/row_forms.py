"""Small tables inside a form: the rows that there are, and empty ones for more."""

from collections.abc import Sequence
from typing import Any, ClassVar

from django import forms
from django.forms.formsets import BaseFormSet, formset_factory

from fronts.facts.form_fields import FactsFormMeta
from fronts.facts.rows import from_values
from fronts.facts.size_form_fields import Size
from shopjobs.forms.house import HouseForm
from shopjobs.forms.seen import shown, typed_in

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


class RowsTable(BaseFormSet[RowForm]):
    """A small table; `held` are the rows that there are, as its forms start."""

    def __init__(self, *args: Any, held: Sequence[dict[str, Any]], **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.held = held
        self._is_left = False

    @property
    def shown_rows(self) -> list[list[str]]:
        """What the rows that there are look like in the table."""
        forms = (self.form(initial=row, **self.form_kwargs) for row in self.held)
        return [[*shown(form).values()] for form in forms]

    @property
    def typed_rows(self) -> list[list[str]]:
        """What was sent of the rows, without those that were left empty."""
        rows = ([*typed_in(form).values()] for form in self.forms)
        return [row for row in rows if any(row)]

    def leave_as_held(self) -> None:
        """Let the rows be those that there are by now, since nobody typed in them."""
        self._is_left = True

    def stated(self) -> list[Any]:
        """What the rows that were filled in state, in their order."""
        if self._is_left:
            return [from_values(self.form.facts, row) for row in self.held]
        return [form.row for form in self.forms if form.has_changed()]


def rows_form(
    form: type[RowForm], *, data: Any, unit: str, prefix: str, held: Sequence[dict[str, Any]]
) -> RowsTable:
    """A table with the rows that there are and two empty ones."""
    made: Any = formset_factory(
        form, formset=RowsTable, extra=2, max_num=MOST_ROWS, absolute_max=MOST_ROWS
    )
    table: RowsTable = made(
        data,
        initial=None if data is not None else list(held),
        held=held,
        prefix=prefix,
        form_kwargs={"unit": unit},
        error_messages={"missing_management_form": "The rows of the table are missing; reload."},
    )
    return table


def heads(table: RowsTable) -> list[str]:
    """The heads of the table's columns."""
    fields = table.form.base_fields.values()
    return [str(field.label) for field in fields if not isinstance(field.widget, forms.HiddenInput)]
