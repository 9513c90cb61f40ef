"""A job's openings as one goes through them on site: wall by wall, cabinet by cabinet."""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import groupby

from django.urls import reverse

from fronts.figures.sizes import size
from fronts.rules.kitchen import Cabinet, Kitchen, Opening
from fronts.rules.labels import opening_label
from fronts.rules.site_sizes import NAMES, missing
from fronts.selectors.labels import keys_by_label
from shopjobs.models import Job


@dataclass(frozen=True, slots=True)
class Stop:
    """One opening on the way through the kitchen."""

    job: Job
    key: int
    cabinet: Cabinet
    opening: Opening

    @property
    def label(self) -> str:
        """What it is called: `B1.a`."""
        return opening_label(self.cabinet.label, self.opening.label)

    @property
    def planned(self) -> str:
        """Its size on the plan, in the job's unit."""
        return size(self.job.unit, self.opening.width, self.opening.height)

    @property
    def is_measured(self) -> bool:
        """Whether all of its sizes were taken."""
        return not missing(self.opening.measured)

    @property
    def is_begun(self) -> bool:
        """Whether some of its sizes were taken, and some not."""
        return 0 < len(missing(self.opening.measured)) < len(NAMES)

    @property
    def state(self) -> str:
        """How far it is, in words, with what is missing once something is there."""
        wanted = missing(self.opening.measured)
        if not wanted:
            return "measured"
        if not self.is_begun:
            return "not measured"
        taken = len(NAMES) - len(wanted)
        return f"{taken} of {len(NAMES)}; missing: {', '.join(each.says for each in wanted)}"

    @property
    def first(self) -> str:
        """The size to begin with: the first that is missing."""
        return next((each.name for each in missing(self.opening.measured)), NAMES[0])

    @property
    def href(self) -> str:
        """Where it is measured."""
        return self.address(self.first)

    def address(self, name: str) -> str:
        """Where one of its sizes is taken."""
        return reverse("fronts:on-site-size", args=[self.job.pk, self.key, name])


def stops_of(job: Job, kitchen: Kitchen) -> list[Stop]:
    """The openings in the order in which one walks along the walls."""
    keys = keys_by_label(job).openings
    return [
        Stop(job, keys[label], cabinet, opening)
        for wall in kitchen.wall_names
        for cabinet in kitchen.cabinets
        if cabinet.wall == wall
        for opening in cabinet.openings
        if (label := opening_label(cabinet.label, opening.label)) in keys
    ]


def by_wall(stops: Sequence[Stop]) -> list[tuple[str, list[Stop]]]:
    """The openings of each wall."""
    walls = groupby(stops, key=lambda stop: stop.cabinet.wall)
    return [(wall, list(on_it)) for wall, on_it in walls]


def to_continue(stops: Sequence[Stop]) -> Stop | None:
    """Where one left: the first that is begun, else the first that is not; None: all are done."""
    begun = (stop for stop in stops if stop.is_begun)
    return next(begun, None) or next((stop for stop in stops if not stop.is_measured), None)
