"""The things of a job's kitchen; what belongs to another job does not exist."""

from collections.abc import Iterable
from typing import Any

from django.db.models import Prefetch, QuerySet, prefetch_related_objects

from fronts.facts.rows import column_names
from fronts.models import Cabinet, DoorOnHand, Front, Opening, Thing, Wall
from fronts.models.kept import Kept, order_of, table_of
from fronts.rules.facts import rows_of
from fronts.rules.kitchen import BESIDE_CABINETS, Kitchen
from fronts.rules.labels import numbered
from fronts.rules.runs import stood
from fronts.rules.standard_keys import Standard
from fronts.snapshot import kitchen_of
from shopjobs.models import Job

IN_ORDER = ("position", "pk")
_STANDARD = tuple(column_names(Standard).values())
_SAID_BY_CABINET = tuple(f"cabinet__{name}" for name in _STANDARD)
_BESIDE_ITS_LABEL = tuple(
    f"door__{field.name}"
    for field in DoorOnHand._meta.concrete_fields
    if field.name not in ("id", "job", "label")
)


def cabinets_of(job: Job) -> QuerySet[Cabinet]:
    """The job's cabinets in their order, with their openings, fronts and boxes at hand."""
    return Cabinet.objects.filter(job=job).order_by(*IN_ORDER).prefetch_related(*_inside())


def _inside() -> "tuple[Prefetch[str], Prefetch[str]]":
    """Openings, and their fronts with their boxes and the labels of the doors that they name."""
    openings = Opening.objects.order_by(*IN_ORDER)
    return Prefetch("openings", openings), Prefetch("openings__fronts", _fronts())


def _fronts() -> QuerySet[Front]:
    fronts = Front.objects.order_by("position").select_related("door", "box", "box_to_make")
    return fronts.defer(*_BESIDE_ITS_LABEL)


def things_by_label(job: Job) -> dict[type, list[tuple[str, int]]]:
    """Labels and keys of the things that the job has beside its cabinets, by their kind."""
    return {
        kind: list(things_of(job, table_of(kind)).values_list("label", "pk"))
        for kind in BESIDE_CABINETS
    }


def cabinet_of(job: Job, cabinet_id: int) -> Cabinet:
    """One cabinet of the job."""
    cabinet = Cabinet.objects.get(job=job, pk=cabinet_id)
    cabinet.job = job
    return cabinet


def openings_of(job: Job, cabinet_id: int) -> QuerySet[Opening]:
    """The openings of one cabinet of the job, in their order."""
    rows = Opening.objects.filter(cabinet__job=job, cabinet=cabinet_id)
    return rows.order_by(*IN_ORDER)


def opening_of(job: Job, opening_id: int) -> Opening:
    """One opening of the job, with its cabinet and its fronts at hand.

    What the cabinet says of the standard is left where it is.
    """
    openings = Opening.objects.select_related("cabinet").defer(*_SAID_BY_CABINET)
    opening = openings.prefetch_related(Prefetch("fronts", _fronts())).get(
        cabinet__job=job, pk=opening_id
    )
    opening.cabinet.job = job
    return opening


def with_fronts(opening: Opening) -> Opening:
    """The opening with its fronts at hand, fetched where they are not."""
    prefetch_related_objects([opening], Prefetch("fronts", _fronts()))
    return opening


def front_of(job: Job, opening_id: int, index: int) -> Front:
    """Front `index` of an opening, from the left or the top, with the opening's others at hand."""
    opening = opening_of(job, opening_id)
    front = next((front for front in opening.fronts.all() if front.position == index), None)
    if front is None:
        raise Front.DoesNotExist
    front.opening = opening
    return front


def things_of(job: Job, table: type[Kept]) -> QuerySet[Any]:
    """The job's things of one table in their order, with what is in them at hand."""
    rows = table._default_manager.filter(**{table.owner: job}).order_by(*order_of(table))
    return rows.prefetch_related(*(fact.name for fact, _ in rows_of(table.facts)))


def thing_of(job: Job, table: type[Kept], key: int) -> Any:
    """One thing of the job, with what is in it at hand."""
    thing = things_of(job, table).get(pk=key)
    thing.job = job
    return thing


def placed_kitchen_of(job: Job) -> Kitchen:
    """The job's kitchen as of now, each cabinet in its place: what is shown and reckoned with.

    What is written to a file is `snapshot.kitchen_of`, which leaves places to the runs.
    """
    return stood(kitchen_of(job))


def front_keys_of(job: Job) -> dict[str, int]:
    """The keys of the job's fronts by what they are called now."""
    rows = Front.objects.filter(opening__cabinet__job=job).order_by("position")
    of_opening: dict[str, list[int]] = {}
    for cabinet, opening, key in rows.values_list(
        "opening__cabinet__label", "opening__label", "pk"
    ):
        of_opening.setdefault(f"{cabinet}.{opening}", []).append(key)
    return {
        label: key
        for opening, keys in of_opening.items()
        for label, key in zip(numbered(opening, len(keys)), keys, strict=True)
    }


def fronts_in(job: Job, cabinets: Iterable[int]) -> list[Front]:
    """All fronts in these cabinets of the job, each with its opening and the others at hand."""
    openings = Opening.objects.filter(cabinet__job=job, cabinet__in=cabinets)
    found: list[Front] = []
    rows = openings.select_related("cabinet").prefetch_related(Prefetch("fronts", _fronts()))
    for opening in rows.order_by("cabinet__position", "cabinet__pk", *IN_ORDER):
        opening.cabinet.job = job
        for front in opening.fronts.all():
            front.opening = opening
            found.append(front)
    return found


def walls_of(job: Job) -> list[str]:
    """The names of the job's walls: those that were measured, then those that anything is on."""
    measured = Wall.objects.filter(job=job).order_by(*IN_ORDER).values_list("label", flat=True)
    standing = (
        table._default_manager.filter(job=job).order_by(*IN_ORDER).values_list("wall", flat=True)
        for table in (Cabinet, Thing)
    )
    return list(dict.fromkeys([*measured, *(wall for rows in standing for wall in rows)]))
