"""The form that takes a job file."""

from django import forms

from shopjobs.forms.house import HouseForm

MOST_BYTES = 4 * 1024 * 1024


class JobFileForm(HouseForm):
    """A job file, and the number of the job that it becomes."""

    file = forms.FileField(
        label="Job file",
        help_text="A .job.json file of at most 4 MB. It becomes a new job.",
        error_messages={
            "required": "Choose a job file.",
            "empty": "This file is empty. Choose a job file.",
        },
    )
    number = forms.CharField(
        label="Job number",
        max_length=40,
        required=False,
        help_text="Empty: the number that stands in the file.",
    )

    def clean_file(self) -> bytes:
        """Hand over the file's bytes, where there aren't too many."""
        file = self.cleaned_data["file"]
        if file.size > MOST_BYTES:
            raise forms.ValidationError("This file is over 4 MB. No kitchen's job file is.")
        data: bytes = file.read()
        return data
