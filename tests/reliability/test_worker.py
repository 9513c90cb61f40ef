"""Workers as they are run, killed at a bad moment: a real process, on the tests' own database."""

import os
import random
import signal
from collections.abc import Iterator

import pytest
from django_tasks import TaskResultStatus
from django_tasks_db.models import DBTaskResult

from fronts.cutting.model import Request, StockSize, WantedPart
from fronts.models import CutPlan
from fronts.rules.lengths import INCH, Mm
from fronts.services.cutting import Asked, plan_cancel
from shopjobs.models import BackgroundTask, Job, Person, Worker
from shopjobs.selectors import workers_alive
from tests.factories import NOW, JobFactory
from tests.queue_work import in_queue, wait_until, workers
from tests.services.test_cutting import STICKS, begin

pytestmark = [pytest.mark.django_db(transaction=True), pytest.mark.slow, pytest.mark.thorough]
MANY_PARTS = 120
_sizes = random.Random(7)
LONG = Request(
    kerf=INCH / 8,
    trim=INCH / 4,
    stock=(StockSize("sheet", 96 * INCH, 48 * INCH, None, "length"),),
    parts=tuple(
        WantedPart(f"P{n}", Mm(_sizes.randrange(300, 900)), Mm(_sizes.randrange(150, 600)))
        for n in range(MANY_PARTS)
    ),
)
"""Takes seconds: time to be killed in the middle of it."""


@pytest.fixture(autouse=True)
def queue() -> Iterator[None]:
    """Plans wait in the queue until a worker takes them."""
    with in_queue:
        yield


def begin_long(job: Job, by: Person) -> CutPlan:
    """A plan that takes a while: sticks first, then many parts from sheets."""
    asked = [Asked("k1", "maple", STICKS), Asked("k2", "birch", LONG)]
    return begin(job, by, asked=asked, seconds=5)


def in_the_middle(plan: CutPlan) -> bool:
    """Whether the sticks are done and a worker is at the sheets."""
    task = plan.task
    assert task is not None
    task.refresh_from_db()
    running = DBTaskResult.objects.filter(status=TaskResultStatus.RUNNING)
    return task.done == 1 and running.filter(pk=task.result_id).exists()


def has_ended(plan: CutPlan) -> bool:
    """Whether the plan is no longer at work."""
    plan.refresh_from_db()
    return plan.state != "working"


def test_a_worker_killed_in_the_middle_costs_nothing(job: Job, office: Person) -> None:
    """It is noticed, replaced, and its piece made once more; the sticks are not made again."""
    with workers():
        begun = begin_long(job, office)
        wait_until(lambda: in_the_middle(begun))
        os.kill(Worker.objects.get().pid, signal.SIGKILL)
        wait_until(lambda: BackgroundTask.objects.get().tries == 1, seconds=20)
        wait_until(lambda: has_ended(begun))

    assert (begun.state, len(begun.found)) == ("done", 2)
    assert BackgroundTask.objects.get().run == 3


def test_all_of_them_killed_the_next_start_goes_on(job: Job, office: Person) -> None:
    """As after the machine lost its power."""
    with workers() as started:
        begun = begin_long(job, office)
        wait_until(lambda: in_the_middle(begun))
        killed = Worker.objects.get().name
        os.kill(started.pid, signal.SIGKILL)
        os.kill(Worker.objects.get().pid, signal.SIGKILL)
        started.wait()
    with workers():
        wait_until(lambda: has_ended(begun))

    assert (begun.state, len(begun.found)) == ("done", 2)
    assert killed not in workers_alive().values_list("name", flat=True)


def test_a_worker_that_is_stopped_gives_back_what_it_was_at(job: Job, office: Person) -> None:
    """In seconds, and without a trace of failure; it signs off."""
    with workers() as started:
        begun = begin_long(job, office)
        wait_until(lambda: in_the_middle(begun))
        started.terminate()
        started.wait(10)

        task = BackgroundTask.objects.get()
        assert (task.state, task.done, task.tries) == ("at work", 1, 0)
        assert DBTaskResult.objects.get(pk=task.result_id).status == TaskResultStatus.READY
        assert not Worker.objects.exists()


def test_what_is_cancelled_leaves_its_worker_to_the_next(job: Job, office: Person) -> None:
    """The worker stops in the middle of it, and takes what another asked for."""
    with workers():
        begun = begin_long(job, office)
        wait_until(lambda: in_the_middle(begun))
        plan_cancel(plan=begun, by=office, at=NOW)
        other = begin(JobFactory.create(shop=job.shop), office, asked=[Asked("k", "maple", STICKS)])
        wait_until(lambda: has_ended(other), seconds=10)

        assert other.state == "done"
        assert Worker.objects.count() == 1
    begun.refresh_from_db()
    assert (begun.state, len(begun.found)) == ("failed", 1)


def test_a_piece_that_overruns_its_time_is_stopped(job: Job, office: Person) -> None:
    """The plan says at which material; what was there before it stays."""
    begun = begin_long(job, office)
    BackgroundTask.objects.update(piece_seconds=2)
    with workers():
        wait_until(lambda: has_ended(begun))

    assert (begun.state, len(begun.found)) == ("failed", 1)
    assert begun.fault.startswith("birch: Nothing came of it within its time")
