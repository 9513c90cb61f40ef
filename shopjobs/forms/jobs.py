"""Forms of a job."""

from collections.abc import Mapping
from decimal import Decimal
from typing import Any

from django import forms
from django.urls import reverse_lazy

from shopjobs.forms.house import DateInput, HouseForm
from shopjobs.forms.seen import SeenForm
from shopjobs.models import Job, Shop, Unit
from shopjobs.selectors import people_at_work
from shopjobs.steps import USUAL, step_choices, step_text, tidy, unit_of
from shopjobs.words import one_line


class StepField(forms.TypedChoiceField):
    """A cutting step, chosen from the list; its value is in millimetres."""

    def __init__(self, **kwargs: Any) -> None:
        super().__init__(coerce=Decimal, empty_value=None, choices=step_choices(), **kwargs)

    def offer(self, current: Decimal) -> None:
        """Offer the step in use too, where it is not on the list."""
        self.choices = step_choices(current)


class UnitField(forms.ChoiceField):
    """A unit; choosing another puts that unit's steps into the form's list."""

    def __init__(self, **kwargs: Any) -> None:
        super().__init__(choices=Unit, **kwargs)
        self.widget.attrs |= {
            "hx-get": reverse_lazy("shopjobs:step-list"),
            "hx-target": "#id_step",
            "hx-swap": "innerHTML",
        }


class PersonField(forms.TypedChoiceField):
    """A person of the shop, by the key, or nobody."""

    def __init__(self, label: str) -> None:
        super().__init__(label=label, required=False, coerce=int, empty_value=None)

    def offer(self, people: Mapping[int, str]) -> None:
        """Let one of these be chosen, or nobody."""
        self.choices = [("", "nobody yet"), *((str(key), name) for key, name in people.items())]


def number_field() -> forms.CharField:
    """What a job is called within its shop."""
    return forms.CharField(
        label="Job number",
        max_length=40,
        validators=[one_line],
        error_messages={"required": "Enter a job number, like K-104."},
    )


def client_field() -> forms.CharField:
    """Whose kitchen it is."""
    return forms.CharField(
        label="Client",
        max_length=120,
        required=False,
        validators=[one_line],
        widget=forms.TextInput(attrs={"list": "clients"}),
    )


def site_field() -> forms.CharField:
    """Where the kitchen is."""
    return forms.CharField(
        label="Site",
        max_length=240,
        required=False,
        validators=[one_line],
        widget=forms.TextInput(attrs={"list": "sites"}),
    )


def fitting_day() -> forms.DateField:
    """The day on which the fronts are to be hung."""
    return forms.DateField(
        label="Fit on",
        required=False,
        widget=DateInput(),
        error_messages={"invalid": "Enter a date, like 2027-03-12."},
    )


class StepForm(HouseForm):
    """A form with a unit and a step, which go together."""

    def clean(self) -> dict[str, Any]:
        """Refuse a step of the other unit."""
        given = super().clean() or {}
        unit, step = given.get("unit"), given.get("step")
        if unit and step and unit_of(step) not in (unit, None):
            usual = step_text(USUAL[unit])
            words = f"Sizes are in {Unit(unit).label}; choose a step in them, like {usual}."
            self.add_error("step", words)
        return given


class NewJobForm(StepForm):
    """What a job starts with; its unit and step are the shop's until changed."""

    number = number_field()
    client = client_field()
    site = site_field()
    unit = UnitField(
        label="Unit",
        help_text="What a bare number means, and how sizes are shown.",
        required=False,
    )
    step = StepField(
        label="Cutting step", help_text="Front sizes go down to this step.", required=False
    )
    fit_on = fitting_day()
    responsible = PersonField("Who sees to it")

    def __init__(
        self, *args: Any, shop: Shop, responsible: int | None = None, **kwargs: Any
    ) -> None:
        kwargs.setdefault("initial", {"unit": shop.unit, "step": tidy(shop.step)})
        super().__init__(*args, **kwargs)
        self.shop = shop
        offer_step(self, shop.step)
        who = self.fields["responsible"]
        if isinstance(who, PersonField):
            who.offer(people_at_work(shop, responsible))

    def clean(self) -> dict[str, Any]:
        """A unit without a step has its usual one; neither: the shop's hold."""
        given = super().clean()
        unit = given.get("unit")
        if unit and "step" in given and given["step"] is None:
            given["step"] = self.shop.step if unit == self.shop.unit else USUAL[unit]
        return given


class JobForm(SeenForm, NewJobForm):
    """Everything that is known of a job beside its kitchen."""

    def __init__(self, *args: Any, job: Job, **kwargs: Any) -> None:
        kwargs.setdefault("initial", _known(job))
        super().__init__(*args, shop=job.shop, responsible=job.responsible_id, **kwargs)
        self.fields["unit"].required = self.fields["step"].required = True
        offer_step(self, job.step)


def offer_step(form: forms.Form, current: Decimal) -> None:
    """Let a form's step field keep the step in use."""
    step = form.fields["step"]
    if isinstance(step, StepField):
        step.offer(current)


def _known(job: Job) -> dict[str, Any]:
    known = {name: getattr(job, name) for name in ("number", "unit", "fit_on")}
    for_whom = {"client": job.client_name, "site": job.site_address}
    return known | for_whom | {"step": tidy(job.step), "responsible": job.responsible_id}
