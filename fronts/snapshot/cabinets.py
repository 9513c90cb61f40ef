"""The cabinets of a job with their openings, fronts and boxes."""

from collections.abc import Iterator, Mapping, Sequence

from django.db.models import Model, Prefetch, QuerySet, prefetch_related_objects

from fronts import models
from fronts.facts.rows import from_row
from fronts.rules.kitchen import CHOOSE, Box, Cabinet, FrontFacts, Opening, ShelfPins
from fronts.snapshot.grouping import grouped
from fronts.snapshot.standards import standard_of
from shopjobs.models import Job

IN_ORDER = ("position", "pk")


def cabinets_of(job: Job, doors: Mapping[int, str]) -> tuple[Cabinet, ...]:
    """Every cabinet of the job, in a fixed number of queries; `doors` are labels by key."""
    return _assembled(models.Cabinet.objects.filter(job=job), "cabinet__job", job, doors)


def cabinet_snapshot(cabinet: models.Cabinet) -> Cabinet:
    """One cabinet with all that is in it."""
    doors = dict(models.DoorOnHand.objects.filter(job=cabinet.job_id).values_list("pk", "label"))
    alone = models.Cabinet.objects.filter(pk=cabinet.pk)
    return _assembled(alone, "cabinet", cabinet, doors)[0]


def _assembled(
    cabinets: QuerySet[models.Cabinet], way: str, owner: Model, doors: Mapping[int, str]
) -> tuple[Cabinet, ...]:
    """The cabinets with what is in them; `way` leads from an opening to what owns them all."""
    openings = models.Opening.objects.filter(**{way: owner})
    fronts = models.Front.objects.filter(**{f"opening__{way}": owner})
    boxes = models.Box.objects.filter(**{f"front__opening__{way}": owner})
    pins = models.ShelfPins.objects.filter(**{f"box__front__opening__{way}": owner})
    pins_of = grouped(pins.order_by(*IN_ORDER), "box_id")
    box_of = {box.front_id: box_facts(box, pins_of[box.pk]) for box in boxes}
    fronts_of = grouped(fronts.order_by("position"), "opening_id")
    openings_of = grouped(openings.order_by(*IN_ORDER), "cabinet_id")

    def inside(cabinet: models.Cabinet) -> Iterator[Opening]:
        for opening in openings_of[cabinet.pk]:
            yield opening_facts(
                opening,
                tuple(
                    front_facts(front, doors.get(front.door_id or 0), box_of.get(front.pk))
                    for front in fronts_of[opening.pk]
                ),
            )

    return tuple(
        cabinet_facts(cabinet, tuple(inside(cabinet))) for cabinet in cabinets.order_by(*IN_ORDER)
    )


def opening_at_hand(opening: models.Opening) -> Opening:
    """One opening whose fronts, with their doors and boxes, have been fetched with it."""
    rows = list(opening.fronts.all())
    boxes = [front.box for front in rows if hasattr(front, "box")]
    pins = models.ShelfPins.objects.order_by(*IN_ORDER)
    prefetch_related_objects(boxes, Prefetch("shelf_pins", pins))
    box_of = {box.front_id: box_facts(box, list(box.shelf_pins.all())) for box in boxes}
    return opening_facts(
        opening,
        tuple(
            front_facts(front, front.door.label if front.door else None, box_of.get(front.pk))
            for front in rows
        ),
    )


def cabinet_facts(row: models.Cabinet, openings: tuple[Opening, ...] = ()) -> Cabinet:
    """One cabinet as it was entered."""
    return from_row(Cabinet, row, openings=openings, standard=standard_of(row))


def opening_facts(row: models.Opening, fronts: tuple[FrontFacts, ...]) -> Opening:
    """One opening as it was entered."""
    return from_row(Opening, row, fronts=fronts, standard=standard_of(row))


def front_facts(row: models.Front, door: str | None, box: Box | None) -> FrontFacts:
    """What is decided about one front; `door` is the label of the door that it names."""
    return from_row(FrontFacts, row, door_on_hand=CHOOSE if row.choose else door, box=box)


def box_facts(row: models.Box, pins: Sequence[models.ShelfPins]) -> Box:
    """One box with its rows of shelf-pin holes."""
    return from_row(Box, row, shelf_pins=tuple(from_row(ShelfPins, pin) for pin in pins))
