"""The form that checks one line of the hardware list."""

from collections.abc import Callable
from typing import Any

from django import forms
from django.core.exceptions import ValidationError

from fronts.models import OrderCheck
from shopjobs.forms.house import HouseForm
from shopjobs.words import one_line

CheckOf = Callable[[str], OrderCheck | None]


class OrderLineForm(HouseForm):
    """One line: the item, the need that the person saw, and whether it counts as checked.

    `seen` is when the line was checked that the person saw: a check that somebody else made
    since is neither replaced nor taken back. `check_of` finds the check that holds by now.
    """

    item = forms.CharField(max_length=200, strip=False, widget=forms.HiddenInput())
    need = forms.IntegerField(min_value=0, max_value=2**31 - 1, widget=forms.HiddenInput())
    seen = forms.CharField(required=False, widget=forms.HiddenInput())
    mark = forms.ChoiceField(choices=[("check", "check"), ("uncheck", "uncheck")])
    note = forms.CharField(
        label="Note",
        required=False,
        max_length=400,
        validators=[one_line],
        error_messages={"max_length": "Keep the note under 400 characters."},
    )

    def __init__(self, *args: Any, check_of: CheckOf = lambda _: None, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self._check_of = check_of

    def clean(self) -> dict[str, Any]:
        """Refuse what was decided without having seen somebody else's check."""
        given = super().clean() or {}
        check = self._check_of(given.get("item", ""))
        if check is None or check.checked_at.isoformat() == given.get("seen"):
            return given
        self.has_clashes = True
        note = f" with the note “{check.note}”" if check.note else ""
        yours = given.get("note") and f" Your note was “{given['note']}”."
        raise ValidationError(
            f"{check.by or 'Somebody'} checked {check.need} × {check.item}{note} since you looked; "
            f"that stands.{yours or ''}"
        )
