"""A cabinet entered together with the openings of its plain face."""

from datetime import datetime

from django.core.exceptions import ValidationError
from django.db import transaction

from fronts.models import Cabinet
from fronts.rules.kitchen import Opening
from fronts.rules.plain_face import FaceError, PlainFace, face_openings
from fronts.services.cabinets import cabinet_create
from fronts.services.openings import opening_create
from fronts.services.values import CabinetValues, OpeningValues
from shopjobs.models import Job, Person


@transaction.atomic
def cabinet_enter(
    *,
    job: Job,
    values: CabinetValues,
    face: PlainFace | None,
    at: datetime,
    by: Person | None = None,
) -> Cabinet:
    """Enter a cabinet, and the openings of its face where it has a plain one."""
    cabinet = cabinet_create(job=job, at=at, by=by, **values)
    if face is None:
        return cabinet
    try:
        openings = face_openings(face, cabinet.width, cabinet.height)
    except FaceError as refused:
        raise ValidationError(dict(refused.faults)) from refused
    for opening in openings:
        opening_create(cabinet=cabinet, at=at, by=by, **_values(opening))
    return cabinet


def _values(opening: Opening) -> OpeningValues:
    return {
        "label": opening.label,
        "x": opening.x,
        "y": opening.y,
        "width": opening.width,
        "height": opening.height,
        "closed_by": opening.closed_by,
        "hinged": opening.hinged or "",
        "count": opening.count,
    }
