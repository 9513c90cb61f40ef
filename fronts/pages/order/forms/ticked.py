"""Lines that are named in a form, each with the short name of what the person saw of it."""

from typing import Any

from django import forms

from fronts.rules.limits import LONGEST_ITEM, MOST_CHECKS
from fronts.rules.order_facts import LineFacts

_LONGEST = LONGEST_ITEM + 20


class TickedLines(forms.Field):
    """Short names by items, as `ticked` writes each of them."""

    widget = forms.MultipleHiddenInput

    def clean(self, value: Any) -> dict[str, str]:
        """What was ticked; all else is for the service to refuse."""
        said: list[Any] = super().clean(value or [])[:MOST_CHECKS]
        pairs = (str(one)[:_LONGEST].replace("\x00", "").partition(" ") for one in said)
        return {item: short for short, _, item in pairs}


def ticked(item: str, facts: LineFacts) -> str:
    """A line as a tick box sends it."""
    return f"{facts.short_name} {item}"
