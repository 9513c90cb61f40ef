"""A face under a name of the shop's own."""

from typing import Any

from django import forms

from fronts.rules.limits import LONGEST_FACE, LONGEST_LABEL
from shopjobs.forms.house import HouseForm


class SavedFaceForm(HouseForm):
    """Its name, and what it says."""

    name = forms.CharField(label="Name", max_length=LONGEST_LABEL, help_text="Like sink base.")
    words = forms.CharField(
        label="What closes it",
        max_length=LONGEST_FACE,
        help_text="From the top, like drawer 6 over pair.",
        error_messages={"required": "Say what closes it, like drawer 6 over pair."},
    )

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        for field in self.fields.values():
            field.widget.attrs["autocomplete"] = "off"
