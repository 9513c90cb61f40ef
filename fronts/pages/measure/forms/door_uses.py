"""Which of the proposed uses are accepted."""

from collections.abc import Sequence
from typing import Any

from django import forms

from shopjobs.forms.house import HouseForm


class DoorUsesForm(HouseForm):
    """Doors by their labels, all of them chosen to begin with."""

    doors = forms.MultipleChoiceField(
        label="Doors", error_messages={"required": "Choose at least one door."}
    )

    def __init__(self, data: Any, *, doors: Sequence[str]) -> None:
        super().__init__(data, auto_id="door-uses-%s", initial={"doors": list(doors)})
        field = self.fields["doors"]
        if isinstance(field, forms.ChoiceField):
            field.choices = [(label, label) for label in doors]
