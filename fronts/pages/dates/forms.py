"""The forms of dates: a job's fitting day and days, a stage's mark, the shop's calendar."""

from typing import Any

from django import forms

from fronts.facts.form_fields import FactsFormMeta
from fronts.facts.rows import columns_of, from_values
from fronts.models import ClosedDays
from fronts.rules.date_facts import STAGE_DAYS, STAGES, WEEKDAYS, JobDates, ShopDates
from fronts.rules.date_facts import ClosedDays as ClosedFacts
from fronts.rules.limits import LONGEST_CLOSED_NAME
from fronts.rules.working_days import is_sensible
from fronts.services.dates import A_DAY
from shopjobs.forms.house import DateInput, HouseForm
from shopjobs.forms.seen import SeenForm
from shopjobs.words import one_line

AT_ONCE_FIELDS = tuple(f"{stage}_at_once" for stage in STAGES)


class DayField(forms.DateField):
    """A day that something may be planned for."""

    def __init__(self, label: str, *, required: bool = True) -> None:
        words = {"invalid": A_DAY, "required": A_DAY}
        super().__init__(label=label, required=required, widget=DateInput(), error_messages=words)

    def validate(self, value: Any) -> None:
        """A year that was mistyped is no day."""
        super().validate(value)
        if value is not None and not is_sensible(value):
            raise forms.ValidationError(A_DAY)


class FitDayForm(SeenForm):
    """The day on which fitting begins; empty where there is none yet."""

    fit_on = DayField("Fitting begins on", required=False)


class JobDaysForm(SeenForm, metaclass=FactsFormMeta):
    """The days that a job's own stages take; what is left empty is as usual."""

    facts = JobDates

    def __init__(self, *args: Any, usual: ShopDates, said: JobDates, **kwargs: Any) -> None:
        super().__init__(*args, initial=columns_of(said), auto_id="job-days-%s", **kwargs)
        for name in STAGE_DAYS:
            self.fields[name].widget.attrs["placeholder"] = getattr(usual, name)

    @property
    def entered(self) -> JobDates:
        """The days as they were entered."""
        return from_values(JobDates, self.cleaned_data)


class MarkForm(HouseForm):
    """On which day a stage was begun or done; today where nothing is said."""

    stage = ""
    """The stage that is marked."""
    on = DayField("On", required=False)


class ShopDatesForm(SeenForm, metaclass=FactsFormMeta):
    """The weekdays on which the shop works, the days that stages take, jobs at once."""

    facts = ShopDates

    def __init__(self, *args: Any, said: ShopDates, **kwargs: Any) -> None:
        super().__init__(*args, initial=columns_of(said), **kwargs)
        for name in (*STAGE_DAYS, *AT_ONCE_FIELDS):
            self.fields[name].required = True
            self.fields[name].error_messages["required"] = "Enter a number."

    @property
    def entered(self) -> ShopDates:
        """What was entered."""
        return from_values(ShopDates, self.cleaned_data)

    @property
    def weekdays(self) -> list[forms.BoundField]:
        """A box to tick for each weekday."""
        return [self[name] for name in WEEKDAYS]

    @property
    def stages(self) -> list[forms.BoundField]:
        """The days that each stage takes."""
        return [self[name] for name in STAGE_DAYS]

    @property
    def capacities(self) -> list[forms.BoundField]:
        """How many jobs are at each stage at once."""
        return [self[name] for name in AT_ONCE_FIELDS]


class ClosedDaysForm(SeenForm):
    """Days on which the shop is closed; a single one has no last day."""

    name = forms.CharField(
        label="What for", max_length=LONGEST_CLOSED_NAME, validators=[one_line],
        error_messages={"required": "Say what for, like “summer holidays”."},
    )  # fmt: skip
    first = DayField("First day")
    last = DayField("Last day", required=False)

    def __init__(self, *args: Any, row: ClosedDays | None = None, **kwargs: Any) -> None:
        held = {} if row is None else {"name": row.name, "first": row.first, "last": row.last}
        super().__init__(*args, initial=held, auto_id="closed-%s", **kwargs)
        self.is_merged = row is not None
        self.fields["last"].help_text = "Empty: a single day."

    @property
    def entered(self) -> ClosedFacts:
        """The days as they were entered."""
        given = self.cleaned_data
        return ClosedFacts(given["first"], given["last"] or given["first"], given["name"])
