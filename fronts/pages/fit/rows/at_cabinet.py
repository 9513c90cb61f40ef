"""All that is known at the cabinet that an installer stands before."""

from dataclasses import dataclass

from django.core.exceptions import ObjectDoesNotExist
from django.forms import Form
from django.urls import reverse

from fronts.models import FitRecord
from fronts.pages.fit.rows.fronts import FrontToFit, front_to_fit
from fronts.rules.fingerprint import fingerprint
from fronts.rules.fitting_results import Fitting
from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.results import Front, Schedule
from fronts.selectors.kitchens import (
    cabinets_of,
    fit_records_of,
    openings_of,
    placed_kitchen_of,
)
from fronts.selectors.schedules import schedule_for
from shopjobs.models import Job


@dataclass(frozen=True, slots=True)
class AtCabinet:
    """One cabinet of a schedule; `numbers` lead to the cabinets, `openings` to its own."""

    job: Job
    number: int
    numbers: dict[str, int]
    kitchen: Kitchen
    schedule: Schedule
    cabinet: Cabinet
    fronts: list[Front]
    records: dict[str, FitRecord]
    openings: dict[str, int]
    now: str

    @property
    def fittings(self) -> dict[str, Fitting]:
        """How its fronts stand on their boxes, by their labels."""
        return self.schedule.fittings_of(self.fronts)

    @property
    def before(self) -> tuple[str, int] | None:
        """The cabinet before this one, and its number."""
        return self._neighbour(-1)

    @property
    def after(self) -> tuple[str, int] | None:
        """The cabinet after this one, and its number."""
        return self._neighbour(1)

    def front(self, label: str | None) -> Front | None:
        """Its front of this label, None where the kitchen has changed it away."""
        return next((front for front in self.fronts if front.label == label), None)

    def shown(self, front: Front, form: Form) -> FrontToFit:
        """The front with the form in which its fit is recorded."""
        opening = self.openings.get(front.opening)
        measure = ""
        if opening is not None:
            measure = reverse("fronts:opening-measured", args=[self.job.pk, opening])
            measure += f"?back=fit-{self.number}"
        record = self.records.get(front.label)
        return front_to_fit(self.schedule, self.kitchen, front, record, self.now, form, measure)

    def _neighbour(self, step: int) -> tuple[str, int] | None:
        labels = [cabinet.label for cabinet in self.kitchen.cabinets]
        place = labels.index(self.cabinet.label) + step
        return (labels[place], self.numbers[labels[place]]) if 0 <= place < len(labels) else None


def cabinet_numbers(job: Job) -> dict[str, int]:
    """The job's cabinets by their labels."""
    return dict(cabinets_of(job).prefetch_related(None).values_list("label", "pk"))


def at_cabinet(job: Job, number: int) -> AtCabinet:
    """The cabinet of this number; ObjectDoesNotExist where the job has none."""
    numbers, kitchen = cabinet_numbers(job), placed_kitchen_of(job)
    label = next((label for label, pk in numbers.items() if pk == number), None)
    cabinet = next((each for each in kitchen.cabinets if each.label == label), None)
    if cabinet is None:
        raise ObjectDoesNotExist
    schedule = schedule_for(job, kitchen)
    openings = openings_of(job, number)
    return AtCabinet(
        job=job,
        number=number,
        numbers=numbers,
        kitchen=kitchen,
        schedule=schedule,
        cabinet=cabinet,
        fronts=schedule.fronts_of(cabinet.label),
        records=fit_records_of(job),
        openings=dict(openings.values_list("label", "pk")),
        now=fingerprint(schedule),
    )
