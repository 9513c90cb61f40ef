"""The things of a job's kitchen; what belongs to another job does not exist."""

from django.db.models import Prefetch, QuerySet

from fronts.models import Box, Cabinet, DoorOnHand, FitRecord, Opening
from fronts.rules.results import Schedule
from fronts.rules.schedule import schedule
from fronts.snapshot import kitchen_of
from shopjobs.models import Job

IN_ORDER = ("position", "pk")


def cabinets_of(job: Job) -> QuerySet[Cabinet]:
    """The job's cabinets in their order, with their openings and boxes at hand."""
    openings = Opening.objects.order_by(*IN_ORDER).select_related("front_door")
    boxes = Box.objects.order_by("index")
    return (
        Cabinet.objects.filter(job=job)
        .order_by(*IN_ORDER)
        .prefetch_related(Prefetch("openings", openings), Prefetch("openings__boxes", boxes))
    )


def cabinet_of(job: Job, cabinet_id: int) -> Cabinet:
    """One cabinet of the job."""
    cabinet = Cabinet.objects.get(job=job, pk=cabinet_id)
    cabinet.job = job
    return cabinet


def openings_of(cabinet: Cabinet) -> QuerySet[Opening]:
    """The cabinet's openings in their order."""
    return Opening.objects.filter(cabinet=cabinet).order_by(*IN_ORDER)


def opening_of(job: Job, opening_id: int) -> Opening:
    """One opening of the job, with its cabinet and the door that it names."""
    openings = Opening.objects.select_related("cabinet", "front_door")
    opening = openings.get(cabinet__job=job, pk=opening_id)
    opening.cabinet.job = job
    return opening


def opening_labelled(job: Job, cabinet: str, opening: str) -> Opening | None:
    """The opening that a finding names by its labels, or None where it is gone."""
    openings = Opening.objects.select_related("cabinet")
    return openings.filter(cabinet__job=job, cabinet__label=cabinet, label=opening).first()


def boxes_of(opening: Opening) -> dict[int, Box]:
    """The opening's boxes with their shelf pins, by the front that they stand behind."""
    boxes = Box.objects.filter(opening=opening).order_by("index")
    return {box.index: box for box in boxes.prefetch_related("shelf_pins")}


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
