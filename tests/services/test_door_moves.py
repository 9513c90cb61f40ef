"""Two who move one door at the same time: one does, the other is told."""

from concurrent.futures import ThreadPoolExecutor
from threading import Barrier

import pytest
from django.db import connection

from fronts.models import DoorOnHand
from fronts.rules.free_label import free_label
from fronts.rules.limits import LONGEST_LABEL
from fronts.services.door_moves import door_move
from shopjobs.models import Job
from shopjobs.services.refused import Refused
from tests.factories import NOW, DoorOnHandFactory, JobFactory


@pytest.mark.django_db(transaction=True)
def test_one_of_two_who_move_a_door_at_once_is_told() -> None:
    """It stands in one job afterwards, and who was late reads in which."""
    job = JobFactory.create()
    others = [JobFactory.create(shop=job.shop) for _ in range(2)]
    door = DoorOnHandFactory.create(job=job)
    start = Barrier(2)

    def move(to: Job) -> str:
        row = DoorOnHand.objects.get(pk=door.pk)
        try:
            start.wait(30)
            door_move(row=row, seen_in=job.pk, to=to, by=None, at=NOW)
        except Refused as refused:
            return refused.message
        finally:
            connection.close()
        return ""

    with ThreadPoolExecutor(2) as pool:
        said = list(pool.map(move, others))
    door.refresh_from_db()
    assert sorted(map(bool, said)) == [False, True]
    assert max(said) == (
        f"Somebody moved it meanwhile: it is {door.label} of job {door.job.number}."
    )
    assert door.job == others[said.index("")]


@pytest.mark.parametrize(
    ("label", "taken", "free"),
    [
        ("D1", [], "D1"),
        ("D1", ["D1", "D2"], "D3"),
        ("pantry", ["pantry"], "pantry1"),
        ("12", ["12", "1"], "2"),
        ("x" * LONGEST_LABEL, ["x" * LONGEST_LABEL], "x" * (LONGEST_LABEL - 1) + "1"),
    ],
)
def test_a_label_that_is_taken_becomes_a_free_one(label: str, taken: list[str], free: str) -> None:
    """Its letters with the first number that nothing is called by."""
    assert free_label(label, taken) == free
