"""The forms that check lines of the hardware list, and write notes on them."""

from collections.abc import Callable
from typing import Any

from django import forms

from fronts.models import OrderCheck
from fronts.pages.order.forms.ticked import TickedLines
from fronts.pages.shared.check_form import CheckForm
from fronts.rules.limits import LONGEST_ITEM
from fronts.selectors.orders import mark_seen
from shopjobs.forms.house import HouseForm

CheckOf = Callable[[str], OrderCheck | None]
WrittenBy = Callable[[OrderCheck], str]
_MARKS = ("check", "uncheck", "drop", "note")


class OrderLineForm(CheckForm):
    """One line: the item, the need that the person saw, and the short name of all it depends on.

    `check_of` finds the mark that holds by now, `written_by` who made it.
    """

    item = forms.CharField(max_length=LONGEST_ITEM, strip=False, widget=forms.HiddenInput())
    need = forms.IntegerField(min_value=0, max_value=2**31 - 1, widget=forms.HiddenInput())
    looked_at = forms.CharField(required=False, max_length=32, widget=forms.HiddenInput())
    mark = forms.ChoiceField(choices=[(mark, mark) for mark in _MARKS])

    def __init__(
        self,
        *args: Any,
        check_of: CheckOf = lambda _: None,
        written_by: WrittenBy = lambda _: "Somebody",
        **kwargs: Any,
    ) -> None:
        super().__init__(*args, **kwargs)
        self._check_of, self._written_by = check_of, written_by

    def since(self, seen: str) -> str:
        """Somebody else's mark that the person has not seen; "" where there is none."""
        check = self._check_of(self.cleaned_data.get("item", ""))
        if mark_seen(check) == seen:
            return ""
        if check is None:
            return "Somebody took the mark on this line away"
        who = self._written_by(check)
        note = f" with the note “{check.note}”" if check.note else ""
        if check.open:
            return f"{who} left {check.item} open{note}"
        return f"{who} checked {check.need} × {check.item}{note}"


class LinesForm(HouseForm):
    """Several lines that are checked as they are shown."""

    line = TickedLines(required=False)
