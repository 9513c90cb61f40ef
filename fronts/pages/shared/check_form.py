"""A form that puts a mark on a line of a list, or takes it back; two people never unseen."""

from typing import Any

from django import forms
from django.core.exceptions import ValidationError

from fronts.rules.limits import LONGEST_NOTE
from shopjobs.forms.house import HouseForm
from shopjobs.words import one_line


class CheckForm(HouseForm):
    """Whether a line counts as checked, and a note on it.

    `seen` names the mark that the person saw: one that somebody else made since is neither
    replaced nor taken back.
    """

    seen = forms.CharField(required=False, widget=forms.HiddenInput())
    mark = forms.ChoiceField(choices=[("check", "check"), ("uncheck", "uncheck")])
    note = forms.CharField(
        label="Note",
        required=False,
        max_length=LONGEST_NOTE,
        validators=[one_line],
        error_messages={"max_length": f"Keep the note under {LONGEST_NOTE} characters."},
    )

    def since(self, seen: str) -> str:
        """What somebody else did that the person has not seen, in words; "" where nothing."""
        raise NotImplementedError

    def clean(self) -> dict[str, Any]:
        """Refuse what was decided without having seen somebody else's mark."""
        given = super().clean() or {}
        done = self.since(given.get("seen", ""))
        if not done:
            return given
        self.has_clashes = True
        yours = given.get("note") and f" Your note was “{given['note']}”."
        raise ValidationError(f"{done} since you looked; that stands.{yours or ''}")
