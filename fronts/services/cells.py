"""Several rows of a wall's table changed at once: one step back, all of it or nothing."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from django.core.exceptions import ValidationError

from fronts.models import Cabinet, DoorOnHand, Opening
from fronts.models.kept import Kept
from fronts.rules.kitchen import Opening as OpeningFacts
from fronts.services.cabinets import cabinet_change
from fronts.services.faces import face_change
from fronts.services.openings import opening_change
from fronts.services.saving import job_changed
from fronts.services.things import thing_change
from shopjobs.models import Job, Person
from shopjobs.services.recording import recorded


@dataclass(frozen=True, slots=True)
class RowChange:
    """What a row of the table is to say; `key` names the row in what is refused.

    `openings` are those of a cabinet's new face, None where it stays.
    """

    key: str
    row: Kept
    facts: Any
    openings: Sequence[OpeningFacts] | None = None


class CellsRefused(Exception):  # noqa: N818 - an answer, by the row that it is about
    """What one of the rows can't say."""

    def __init__(self, key: str, error: ValidationError) -> None:
        super().__init__(key)
        self.key, self.error = key, error


@recorded
def rows_change(
    *, job: Job, changes: Sequence[RowChange], at: datetime, by: Person | None = None
) -> None:
    """Change what is known of cabinets, openings and things; what they hold besides stays."""
    for change in changes:
        try:
            _change(change, at, by)
        except ValidationError as error:
            raise CellsRefused(change.key, error) from error
    if len(changes) > 1:
        are_doors = all(isinstance(change.row, DoorOnHand) for change in changes)
        what = "doors on hand" if are_doors else "rows of a wall"
        job_changed(job=job, text=f"Changed {len(changes)} {what}", by=by, at=at)


def _change(change: RowChange, at: datetime, by: Person | None) -> None:
    match change.row:
        case Cabinet() as cabinet:
            gets_face = change.openings is not None
            cabinet_change(cabinet=cabinet, facts=change.facts, at=at, by=by, gets_face=gets_face)
            if change.openings is not None:
                face_change(cabinet=cabinet, openings=change.openings, at=at, by=by)
        case Opening() as opening:
            opening_change(opening=opening, facts=change.facts, at=at, by=by)
        case thing:
            thing_change(row=thing, facts=change.facts, at=at, by=by)
