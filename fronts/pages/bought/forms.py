"""The form that checks bought fronts off as they come."""

from collections.abc import Callable
from typing import Any

from django import forms

from fronts.pages.shared.check_form import CheckForm
from fronts.rules.limits import MOST_FRONTS_IN_ALL
from fronts.selectors.receipts import ReceivedLine

LineOf = Callable[[str], ReceivedLine | None]
MARKS = ("check", "uncheck", "drop")


class ReceiptForm(CheckForm):
    """A line by its short name, and how many of it came; or a front to be dropped by its key.

    `line_of` finds the line as it is by now.
    """

    item = forms.CharField(max_length=64, widget=forms.HiddenInput())
    came = forms.IntegerField(
        label="How many came",
        required=False,
        min_value=1,
        max_value=MOST_FRONTS_IN_ALL,
        widget=forms.TextInput(attrs={"inputmode": "numeric", "size": 3}),
        error_messages={"invalid": "Enter how many came, as a whole number."},
    )
    mark = forms.ChoiceField(choices=[(mark, mark) for mark in MARKS])

    def __init__(self, *args: Any, line_of: LineOf = lambda _: None, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self._line_of = line_of

    def clean(self) -> dict[str, Any]:
        """What is checked off says how many."""
        given = super().clean()
        if given.get("mark") == "check" and "came" in given and given["came"] is None:
            self.add_error("came", "Enter how many came.")
        return given

    def since(self, seen: str) -> str:
        """What somebody else checked off or took back that the person has not seen."""
        line = self._line_of(self.cleaned_data.get("item", ""))
        if line is None or line.state == seen:
            return ""
        if not line.deliveries:
            return "Somebody took back what was checked off of this line"
        last = line.deliveries[-1]
        count, note = len(last.labels), last.receipt.note
        noted = f" with the note “{note}”" if note else ""
        return f"{last.receipt.by or 'Somebody'} checked off {count} of this line{noted}"
