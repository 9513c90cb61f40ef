"""A cabinet entered together with a plain face: one opening, or a drawer over the rest."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime

from django.core.exceptions import ValidationError
from django.db import transaction

from fronts.models import Cabinet
from fronts.rules.lengths import INCH, Mm
from fronts.services.cabinets import cabinet_create
from fronts.services.openings import opening_create
from fronts.services.values import CabinetValues, OpeningValues
from shopjobs.models import Job, Person

FACES: Mapping[str, str] = {
    "": "Enter its openings afterwards",
    "door": "Door",
    "pair": "Pair of doors",
    "drawer+door": "Drawer over a door",
    "drawer+pair": "Drawer over a pair of doors",
    "drawers": "Stack of drawers",
    "drawer": "One drawer",
    "pull-out": "Pull-out",
    "fixed": "Fixed front",
    "open": "Nothing, it stays open",
}
"""What a plain face is closed by; before the `+` stands what is above."""

_MEMBERS: Mapping[tuple[str, str], Mm] = {
    ("face-frame", "in"): INCH * 3 / 2,  # common practice, no source
    ("frameless", "in"): INCH * 3 / 4,  # common practice, no source
    ("face-frame", "mm"): Mm(38),  # common practice, no source
    ("frameless", "mm"): Mm(18),  # common practice, no source
}


def member_of(build: str, unit: str) -> Mm:
    """The width of a stile, rail or panel where nobody says."""
    return _MEMBERS[build, unit]


@dataclass(frozen=True, slots=True, kw_only=True)
class Face:
    """A plain face; `drawer_height` is that of the opening above, where there is one."""

    closing: str
    sides: Mm
    above: Mm
    below: Mm
    between: Mm
    hinged: str = "left"
    count: int = 1
    drawer_height: Mm | None = None

    @property
    def drawer_over(self) -> bool:
        return "+" in self.closing


@dataclass(frozen=True, slots=True)
class FaceOpenings:
    """The openings of a face from the top, or why there is no room for them."""

    openings: tuple[OpeningValues, ...] = ()
    faults: list[tuple[str, str]] = field(default_factory=list)


def openings_of_face(face: Face, width: Mm, height: Mm) -> FaceOpenings:
    """Lay out a plain face in a cabinet of this size."""
    across, up = width - 2 * face.sides, height - face.above - face.below
    faults: list[tuple[str, str]] = []
    if across <= 0:
        faults.append(("sides", "The members at the sides leave no opening between them."))
    drawer = face.drawer_height or Mm(0)
    rest = up - drawer - face.between if face.drawer_over else up
    if rest <= 0:
        place = "drawer_height" if face.drawer_over and up > 0 else "below"
        faults.append((place, "The members above and below leave no opening between them."))
    if faults:
        return FaceOpenings(faults=faults)
    low: OpeningValues = {"x": face.sides, "y": face.below, "width": across, "height": rest}
    low |= _closing(face)
    if not face.drawer_over:
        return FaceOpenings(({**low, "label": "a"},))
    high: OpeningValues = {
        "label": "a",
        "x": face.sides,
        "y": height - face.above - drawer,
        "width": across,
        "height": drawer,
        "closed_by": "drawer",
    }
    return FaceOpenings((high, {**low, "label": "b"}))


@transaction.atomic
def cabinet_enter(
    *,
    job: Job,
    values: CabinetValues,
    face: Face | None,
    at: datetime,
    by: Person | None = None,
) -> Cabinet:
    """Enter a cabinet, and the openings of its face where it has a plain one."""
    cabinet = cabinet_create(job=job, at=at, by=by, **values)
    if face is None:
        return cabinet
    laid = openings_of_face(face, cabinet.width, cabinet.height)
    if laid.faults:
        raise ValidationError(dict(laid.faults))
    for opening in laid.openings:
        opening_create(cabinet=cabinet, at=at, by=by, **opening)
    return cabinet


def _closing(face: Face) -> OpeningValues:
    closing: OpeningValues = {"closed_by": face.closing.rpartition("+")[2]}
    if closing["closed_by"] == "door":
        closing["hinged"] = face.hinged
    if closing["closed_by"] == "drawers":
        closing["count"] = face.count
    return closing
