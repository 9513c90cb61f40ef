"""The things of a job's kitchen; what belongs to another job does not exist."""

from django.db.models import Prefetch, QuerySet, prefetch_related_objects

from fronts.models import Box, Cabinet, DoorOnHand, FitRecord, Opening
from fronts.models.standard import STANDARD_FIELDS
from fronts.rules.results import Schedule
from fronts.rules.schedule import schedule
from fronts.snapshot import kitchen_of
from shopjobs.models import Job

IN_ORDER = ("position", "pk")
_SAID_BY_CABINET = tuple(f"cabinet__{name}" for name in STANDARD_FIELDS)
_BESIDE_ITS_LABEL = tuple(
    f"front_door__{field.name}"
    for field in DoorOnHand._meta.concrete_fields
    if field.name not in ("id", "job", "label")
)


def cabinets_of(job: Job) -> QuerySet[Cabinet]:
    """The job's cabinets in their order, with their openings and boxes at hand."""
    return Cabinet.objects.filter(job=job).order_by(*IN_ORDER).prefetch_related(*_inside())


def with_openings(cabinet: Cabinet) -> Cabinet:
    """The cabinet with its openings and boxes at hand, as `cabinets_of` has it."""
    prefetch_related_objects([cabinet], *_inside())
    return cabinet


def _inside() -> "tuple[Prefetch[str], Prefetch[str]]":
    """Openings with the label of the door that they name, and their boxes."""
    openings = Opening.objects.order_by(*IN_ORDER).select_related("front_door")
    boxes = Box.objects.order_by("index")
    return (
        Prefetch("openings", openings.defer(*_BESIDE_ITS_LABEL)),
        Prefetch("openings__boxes", boxes),
    )


def labelled(job: Job) -> tuple[list[Cabinet], list[DoorOnHand]]:
    """The job's cabinets and doors by their labels alone, openings with what closes them."""
    openings = Opening.objects.order_by(*IN_ORDER).only("cabinet", "label", "closed_by", "count")
    cabinets = Cabinet.objects.filter(job=job).order_by(*IN_ORDER).only("label")
    doors = DoorOnHand.objects.filter(job=job).order_by(*IN_ORDER).only("label")
    return list(cabinets.prefetch_related(Prefetch("openings", openings))), list(doors)


def cabinet_of(job: Job, cabinet_id: int) -> Cabinet:
    """One cabinet of the job."""
    cabinet = Cabinet.objects.get(job=job, pk=cabinet_id)
    cabinet.job = job
    return cabinet


def openings_of(cabinet: Cabinet) -> QuerySet[Opening]:
    """The cabinet's openings in their order."""
    return Opening.objects.filter(cabinet=cabinet).order_by(*IN_ORDER)


def opening_of(job: Job, opening_id: int) -> Opening:
    """One opening of the job, with its cabinet and the label of the door that it names.

    What the cabinet says of the standard is left where it is.
    """
    openings = Opening.objects.select_related("cabinet", "front_door")
    opening = openings.defer(*_SAID_BY_CABINET, *_BESIDE_ITS_LABEL).get(
        cabinet__job=job, pk=opening_id
    )
    opening.cabinet.job = job
    return opening


def opening_labelled(job: Job, cabinet: str, opening: str) -> Opening | None:
    """The opening that a finding names by its labels, or None where it is gone."""
    openings = Opening.objects.select_related("cabinet")
    return openings.filter(cabinet__job=job, cabinet__label=cabinet, label=opening).first()


def boxes_of(opening: Opening) -> dict[int, Box]:
    """The opening's boxes by the front that they stand behind; the opening has them at hand."""
    prefetch_related_objects([opening], Prefetch("boxes", Box.objects.order_by("index")))
    return {box.index: box for box in opening.boxes.all()}


def doors_of(job: Job) -> QuerySet[DoorOnHand]:
    """The job's doors on hand in their order, with their bores at hand."""
    doors = DoorOnHand.objects.filter(job=job).order_by(*IN_ORDER)
    return doors.prefetch_related("hinge_bores")


def door_of(job: Job, door_id: int) -> DoorOnHand:
    """One door on hand of the job."""
    door = DoorOnHand.objects.get(job=job, pk=door_id)
    door.job = job
    return door


def schedule_of(job: Job) -> Schedule:
    """The job's schedule as of now."""
    return schedule(kitchen_of(job))


def fit_records_of(job: Job) -> dict[str, FitRecord]:
    """The latest record of each front that was fitted, by its label."""
    records = FitRecord.objects.filter(job=job).select_related("fitted_by")
    return {each.front: each for each in records.order_by("fitted_at", "pk")}
