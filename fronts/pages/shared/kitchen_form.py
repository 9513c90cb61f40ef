"""What every form of a kitchen shares: its unit, its groups of fields, its refusals."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from django import forms
from django.core.exceptions import ValidationError
from django.forms.boundfield import BoundField

from fronts.pages.shared.length_fields import Size, Sizes
from shopjobs.forms.house import HouseForm


@dataclass(frozen=True, slots=True)
class Group:
    """Fields that stand together; a folded group opens where something in it is said."""

    legend: str
    fields: tuple[str, ...]
    folded: bool = False
    hint: str = ""
    kind: str = ""


@dataclass(frozen=True, slots=True)
class ShownGroup:
    """A group as a template shows it."""

    group: Group
    fields: tuple[BoundField, ...]
    is_open: bool


class KitchenForm(HouseForm):
    """A form whose bare numbers are in the job's unit.

    `version` carries what the row was when the form was made, so that nobody's newer
    value is overwritten unseen.
    """

    groups: tuple[Group, ...] = ()

    version = forms.CharField(required=False, max_length=40, widget=forms.HiddenInput)

    def __init__(self, *args: Any, unit: str, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.unit = unit
        for field in self.fields.values():
            if isinstance(field, (Size, Sizes)):
                field.speak(unit)

    @property
    def values(self) -> dict[str, Any]:
        """What was entered, by the names of the table's columns."""
        return {name: value for name, value in self.cleaned_data.items() if name != "version"}

    def shown_groups(self) -> Iterator[ShownGroup]:
        """The groups in their order; what is at fault or said is never folded away."""
        for group in self.groups:
            fields = tuple(self[name] for name in group.fields if name in self.fields)
            said = any(field.errors or _is_said(field) for field in fields)
            if fields:
                yield ShownGroup(group, fields, said or not group.folded)

    def offer(self, name: str, hint: str) -> None:
        """Show, greyed, what holds where the field is left empty."""
        self.fields[name].widget.attrs["placeholder"] = hint

    def refuse_all(self, error: ValidationError) -> None:
        """Show a service's refusal, each message at its field where there is one."""
        told: Mapping[str, list[str]] = (
            error.message_dict if hasattr(error, "error_dict") else {"": error.messages}
        )
        for name, messages in told.items():
            for message in messages:
                self.add_error(name if name in self.fields else None, sentence(message))


def _is_said(field: BoundField) -> bool:
    value = field.value()
    return value not in (None, "", False, 0, (), "0")


def sentence(message: str) -> str:
    """A message as a sentence: it begins with a capital and ends with a stop."""
    ended = message if message.endswith((".", "!", "?")) else f"{message}."
    return ended[:1].upper() + ended[1:]
