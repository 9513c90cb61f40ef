"""Offcuts on their page: by material and thickness, each with its size, drawn to one scale."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import groupby

from django.utils.safestring import SafeString

from fronts.drawings.offcut import offcut_drawing
from fronts.figures.offcuts import offcut_size
from fronts.figures.parts import material_name
from fronts.figures.sizes import size
from fronts.models import Offcut
from shopjobs.models import Job


@dataclass(frozen=True, slots=True)
class OffcutShown:
    """One piece: where it came from, and for which job it is laid by."""

    key: int
    label: str
    size: str
    kind: str
    drawing: SafeString
    source: Job | None
    laid_by: Job | None
    by_plan: bool
    is_there: bool


@dataclass(frozen=True, slots=True)
class GroupShown:
    """The pieces of one material and thickness."""

    name: str
    rows: tuple[OffcutShown, ...]


def offcut_groups(rows: Iterable[Offcut], unit: str) -> Iterator[GroupShown]:
    """The groups, in the order in which the rows come."""
    for (material, thickness), several in groupby(rows, lambda row: (row.material, row.thickness)):
        name = material_name(material, unit, thickness, None)
        yield GroupShown(name, tuple(_shown(row, unit) for row in several))


def _shown(row: Offcut, unit: str) -> OffcutShown:
    return OffcutShown(
        key=row.pk,
        label=row.label,
        size=offcut_size(row.facts, unit),
        kind=_kind(row, unit),
        drawing=SafeString(offcut_drawing(row.facts, row.label, unit)),
        source=_there(row.from_job),
        laid_by=_there(row.job),
        by_plan=row.by_plan,
        is_there=row.is_there,
    )


def _kind(row: Offcut, unit: str) -> str:
    if row.is_stick:
        return f"stick, {size(unit, row.width)} {unit} wide"
    return "grain along its length" if row.is_grained else "no grain"


def _there(job: Job | None) -> Job | None:
    return job if job is not None and job.deleted_at is None else None
