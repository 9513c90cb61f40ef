"""The forms that make a job of a job file, and of another job."""

from typing import Any

from django import forms

from fronts.pages.shared.file_field import BytesField
from shopjobs.forms.house import HouseForm
from shopjobs.forms.jobs import client_field, fitting_day, number_field, site_field
from shopjobs.models import Job

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


class JobCopyForm(HouseForm):
    """What a copy of a job is called, whose it is and when it is fitted."""

    number = number_field()
    client = client_field()
    site = site_field()
    fit_on = fitting_day()

    def __init__(self, *args: Any, job: Job, **kwargs: Any) -> None:
        kwargs.setdefault("initial", {"client": job.client_name, "site": job.site_address})
        super().__init__(*args, **kwargs)
