"""Forms of a job."""

from decimal import Decimal
from typing import Any

from django import forms

from shopjobs.forms.house import DateInput, HouseForm
from shopjobs.models import Job, Unit
from shopjobs.steps import step_choices, tidy
from shopjobs.words import one_line


class StepField(forms.TypedChoiceField):
    """A cutting step, chosen from the list; its value is in millimetres."""

    def __init__(self, **kwargs: Any) -> None:
        super().__init__(coerce=Decimal, empty_value=None, choices=step_choices(), **kwargs)

    def offer(self, current: Decimal) -> None:
        """Offer the step in use too, where it is not on the list."""
        self.choices = step_choices(current)


class NewJobForm(HouseForm):
    """What a job starts with; its unit and step are the shop's until changed."""

    number = forms.CharField(
        label="Job number",
        max_length=40,
        validators=[one_line],
        error_messages={"required": "Enter a job number, like K-104."},
    )
    client = forms.CharField(label="Client", max_length=120, required=False, validators=[one_line])
    site = forms.CharField(label="Site", max_length=240, required=False, validators=[one_line])


class JobForm(NewJobForm):
    """Everything that is known of a job beside its kitchen."""

    unit = forms.ChoiceField(
        label="Unit", choices=Unit, help_text="What a bare number means, and how sizes are shown."
    )
    step = StepField(label="Cutting step", help_text="Front sizes go down to this step.")
    fit_on = forms.DateField(
        label="Fit on",
        required=False,
        widget=DateInput(),
        error_messages={"invalid": "Enter a date, like 2027-03-12."},
    )

    def __init__(self, *args: Any, job: Job, **kwargs: Any) -> None:
        kwargs.setdefault("initial", _known(job))
        super().__init__(*args, **kwargs)
        offer_step(self, job.step)


def offer_step(form: forms.Form, current: Decimal) -> None:
    """Let a form's step field keep the step in use."""
    step = form.fields["step"]
    if isinstance(step, StepField):
        step.offer(current)


def _known(job: Job) -> dict[str, Any]:
    names = ("number", "client", "site", "unit", "fit_on")
    return {name: getattr(job, name) for name in names} | {"step": tidy(job.step)}
