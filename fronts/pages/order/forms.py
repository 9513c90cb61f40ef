"""The form that checks one line of the hardware list."""

from django import forms

from shopjobs.forms.house import HouseForm
from shopjobs.words import one_line


class OrderLineForm(HouseForm):
    """One line: the item, the need that the person saw, and whether it counts as checked."""

    item = forms.CharField(max_length=200, strip=False, widget=forms.HiddenInput())
    need = forms.IntegerField(min_value=0, max_value=2**31 - 1, widget=forms.HiddenInput())
    mark = forms.ChoiceField(choices=[("check", "check"), ("uncheck", "uncheck")])
    note = forms.CharField(
        label="Note",
        required=False,
        max_length=400,
        validators=[one_line],
        error_messages={"max_length": "Keep the note under 400 characters."},
    )
