"""Going through the hardware list, line by line, while the kitchen may change."""

import pytest
from django.core.exceptions import ValidationError

from fronts.models import OrderCheck
from fronts.selectors.order_lists import items_known
from fronts.selectors.schedules import schedule_of
from fronts.services.order_lists import order_line_note, order_line_uncheck
from shopjobs.models import Job, Person
from tests.factories import HINGES, NOW, BoxFactory, CabinetFactory, OpeningFactory, overlaid
from tests.ordering import line_checked


@pytest.fixture
def kitchen_job(job: Job) -> Job:
    """A job with one door."""
    overlaid(job)
    OpeningFactory.create(cabinet=CabinetFactory.create(job=job))
    return job


def needs_of(job: Job) -> dict[str, int]:
    """What the job needs now, by item."""
    return {line.item: line.need for line in schedule_of(job).hardware}


def check(job: Job, item: str, seen: int, by: Person) -> OrderCheck:
    """Check a line as it was seen."""
    return line_checked(job, item, by, seen=seen)


def add_a_drawer(job: Job) -> None:
    """Another cabinet, whose drawer needs what no door does."""
    cabinet = CabinetFactory.create(job=job)
    BoxFactory.create(opening=OpeningFactory.create(cabinet=cabinet, closed_by="drawer"))


def test_a_line_is_checked_as_it_was_seen(kitchen_job: Job, office: Person) -> None:
    """With the need that the person saw; before that nothing is known."""
    assert items_known(kitchen_job) is None

    made = check(kitchen_job, HINGES, 2, office)

    assert (made.need, made.checked_by) == (2, office)
    assert items_known(kitchen_job) == frozenset(needs_of(kitchen_job))


@pytest.mark.parametrize(
    ("item", "seen", "words"),
    [(HINGES, 1, f"it was 1 × {HINGES} when you looked, now it is 2"),
     (HINGES, 3, f"it was 3 × {HINGES} when you looked, now it is 2"),
     ("gold leaf", 2, "gold leaf is no longer needed")],
)  # fmt: skip
def test_what_has_changed_is_not_checked(
    item: str, seen: int, words: str, kitchen_job: Job, office: Person
) -> None:
    """The person looks again; no mark is left."""
    with pytest.raises(ValidationError, match=words):
        check(kitchen_job, item, seen, office)

    assert not OrderCheck.objects.exists()
    assert items_known(kitchen_job) is None


def test_what_came_after_the_list_was_begun_is_new_until_checked(
    kitchen_job: Job, office: Person
) -> None:
    """Checking one new item makes that one known, and no other."""
    begun = needs_of(kitchen_job)
    check(kitchen_job, HINGES, 2, office)
    add_a_drawer(kitchen_job)
    new = sorted(needs_of(kitchen_job).keys() - begun.keys())
    assert len(new) > 1

    check(kitchen_job, new[0], needs_of(kitchen_job)[new[0]], office)
    check(kitchen_job, new[0], needs_of(kitchen_job)[new[0]], office)

    assert items_known(kitchen_job) == frozenset([*begun, new[0]])


def test_without_any_mark_the_list_begins_anew(kitchen_job: Job, office: Person) -> None:
    """Not while one mark is left."""
    screw = next(item for item in needs_of(kitchen_job) if item != HINGES)
    check(kitchen_job, HINGES, 2, office)
    check(kitchen_job, screw, needs_of(kitchen_job)[screw], office)

    order_line_uncheck(job=kitchen_job, item=HINGES, by=office, at=NOW)
    assert items_known(kitchen_job) is not None

    order_line_uncheck(job=kitchen_job, item=screw, by=office, at=NOW)
    assert items_known(kitchen_job) is None


def test_without_check_and_note_nothing_is_left_of_a_line(kitchen_job: Job, office: Person) -> None:
    """A note that is taken off again leaves the list as nobody began it; a check stays."""

    def note(words: str) -> None:
        order_line_note(
            job=kitchen_job, schedule=schedule_of(kitchen_job), item=HINGES, note=words,
            by=office, at=NOW,
        )  # fmt: skip

    note("brass ones")
    assert items_known(kitchen_job) is not None
    note("")
    assert not OrderCheck.objects.exists()
    assert items_known(kitchen_job) is None

    check(kitchen_job, HINGES, 2, office)
    note("brass ones")
    note("")
    assert not OrderCheck.objects.get().open


def test_two_jobs_go_through_their_own_lists(kitchen_job: Job, office: Person) -> None:
    """What is checked on one says nothing of the other."""
    other = Job.objects.create(shop=kitchen_job.shop, number="K-2")
    check(kitchen_job, HINGES, 2, office)

    assert items_known(other) is None
