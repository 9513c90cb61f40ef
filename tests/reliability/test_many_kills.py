"""Workers killed again and again while two shops have plans made and sheets printed."""

import os
import random
import signal
from collections.abc import Callable, Iterator
from contextlib import suppress

import pytest
from django.test import Client
from django.utils import timezone

from fronts.models import CutPlan, SheetFile, SheetSet
from fronts.sheets.registry import has_fittings_together
from shopjobs.models import BackgroundTask, Job, Person, TaskState, Worker
from tests.factories import JobFactory
from tests.pages.cut.planned import cut_kitchen, make_plan
from tests.queue_work import in_queue, wait_until, workers

pytestmark = [pytest.mark.django_db(transaction=True), pytest.mark.reliability]
SignIn = Callable[[Person], Client]
KILLS = 25
SEED = 8


@pytest.fixture(autouse=True)
def queue() -> Iterator[None]:
    """Long work waits for workers."""
    with in_queue:
        yield


def kill_one(chosen: random.Random) -> None:
    """Kill one of the workers there are, at whatever it is doing."""
    pids = [*Worker.objects.values_list("pid", flat=True)]
    if pids:
        with suppress(ProcessLookupError):
            os.kill(chosen.choice(pids), signal.SIGKILL)


def ask(client: Client, job: Job) -> None:
    """Have a plan made and all sheets printed, where that isn't under way."""
    make_plan(client, job)
    client.post(f"/jobs/{job.pk}/sheets/")


def test_nothing_is_lost_doubled_or_stuck(
    owner: Person, stranger: Person, signed_in: SignIn
) -> None:
    """Each task ends: finished, with each piece once, or failed in words after two losses."""
    chosen = random.Random(SEED)
    theirs: dict[Person, list[Job]] = {}
    for person in (owner, stranger):
        jobs = [JobFactory.create(shop=person.shop, number=f"K-{n}") for n in range(3)]
        theirs[person] = [cut_kitchen(job) for job in jobs]
    with workers(2):
        for person, jobs in theirs.items():
            for job in jobs:
                ask(signed_in(person), job)
        for _ in range(KILLS):
            wait_for = timezone.now()
            seconds = chosen.uniform(0.5, 4)
            wait_until(lambda: (timezone.now() - wait_for).total_seconds() > seconds)  # noqa: B023
            kill_one(chosen)
            for person, jobs in theirs.items():
                ask(signed_in(person), chosen.choice(jobs))
        wait_until(lambda: not BackgroundTask.objects.filter(ended_at=None).exists(), seconds=300)

    _each_ended_in_words()
    for plan in CutPlan.objects.exclude(state="failed"):
        assert (plan.state, len(plan.found)) == ("done", len(plan.asked))
    for sheet_set in SheetSet.objects.filter(task__state=TaskState.DONE):
        files = SheetFile.objects.filter(sheet_set=sheet_set)
        names = [*files.values_list("name", flat=True)]
        together = has_fittings_together(files.values_list("cabinet", flat=True))
        assert len(names) == len(set(names)) == sheet_set.sheets - together
    for person, jobs in theirs.items():
        other = signed_in(stranger if person == owner else owner)
        for job in jobs:
            assert other.get(f"/jobs/{job.pk}/sheets/set/zip/").status_code == 404


def _each_ended_in_words() -> None:
    print(*BackgroundTask.objects.values_list("kind", "state", "fault"), sep="\n")
    for task in BackgroundTask.objects.all():
        if task.state == TaskState.FAILED:
            assert "The worker was stopped twice" in task.fault
        else:
            assert task.state == TaskState.DONE
            assert task.done == task.pieces
    assert BackgroundTask.objects.filter(state=TaskState.DONE).exists()
