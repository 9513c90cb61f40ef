"""All that is known at the cabinet that an installer stands before."""

import json
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from functools import cached_property
from itertools import chain

from django.core.exceptions import ObjectDoesNotExist
from django.urls import reverse

from fronts.models import Cabinet as CabinetRow
from fronts.models import FitRecord, FrontCut, WorkTick
from fronts.pages.fit.rows.at_front import AtFront, standing
from fronts.pages.fit.rows.fronts import record_key
from fronts.rules.fingerprint import fingerprint
from fronts.rules.fitting_results import Fitting
from fronts.rules.front_states import FRONT_STATES, FrontState
from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.lengths import show
from fronts.rules.merged_jigs import JigPlan, merged_jigs
from fronts.rules.results import Front, Schedule
from fronts.selectors.cuts import cuts_of
from fronts.selectors.fits import fits_of, kitchen_changes, ticks_of
from fronts.selectors.kitchens import (
    cabinets_of,
    front_keys_of,
    openings_of,
    placed_kitchen_of,
)
from fronts.selectors.schedules import schedule_for
from fronts.services.saving import key_of
from shopjobs.models import Job


@dataclass(frozen=True, slots=True)
class FrontLink:
    """A front of the cabinet: what it is called in it, how it stands, and where on the page.

    `form` is the id of the form in which it is recorded.
    """

    name: str
    state: FrontState
    href: str
    form: str


@dataclass(frozen=True, slots=True)
class NextFront:
    """A front that is not done yet, the address at which it is, and the id of its form there."""

    label: str
    href: str
    form: str


@dataclass(frozen=True)
class AtCabinet:
    """One cabinet of a schedule.

    `numbers` lead to the cabinets, `openings` to its own, `keys` to all fronts by their labels;
    `records` are those of each front, the latest first; `changes` are when the kitchen was
    changed since the first of them.
    """

    job: Job
    number: int
    numbers: dict[str, int]
    kitchen: Kitchen
    schedule: Schedule
    cabinet: Cabinet
    fronts: list[Front]
    records: Mapping[str, Sequence[FitRecord]]
    keys: Mapping[str, int]
    ticks: Mapping[int, Mapping[str, WorkTick]]
    cuts: Mapping[str, FrontCut]
    changes: Sequence[datetime]
    openings: dict[str, int]
    now: str

    @cached_property
    def jigs(self) -> JigPlan:
        """The jigs that are made for the kitchen, worked out once."""
        return merged_jigs(self.schedule, self.kitchen)

    @property
    def fittings(self) -> dict[str, Fitting]:
        """How its fronts stand on their boxes, by their labels."""
        return self.schedule.fittings_of(self.fronts)

    @property
    def step(self) -> str:
        """The step in which gaps are counted, as a field says it."""
        return show(self.kitchen.job.step, self.job.unit)

    @property
    def place(self) -> int:
        """Which of the kitchen's cabinets it is, as people count."""
        return self._labels.index(self.cabinet.label) + 1

    @property
    def before(self) -> tuple[str, int] | None:
        """The cabinet before this one, and its number."""
        return self._neighbour(-1)

    @property
    def after(self) -> tuple[str, int] | None:
        """The cabinet after this one, and its number."""
        return self._neighbour(1)

    @property
    def links(self) -> list[FrontLink]:
        """Its fronts, each with how it stands."""
        return [
            FrontLink(
                front.label.removeprefix(f"{self.cabinet.label}."),
                self._state(front),
                f"#{record_key(front.label)}-front",
                f"{record_key(front.label)}-form",
            )
            for front in self.fronts
        ]

    @property
    def next_open(self) -> NextFront | None:
        """The first front that can be done and is not: of this cabinet, else of those after it."""
        return next(iter(self._open), None)

    @property
    def to_do(self) -> str:
        """All such fronts, as a phone without a signal reads them: those that wait it passes by."""
        return json.dumps([[one.form, one.label, one.href] for one in self._open])

    @property
    def open_states(self) -> str:
        """The states in which a front is still to be done, in words, as that phone reads them."""
        return " ".join(word for word, state in FRONT_STATES.items() if state.is_open)

    def front(self, label: str | None) -> Front | None:
        """Its front of this label, None where the kitchen has changed it away."""
        return next((front for front in self.fronts if front.label == label), None)

    def at(self, front: Front, *, meanwhile: FitRecord | None = None) -> AtFront:
        """What is known of one of its fronts."""
        opening = self.openings.get(front.opening)
        measure = ""
        if opening is not None:
            measure = reverse("fronts:opening-measured", args=[self.job.pk, opening])
            measure += f"?back=fit-{self.number}"
        records = self.records.get(front.label, ())
        is_old = bool(records) and records[0].fingerprint != self.now
        later = (at for at in self.changes if is_old and at > records[0].fitted_at)
        return AtFront(
            self.schedule, self.kitchen, front, self.jigs, records,
            self.ticks.get(self.keys.get(front.label, 0), {}), measure,
            self.cuts.get(front.label), next(later, None), meanwhile,
        )  # fmt: skip

    @cached_property
    def _open(self) -> list[NextFront]:
        return list(self._from_here())

    def _from_here(self) -> Iterator[NextFront]:
        start = self.place - 1
        for label in chain(self._labels[start:], self._labels[:start]):
            for front in self.schedule.fronts_of(label):
                if label in self.numbers and self._state(front).is_open:
                    address = self._address(self.numbers[label])
                    key = record_key(front.label)
                    yield NextFront(front.label, f"{address}#{key}-front", f"{key}-form")

    def _state(self, front: Front) -> FrontState:
        records = self.records.get(front.label)
        return standing(records[0] if records else None, front)

    @property
    def _labels(self) -> list[str]:
        return [cabinet.label for cabinet in self.kitchen.cabinets]

    def _address(self, number: int) -> str:
        return reverse("fronts:job-fit-cabinet", args=[self.job.pk, number])

    def _neighbour(self, step: int) -> tuple[str, int] | None:
        labels, place = self._labels, self.place - 1 + step
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
    fronts, keys = schedule.fronts_of(cabinet.label), front_keys_of(job)
    records = fits_of(job, keys)
    latest = [records[front.label][0].fitted_at for front in fronts if front.label in records]
    about = key_of(CabinetRow(pk=number))
    return AtCabinet(
        job=job,
        number=number,
        numbers=numbers,
        kitchen=kitchen,
        schedule=schedule,
        cabinet=cabinet,
        fronts=fronts,
        records=records,
        changes=kitchen_changes(job, about, min(latest)) if latest else (),
        keys=keys,
        ticks=ticks_of(keys[front.label] for front in fronts if front.label in keys),
        cuts=cuts_of(job, keys),
        openings=dict(openings_of(job, number).values_list("label", "pk")),
        now=fingerprint(schedule),
    )
