"""Small parts of a kitchen, in inches, each made to fit what it is part of."""

from string import ascii_lowercase
from typing import Any

from factory.declarations import LazyAttribute, SubFactory
from factory.django import DjangoModelFactory

from fronts.models import Box, Cabinet, DoorOnHand, Opening, ShelfPins
from fronts.rules.practice import inches
from shopjobs.models import Job
from tests.factories.made import NOW, ServedFactory
from tests.factories.shops import JobFactory
from tests.saying import box_set, cabinet_create, door_create, opening_create, standard_set

HINGES = "hinge H-LAP, overlay"
"""What a list of hardware calls the hinges of an overlay door in a shop that has entered none."""
STILE = inches(3, 2)
"""How wide a cabinet's face frame is around its opening."""


class CabinetFactory(ServedFactory[Cabinet]):
    """A face-frame base cabinet, 18 in wide, at the end of its wall."""

    service = cabinet_create
    job = SubFactory(JobFactory)
    label = LazyAttribute(lambda made: f"B{Cabinet.objects.filter(job=made.job).count() + 1}")
    kind = "base"
    build = "face-frame"  # type: ignore[assignment] # a column; the class keeps its own
    wall = "North"
    x = LazyAttribute(lambda made: _end_of_wall(made))
    y = inches(4)
    width = inches(18)
    height = inches(61, 2)
    depth = inches(24)

    class Meta:
        model = Cabinet


class OpeningFactory(ServedFactory[Opening]):
    """An opening that reaches to the face frame's right and top, behind a door hung on the left."""

    service = opening_create
    cabinet = SubFactory(CabinetFactory)
    label = LazyAttribute(
        lambda made: ascii_lowercase[Opening.objects.filter(cabinet=made.cabinet).count()]
    )
    x = STILE
    y = STILE
    width = LazyAttribute(lambda made: made.cabinet.width - made.x - STILE)
    height = LazyAttribute(lambda made: made.cabinet.height - made.y - STILE)
    closed_by = "door"
    hinged = LazyAttribute(lambda made: "left" if made.closed_by == "door" else "")

    class Meta:
        model = Opening


class BoxFactory(ServedFactory[Box]):
    """A box on side slides that the opening has room for, 6 in high at most."""

    service = box_set
    opening = SubFactory(OpeningFactory, closed_by="drawer")
    index = 0
    width = LazyAttribute(lambda made: made.opening.width - inches(1))
    height = LazyAttribute(lambda made: min(inches(6), made.opening.height - inches(2)))
    depth = LazyAttribute(lambda made: made.opening.cabinet.depth - inches(3))
    front_thickness = inches(1, 2)
    rise = inches(1, 2)
    slide = "side"

    class Meta:
        model = Box


class ShelfPinsFactory(DjangoModelFactory[ShelfPins]):
    """One more row of shelf-pin holes in a box front."""

    box = SubFactory(BoxFactory)
    position = LazyAttribute(lambda made: ShelfPins.objects.filter(box=made.box).count())
    x = inches(1)
    y = inches(1)
    pitch = inches(1)
    count = 4
    diameter = inches(1, 4)

    class Meta:
        model = ShelfPins


class DoorOnHandFactory(ServedFactory[DoorOnHand]):
    """A slab door on hand, 16 in × 28 1/2 in."""

    service = door_create
    job = SubFactory(JobFactory)
    label = LazyAttribute(lambda made: f"D{DoorOnHand.objects.filter(job=made.job).count() + 1}")
    width = inches(16)
    height = inches(57, 2)
    thickness = inches(3, 4)

    class Meta:
        model = DoorOnHand


def overlaid(job: Job) -> None:
    """The job's fronts lap half an inch all round."""
    half = inches(1, 2)
    sides = ("overlay_left", "overlay_right", "overlay_top", "overlay_bottom")
    standard_set(owner=job, at=NOW, **dict.fromkeys(sides, half))  # type: ignore[arg-type]


def door_and_drawer(job: Job, **door: Any) -> Cabinet:
    """A cabinet with a door 19 in high, on two hinges, and a drawer `b` with its box above it."""
    cabinet = CabinetFactory.create(job=job)
    OpeningFactory.create(cabinet=cabinet, height=inches(19), **door)
    drawer = OpeningFactory.create(cabinet=cabinet, y=inches(22), closed_by="drawer")
    BoxFactory.create(opening=drawer)
    return cabinet


def _end_of_wall(made: Any) -> Any:
    row = Cabinet.objects.filter(job=made.job, wall=made.wall)
    return max((each.x + each.width for each in row if each.x is not None), default=inches(0))
