"""The schedules of jobs. Walls that are as they were a moment ago are not worked out again.

What is remembered is what `work_out` said of a group of walls; it is used for walls that equal
those in every fact, and so can't be out of date. It lives in one process, for the jobs that
were looked at last, and nowhere else.
"""

from collections import OrderedDict, defaultdict, deque
from threading import Lock

from fronts.rules.kitchen import Kitchen
from fronts.rules.limits import MOST_WALLS
from fronts.rules.results import Schedule
from fronts.rules.schedule import schedule
from fronts.rules.wall_groups import WallGroup
from fronts.rules.worked_walls import WorkedWalls, work_out
from fronts.selectors.kitchens import placed_kitchen_of
from shopjobs.models import Job

MOST_JOBS = 8
LATEST = 2
"""What is remembered of each: as it is kept, and as somebody is just typing it."""


class _Remembered:
    """What came of the walls of one job, and of all of it, when they were last worked out."""

    def __init__(self) -> None:
        self._walls: dict[str, deque[tuple[WallGroup, WorkedWalls]]] = defaultdict(
            lambda: deque(maxlen=LATEST)
        )
        self._whole: deque[tuple[Kitchen, Schedule]] = deque(maxlen=LATEST)

    def schedule(self, kitchen: Kitchen) -> Schedule:
        """The kitchen's schedule, reckoned anew where it has changed."""
        for known, found in tuple(self._whole):
            if known == kitchen:
                return found
        found = schedule(kitchen, self._work_out)
        self._whole.appendleft((kitchen, found))
        return found

    def _work_out(self, group: WallGroup) -> WorkedWalls:
        latest = self._walls[next(iter(group.kitchen.wall_names), "")]
        while len(self._walls) > MOST_WALLS:
            self._walls.pop(next(iter(self._walls)))
        for known, worked in tuple(latest):
            if known == group:
                return worked
        worked = work_out(group)
        latest.appendleft((group, worked))
        return worked


_jobs: OrderedDict[int, _Remembered] = OrderedDict()
_lock = Lock()


def schedule_for(job: Job, kitchen: Kitchen) -> Schedule:
    """What follows from a kitchen that is the job's, or is much like it."""
    with _lock:
        remembered = _jobs.setdefault(job.pk, _Remembered())
        _jobs.move_to_end(job.pk)
        while len(_jobs) > MOST_JOBS:
            _jobs.popitem(last=False)
    return remembered.schedule(kitchen)


def worked_out(job: Job) -> tuple[Kitchen, Schedule]:
    """The job's kitchen as of now, with its schedule."""
    kitchen = placed_kitchen_of(job)
    return kitchen, schedule_for(job, kitchen)


def schedule_of(job: Job) -> Schedule:
    """The job's schedule as of now."""
    return worked_out(job)[1]
