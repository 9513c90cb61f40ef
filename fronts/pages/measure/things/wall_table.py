"""What stands on a wall as rows of its table: every length already in the job's words."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any, TypeAlias

from fronts.figures.faces import words_of_face
from fronts.figures.own_standard import own_note
from fronts.models import Cabinet, Thing
from fronts.pages.measure.rows.cells import (
    NOTHING_TYPED,
    Cell,
    Typed,
    cells_of,
    face_cell,
    seen_in,
)
from fronts.pages.measure.rows.openings import OpeningRow, opening_row
from fronts.pages.measure.things.others import OTHERS
from fronts.pages.measure.things.thing_page import ThingPage, Words
from fronts.rules.job_facts import JobFacts
from fronts.rules.kinds import CABINET_BUILDS, CABINET_KINDS, words_of
from fronts.rules.kitchen import Cabinet as CabinetFacts
from fronts.rules.kitchen import Kitchen
from fronts.rules.lengths import Mm
from fronts.rules.runs import on_walls, runs_of
from fronts.rules.thing_kinds import RUNS
from fronts.snapshot.standards import standard_of

_KIND: Mapping[str, str] = words_of(CABINET_KINDS)
_BUILD: Mapping[str, str] = words_of(CABINET_BUILDS)
Places: TypeAlias = Mapping[str, Mm]
"""Where each cabinet and thing stands along its wall, by its label."""


@dataclass(frozen=True, slots=True)
class CabinetRow:
    """A cabinet with its openings."""

    id: int
    label: str
    wall: str
    what: str
    face: Cell
    cells: tuple[Cell | None, ...]
    notes: tuple[str, ...]
    openings: tuple[OpeningRow, ...]

    @property
    def key(self) -> str:
        return f"cabinet-{self.id}"

    @property
    def seen(self) -> str:
        """What its cells show."""
        return seen_in([*self.cells, self.face])

    @property
    def is_open(self) -> bool:
        """Whether its openings are shown at once: no words say where they are."""
        return not self.face.value or bool(self.face.fault)

    @property
    def new_key(self) -> str:
        """Where its next opening is entered."""
        return f"opening-new-{self.id}"


@dataclass(frozen=True, slots=True)
class StandingRow:
    """What stands between cabinets, in its place along the wall."""

    id: int
    label: str
    cells: tuple[Cell | None, ...]
    words: Words
    page: ThingPage = OTHERS

    @property
    def seen(self) -> str:
        """What its cells show."""
        return seen_in(self.cells)

    @property
    def key(self) -> str:
        return f"{self.page.one}-{self.id}"


@dataclass(frozen=True, slots=True)
class RunRows:
    """One run of a wall: what stands on the floor, or what hangs above."""

    says: str
    rows: tuple[CabinetRow | StandingRow, ...]


def run_rows(
    wall: str,
    kitchen: Kitchen,
    cabinets: Sequence[Cabinet],
    things: Sequence[Thing],
    *,
    unit: str,
    typed: Typed = NOTHING_TYPED,
) -> list[RunRows]:
    """What stands on a wall, all of it given, run by run in its order along the wall."""
    rows: dict[str, CabinetRow | StandingRow] = {}
    runs, places = runs_of(kitchen), places_in(kitchen)
    for cabinet in cabinets:
        facts = kitchen.cabinet(cabinet.label)
        rows[cabinet.label] = cabinet_row(cabinet, facts, kitchen.job, places, typed)
    for thing in things:
        rows[thing.label] = standing_row(thing, unit, places, typed)
    found = (
        RunRows(RUNS[run], tuple(rows[placed.what.label] for placed in standing))
        for run, standing in runs.get(wall, {}).items()
    )
    return [run for run in found if run.rows]


def places_in(kitchen: Kitchen) -> Places:
    """Where everything stands along its wall."""
    return {placed.what.label: placed.x for placed in on_walls(runs_of(kitchen))}


def cabinet_row(
    cabinet: Cabinet,
    facts: CabinetFacts,
    job: JobFacts,
    places: Places,
    typed: Typed = NOTHING_TYPED,
) -> CabinetRow:
    """A cabinet whose openings and boxes are at hand; `facts` is the same, as rules know it."""
    unit = job.unit
    return CabinetRow(
        id=cabinet.pk,
        label=cabinet.label,
        wall=cabinet.wall,
        what=f"{_KIND[cabinet.kind]}, {_BUILD[cabinet.build].lower()}",
        face=face_cell(
            f"cabinet-{cabinet.pk}-face",
            cabinet.label,
            words_of_face(facts, job),
            typed,
        ),
        cells=cells_of(
            cabinet, f"cabinet-{cabinet.pk}", unit, pale=_pale(cabinet, places), typed=typed
        ),
        notes=tuple(filter(None, [own_note(standard_of(cabinet), unit)])),
        openings=tuple(opening_row(each, unit, typed) for each in cabinet.openings.all()),
    )


def standing_row(
    thing: Thing, unit: str, places: Places, typed: Typed = NOTHING_TYPED
) -> StandingRow:
    """An appliance, filler, end panel or gap."""
    key = f"{OTHERS.one}-{thing.pk}"
    return StandingRow(
        id=thing.pk,
        label=thing.label,
        cells=cells_of(thing, key, unit, pale=_pale(thing, places), typed=typed),
        words=OTHERS.words(thing, unit),
    )


def _pale(row: Any, places: Places) -> Places:
    """What holds where a row leaves it to its run."""
    return {"x": places[row.label]} if row.x is None and row.label in places else {}
