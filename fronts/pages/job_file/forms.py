"""The form that takes a job file."""

from django import forms

from fronts.pages.shared.file_field import BytesField
from shopjobs.forms.house import HouseForm

MOST_BYTES = 4 * 1024 * 1024


class JobFileForm(HouseForm):
    """A job file or a notebook, and the number of the job that it becomes."""

    file = BytesField(
        what="job file or notebook",
        most=MOST_BYTES,
        label="File",
        help_text="A job file, or a notebook as plain text; at most 4 MB.",
    )
    number = forms.CharField(
        label="Job number",
        max_length=40,
        required=False,
        help_text="Empty: the number that stands in a job file. A notebook has none.",
    )
