"""Long work of several shops: their places, and what becomes of a piece that is lost."""

from collections.abc import Iterator
from datetime import timedelta

import pytest
from django.db import OperationalError
from django.db.models import F
from django.utils import timezone
from django_tasks_db.models import DBTaskResult

from fronts.models import CutPlan
from fronts.services.cutting import plan_cancel
from shopjobs.models import BackgroundTask, Job, Person, Shop, TaskState, Worker
from shopjobs.selectors import workers_alive
from shopjobs.services.lost_tasks import (
    piece_give_back,
    tasks_reclaim,
    tasks_tidy,
    worker_beat,
    worker_sign_off,
)
from shopjobs.services.refused import Refused
from shopjobs.services.task_pieces import AT_WORK_A_SHOP, piece
from shopjobs.services.tasks import WAITING_A_SHOP
from tests.factories import NOW, JobFactory
from tests.queue_work import in_queue, work_off
from tests.services.test_cutting import begin

pytestmark = pytest.mark.django_db


@pytest.fixture(autouse=True)
def queue() -> Iterator[None]:
    """Plans wait in the queue."""
    with in_queue:
        yield


def jobs(shop: Shop, count: int) -> list[Job]:
    """So many jobs of the shop."""
    return [JobFactory.create(shop=shop, number=f"K-{100 + n}") for n in range(count)]


def states() -> list[str]:
    """The states of all tasks, in the order in which they were asked for."""
    return [*BackgroundTask.objects.order_by("pk").values_list("state", flat=True)]


def taken_by(worker: str) -> BackgroundTask:
    """The task whose piece is the queue's first, which a worker takes and doesn't finish."""
    result = DBTaskResult.objects.ready().first()
    assert result is not None
    result.claim(worker)
    return BackgroundTask.objects.get(result_id=str(result.pk))


def test_a_shop_has_so_many_places_and_the_rest_waits(shop: Shop, office: Person) -> None:
    """Only what has a place is in the queue; one that ends makes room for the next."""
    begun = [begin(job, office) for job in jobs(shop, 4)]
    assert states() == ["at work", "at work", "waiting", "waiting"]
    assert DBTaskResult.objects.count() == AT_WORK_A_SHOP

    plan_cancel(plan=begun[0], by=office, at=NOW)
    assert states() == ["cancelled", "at work", "at work", "waiting"]

    work_off()
    assert states() == ["cancelled", "done", "done", "done"]


def test_nobody_waits_for_anothers_of_the_same_shop(
    shop: Shop, office: Person, installer: Person
) -> None:
    """Who has nothing at work comes in between at once, whatever others of the shop asked for;
    and before the rest of theirs, where a place becomes free."""
    several = jobs(shop, 6)
    first = [begin(job, office) for job in several[:4]]
    begin(several[4], installer)
    assert states() == ["at work", "at work", "waiting", "waiting", "at work"]

    mine = begin(several[5], installer)
    assert states()[5] == "waiting"
    plan_cancel(plan=first[0], by=office, at=NOW)
    assert states() == ["cancelled", "at work", "waiting", "waiting", "at work", "waiting"]
    work_off(AT_WORK_A_SHOP)
    mine.refresh_from_db()
    assert BackgroundTask.objects.get(asked_by=installer, job=several[4]).done == 1


def test_a_shop_is_told_when_all_its_places_are_taken(shop: Shop, office: Person) -> None:
    """Nothing of what was refused is left."""
    for job in jobs(shop, AT_WORK_A_SHOP + WAITING_A_SHOP):
        begin(job, office)

    with pytest.raises(Refused, match="as many as it may have at once"):
        begin(JobFactory.create(shop=shop), office)
    assert CutPlan.objects.count() == AT_WORK_A_SHOP + WAITING_A_SHOP


def test_another_shop_comes_in_between(shop: Shop, office: Person, stranger: Person) -> None:
    """After two pieces of the one it is the other's turn, however much the one asked for."""
    for job in jobs(shop, 5):
        begin(job, office)
    assert stranger.shop is not None
    other = begin(JobFactory.create(shop=stranger.shop), stranger)

    work_off(AT_WORK_A_SHOP + 1)

    other.refresh_from_db()
    assert len(other.found) == 1
    assert CutPlan.objects.filter(job__shop=shop, state="done").count() == 0


def test_a_piece_whose_worker_is_gone_is_tried_once_more(job: Job, office: Person) -> None:
    """What was done before it stays; the plan is finished as if nothing had happened."""
    begun = begin(job, office)
    work_off(1)
    taken_by("gone-1")
    tasks_reclaim(at=NOW)

    task = BackgroundTask.objects.get()
    assert (task.state, task.done, task.tries) == ("at work", 1, 1)
    work_off()
    begun.refresh_from_db()
    assert (begun.state, len(begun.found)) == ("done", 2)


def test_a_piece_that_is_lost_twice_fails_its_task(job: Job, office: Person) -> None:
    """In words, and another can be begun."""
    begun = begin(job, office)
    for worker in ("gone-1", "gone-2"):
        taken_by(worker)
        tasks_reclaim(at=NOW)

    begun.refresh_from_db()
    assert begun.state == "failed"
    assert "The worker was stopped twice" in begun.fault
    assert not DBTaskResult.objects.exists()
    assert begin(job, office, at=NOW + timedelta(hours=1)).state == "working"


def test_the_tries_are_those_of_one_piece(job: Job, office: Person) -> None:
    """A worker that dies once at each piece fails nothing."""
    begun = begin(job, office)
    for _ in range(2):
        taken_by("gone")
        tasks_reclaim(at=NOW)
        work_off(1)

    begun.refresh_from_db()
    assert begun.state == "done"


def test_what_a_live_worker_makes_is_left_to_it(job: Job, office: Person) -> None:
    """And what waits in the queue is left there."""
    begin(job, office)
    tasks_reclaim(at=NOW)
    worker_beat(name="bench-1", host="bench", pid=1)
    task = taken_by("bench-1")

    tasks_reclaim(at=NOW)
    task.refresh_from_db()
    assert (task.run, task.tries) == (1, 0)

    worker_sign_off(host="bench", pid=1)
    tasks_reclaim(at=NOW)
    task.refresh_from_db()
    assert (task.run, task.tries) == (2, 1)


def test_a_worker_that_was_not_seen_for_ten_seconds_is_gone() -> None:
    """By the database's clock."""
    for name, seconds in (("here", 8), ("gone", 12)):
        worker_beat(name=name, host="bench", pid=1)
        earlier = F("seen_at") - timedelta(seconds=seconds)
        Worker.objects.filter(name=name).update(seen_at=earlier)

    assert [worker.name for worker in workers_alive()] == ["here"]


def test_a_worker_that_was_overtaken_changes_nothing(job: Job, office: Person) -> None:
    """It was slow, not dead: what it brings after its piece was given to another is dropped."""
    begun = begin(job, office)
    slow = taken_by("slow")
    tasks_reclaim(at=NOW)

    piece.call(slow.pk, slow.run)

    begun.refresh_from_db()
    assert begun.found == []
    work_off()
    begun.refresh_from_db()
    assert len(begun.found) == 2


def test_a_worker_that_is_told_to_stop_gives_its_piece_back(job: Job, office: Person) -> None:
    """As often as it happens, that is no failure."""
    begun = begin(job, office)
    for _ in range(3):
        task = taken_by("leaving")
        piece_give_back(task.pk, task.run)

    task = BackgroundTask.objects.get()
    assert (task.state, task.tries) == ("at work", 0)
    work_off()
    begun.refresh_from_db()
    assert begun.state == "done"


def test_a_queue_that_was_emptied_is_filled_again(job: Job, office: Person) -> None:
    """A task outlives the library's own table, as often as that is lost."""
    begun = begin(job, office)
    for _ in range(3):
        DBTaskResult.objects.all().delete()
        tasks_reclaim(at=NOW)

    work_off()

    begun.refresh_from_db()
    assert begun.state == "done"


def test_a_piece_that_the_database_held_up_is_tried_once_more(
    job: Job, office: Person, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A lock that could not be had in time is no fault of the plan."""

    def held_up(**given: object) -> None:
        raise OperationalError("canceling statement due to lock timeout")

    begun = begin(job, office)
    with monkeypatch.context() as meanwhile:
        meanwhile.setattr("fronts.tasks.cutting_plan.plan_keep", held_up)
        work_off(1)
    tasks_reclaim(at=NOW)
    task = BackgroundTask.objects.get()
    assert (task.state, task.done, task.tries) == ("at work", 0, 1)

    work_off()
    begun.refresh_from_db()
    assert (begun.state, len(begun.found)) == ("done", 2)


def test_what_ended_goes_after_a_day(job: Job, office: Person) -> None:
    """The plan that came of it stays."""
    begun = begin(job, office)
    work_off()
    now = timezone.now()

    tasks_tidy(at=now + timedelta(hours=23))
    assert states() == [TaskState.DONE]

    tasks_tidy(at=now + timedelta(hours=25))
    assert states() == []
    assert not DBTaskResult.objects.exists()
    begun.refresh_from_db()
    assert (begun.state, begun.task) == ("done", None)
