"""The form that checks one line of the hardware list."""

from collections.abc import Callable
from typing import Any

from django import forms

from fronts.models import OrderCheck
from fronts.pages.shared.check_form import CheckForm
from fronts.rules.limits import LONGEST_ITEM

CheckOf = Callable[[str], OrderCheck | None]


class OrderLineForm(CheckForm):
    """One line: the item, and the need that the person saw.

    `check_of` finds the check that holds by now.
    """

    item = forms.CharField(max_length=LONGEST_ITEM, strip=False, widget=forms.HiddenInput())
    need = forms.IntegerField(min_value=0, max_value=2**31 - 1, widget=forms.HiddenInput())

    def __init__(self, *args: Any, check_of: CheckOf = lambda _: None, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self._check_of = check_of

    def since(self, seen: str) -> str:
        """Somebody else's check that the person has not seen; "" where there is none."""
        check = self._check_of(self.cleaned_data.get("item", ""))
        if check is None or check.checked_at.isoformat() == seen:
            return ""
        note = f" with the note “{check.note}”" if check.note else ""
        return f"{check.by or 'Somebody'} checked {check.need} × {check.item}{note}"
