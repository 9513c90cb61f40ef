"""A kitchen as the installer goes through it: cabinets by wall, and how each front stands."""

from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from django.urls import reverse
from django.utils.safestring import SafeString

from fronts.figures.findings import findings_of, places_at
from fronts.figures.fronts import what
from fronts.figures.sizes import size
from fronts.models import FitRecord
from fronts.pages.fit.rows.at_front import standing
from fronts.pages.fit.rows.fronts import record_key
from fronts.pages.shared.drawn_walls import drawn_walls
from fronts.rules.front_states import NOT_HUNG, FrontState
from fronts.rules.kitchen import Cabinet, Kitchen
from fronts.rules.labels import opening_label
from fronts.rules.results import Front, Schedule
from fronts.rules.sign_off import unmade_openings
from fronts.selectors.snags import open_by_label
from shopjobs.models import Job


@dataclass(frozen=True, slots=True)
class FrontRow:
    """A front as the list says it: `a door, hinged left`, and how it stands."""

    label: str
    holds: str
    state: FrontState

    @property
    def is_begun(self) -> bool:
        """Whether somebody said how it stands."""
        return self.state is not NOT_HUNG


@dataclass(frozen=True, slots=True)
class CabinetRow:
    """One cabinet of the list; `number` is None where the cabinet has gone meanwhile.

    `unmade` is how many of its openings have fronts that can't be worked out, for a stop.
    """

    label: str
    number: int | None
    about: str
    fronts: tuple[FrontRow, ...]
    unmade: int
    stops: int

    @property
    def done(self) -> int:
        """How many of its fronts are done."""
        return sum(front.state.is_done for front in self.fronts)

    @property
    def problems(self) -> int:
        """How many of its fronts are a problem."""
        return sum(front.state.is_problem for front in self.fronts)

    @property
    def state(self) -> str:
        """How far it is, in words."""
        if not self.wanted:
            return "nothing to fit"
        if self.is_done:
            return "done"
        return f"{self.done} of {self.wanted} done" if self.done else "not done"

    @property
    def is_done(self) -> bool:
        """Whether each of its fronts is done."""
        return 0 < self.wanted == self.done

    @property
    def wanted(self) -> int:
        """How many fronts it is to have, one at least of each opening that has none yet."""
        return len(self.fronts) + self.unmade


@dataclass(frozen=True, slots=True)
class Wall:
    """The cabinets of one wall, in the kitchen's order, and its drawing with how fronts stand."""

    name: str
    cabinets: tuple[CabinetRow, ...]
    drawing: SafeString


def walls_of(
    job: Job,
    kitchen: Kitchen,
    schedule: Schedule,
    numbers: Mapping[str, int],
    records: Mapping[str, FitRecord],
) -> list[Wall]:
    """The walls in the order in which the kitchen names them; `numbers` by cabinet label."""
    states = {front.label: standing(records.get(front.label), front) for front in schedule.fronts}
    cabinet_of = {front.label: front.cabinet for front in schedule.fronts}
    unmade = unmade_openings(kitchen, schedule)
    rows = {each.label: _row(each, schedule, numbers, states, unmade) for each in kitchen.cabinets}

    def link(label: str) -> str:
        number = numbers.get(cabinet_of[label])
        return "" if number is None else reverse("fronts:job-fit-cabinet", args=[job.pk, number])

    drawn = drawn_walls(schedule, kitchen, link, states=states, snags=open_by_label(job))
    return [
        Wall(
            name,
            tuple(rows[each.label] for each in kitchen.cabinets if each.wall == name),
            drawn[name],
        )
        for name in kitchen.wall_names
    ]


def where_to_go_on(job: Job, walls: Iterable[Wall]) -> tuple[str, str]:
    """The first front that can be done and is not, and where that is; "" where there is none."""
    for row in (row for wall in walls for row in wall.cabinets if row.number is not None):
        for front in row.fronts:
            if front.state.is_open:
                at = reverse("fronts:job-fit-cabinet", args=[job.pk, row.number])
                return front.label, f"{at}#{record_key(front.label)}-front"
    return "", ""


def _row(
    cabinet: Cabinet,
    schedule: Schedule,
    numbers: Mapping[str, int],
    states: Mapping[str, FrontState],
    unmade: Collection[str],
) -> CabinetRow:
    fronts = schedule.fronts_of(cabinet.label)
    sizes = size(schedule.job.unit, cabinet.width, cabinet.height, cabinet.depth)
    return CabinetRow(
        label=cabinet.label,
        number=numbers.get(cabinet.label),
        about=f"{cabinet.kind} cabinet, {sizes}",
        fronts=tuple(_fronts(fronts, states)),
        unmade=sum(
            opening_label(cabinet.label, opening.label) in unmade for opening in cabinet.openings
        ),
        stops=len(findings_of(schedule, places_at(cabinet, fronts)).stops),
    )


def _fronts(fronts: Sequence[Front], states: Mapping[str, FrontState]) -> Iterator[FrontRow]:
    """`a door, hinged left`; the cabinet's own name is not said again."""
    for front in fronts:
        name = front.label.removeprefix(f"{front.cabinet}.")
        yield FrontRow(front.label, f"{name} {what(front)}", states[front.label])
