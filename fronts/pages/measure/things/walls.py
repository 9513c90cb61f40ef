"""Walls: how long each is, and how it ends."""

from collections.abc import Iterator
from typing import Any

from fronts import models
from fronts.models import Cabinet
from fronts.pages.measure.forms.wall_choice import offer_walls
from fronts.pages.measure.things.thing_page import ThingForm, ThingPage, Words
from fronts.pages.shared.kitchen_form import Group, When
from fronts.rules.kinds import SIDES
from fronts.rules.lengths import show
from fronts.rules.thing_kinds import CORNERS, WALL_ENDS
from fronts.rules.wall_facts import Wall
from fronts.selectors.kitchens import walls_of
from shopjobs.models import Job

_ENDS = SIDES[:2]


class WallForm(ThingForm):
    """A wall by the name that its cabinets say."""

    facts = Wall
    groups = (
        Group("", ("label", "length"), kind="cells"),
        *(
            Group(
                f"Its {end} end",
                (f"{end}_corner", f"{end}_wall", f"{end}_angle"),
                kind="cells wide",
            )
            for end in _ENDS
        ),
    )

    used_when = {
        f"{end}_{name}": When(f"{end}_corner", CORNERS)
        for end in _ENDS
        for name in ("wall", "angle")
    }


def _words(wall: models.Wall, unit: str) -> Words:
    long = "not measured" if wall.length is None else f"{show(wall.length, unit)} long"
    return Words("", long, tuple(_ends(wall)))


def _ends(wall: models.Wall) -> Iterator[str]:
    for end in _ENDS:
        corner = getattr(wall, f"{end}_corner")
        if corner:
            meets = f" with {getattr(wall, f'{end}_wall')}" if corner in CORNERS else ""
            yield f"{end} end {WALL_ENDS[corner].lower()}{meets}"


def _next(job: Job) -> dict[str, object]:
    """A wall that cabinets stand on and nobody has measured yet."""
    measured = models.Wall.objects.filter(job=job).values("label")
    cabinets = Cabinet.objects.filter(job=job).exclude(wall__in=measured)
    first = cabinets.order_by("position", "pk").values_list("wall", flat=True).first()
    return {"label": first} if first else {}


def _settle(form: ThingForm, job: Job, row: Any) -> None:
    """A corner is with another wall of the job."""

    def others() -> list[str]:
        return [wall for wall in walls_of(job) if row is None or wall != row.label]

    offer_walls(form, others, *(f"{end}_wall" for end in _ENDS), empty="none yet")


WALLS = ThingPage(
    form=WallForm,
    words=_words,
    letter="Wall ",
    none="None is measured. A run that is longer than its wall is found once the wall has a "
    "length.",
    offers=_next,
    settle=_settle,
)
