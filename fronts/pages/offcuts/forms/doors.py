"""The form that gives a door to another job."""

from typing import Any

from django import forms

from fronts.pages.offcuts.forms.offcuts import LONGEST_NUMBER, job_numbered
from fronts.pages.shared.words_field import Words
from shopjobs.forms.house import HouseForm
from shopjobs.models import Job, Shop


class DoorMoveForm(HouseForm):
    """To which job; `seen_in` is the one that had the door when it was shown."""

    seen_in = forms.IntegerField(widget=forms.HiddenInput, max_value=2**62)
    to = Words(
        label="To job",
        max_length=LONGEST_NUMBER,
        help_text="Its number.",
        error_messages={"required": "Enter the number of the job that gets it."},
        widget=forms.TextInput({"list": "jobs"}),
    )

    def __init__(self, *args: Any, shop: Shop, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self.shop = shop

    def clean_to(self) -> Job:
        """The job of this number."""
        return job_numbered(self.shop, self.cleaned_data["to"])
