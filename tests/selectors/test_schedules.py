"""What is remembered of a job's walls changes nothing but how long a schedule takes."""

from collections.abc import Iterator
from dataclasses import replace
from unittest.mock import patch

import pytest
from hypothesis import given
from hypothesis import strategies as st

from fronts.rules.kitchen import Kitchen
from fronts.rules.practice import inches
from fronts.rules.schedule import schedule
from fronts.rules.worked_walls import work_out
from fronts.selectors import schedules
from fronts.selectors.schedules import schedule_for
from shopjobs.models import Job
from tests.rules.laws import KITCHEN_LAW
from tests.rules.small_kitchens import beside, cabinet, inch, kitchen, opening
from tests.strategies import kitchens
from tests.strategies_of_hardware import equipped_kitchens

JOB, OTHER_JOB = Job(pk=1), Job(pk=2)
FIRST = cabinet(opening())
TWO_WALLS = kitchen(FIRST, beside(FIRST, wall="East", x=inch("0")))


@pytest.fixture(autouse=True)
def _nothing_remembered() -> Iterator[None]:
    with patch.object(schedules, "_jobs", type(schedules._jobs)()):
        yield


@st.composite
def edited(draw: st.DrawFn) -> list[Kitchen]:
    """A kitchen as it is changed step by step, and changed back, and another one of that job."""
    of = draw(kitchens() | equipped_kitchens())
    states = [of]
    for place in draw(st.permutations(range(len(of.cabinets))))[:3]:
        cabinets = list(states[-1].cabinets)
        cabinets[place] = replace(cabinets[place], width=cabinets[place].width + inches(1, 16))
        states.append(replace(states[-1], cabinets=tuple(cabinets)))
    doors = [replace(door, width=door.width + inches(1, 16)) for door in of.doors_on_hand]
    states.append(replace(of, doors_on_hand=tuple(doors)))
    states.append(replace(of, practice=replace(of.practice, filler=inches(1))))
    return [*states, of, draw(kitchens())]


@KITCHEN_LAW
@given(edited())
def test_a_remembered_wall_is_as_one_that_is_worked_out(states: list[Kitchen]) -> None:
    """Whatever was changed, taken back, or is another kitchen altogether."""
    for of in states:
        assert schedule_for(JOB, of) == schedule(of)


def _worked_out(job: Job, of: Kitchen) -> list[set[str]]:
    """The walls that were worked out anew."""
    with patch.object(schedules, "work_out", wraps=work_out) as worked:
        schedule_for(job, of)
    return [{one.wall for one in call.args[0].kitchen.cabinets} for call in worked.call_args_list]


def test_only_the_wall_that_changed_is_worked_out_again() -> None:
    """And none where nothing did; another job knows nothing of it."""
    wider = replace(FIRST, width=FIRST.width + inch("1"))
    changed = replace(TWO_WALLS, cabinets=(wider, *TWO_WALLS.cabinets[1:]))

    assert _worked_out(JOB, TWO_WALLS) == [{"North"}, {"East"}]
    assert _worked_out(JOB, changed) == [{"North"}]
    assert _worked_out(JOB, TWO_WALLS) == []
    assert _worked_out(OTHER_JOB, TWO_WALLS) == [{"North"}, {"East"}]


def test_the_jobs_looked_at_last_are_remembered() -> None:
    """The one that nobody looked at for longest makes room."""
    jobs = [Job(pk=number) for number in range(1, schedules.MOST_JOBS + 2)]
    for job in jobs:
        schedule_for(job, TWO_WALLS)

    assert _worked_out(jobs[-1], TWO_WALLS) == []
    assert _worked_out(jobs[0], TWO_WALLS) == [{"North"}, {"East"}]
