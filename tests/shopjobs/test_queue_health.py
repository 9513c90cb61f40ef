"""What /readyz says of the queue."""

from collections.abc import Iterator
from datetime import timedelta

import pytest
from django.test import Client
from django.utils import timezone

from shopjobs.models import Person, Shop
from shopjobs.services.lost_tasks import worker_beat
from tests.jsonlog import JsonLog
from tests.queue_work import in_queue
from tests.services.test_cutting import begin
from tests.shopjobs.test_tasks import jobs

pytestmark = pytest.mark.django_db


@pytest.fixture(autouse=True)
def queue() -> Iterator[None]:
    """Long work waits."""
    with in_queue:
        yield


def test_without_a_worker_it_is_not_ready(json_log: JsonLog) -> None:
    """Whoever watches over it learns that long work stands still."""
    assert Client().get("/readyz").json()["queue"] == "failed"
    (line,) = json_log.of("shopjobs.health")
    assert "no worker is running; 0 tasks wait" in line["message"]


@pytest.mark.parametrize(("minutes", "word"), [(20, "ok"), (40, "failed")])
def test_what_waits_for_long_wants_more_workers(
    minutes: int, word: str, shop: Shop, office: Person, json_log: JsonLog
) -> None:
    """Two of the shop's four have no place yet."""
    worker_beat(name="bench-1", host="bench", pid=1)
    asked_at = timezone.now() - timedelta(minutes=minutes)
    for job in jobs(shop, 4):
        begin(job, office, at=asked_at)

    assert Client().get("/readyz").json()["queue"] == word
    said = ["2 tasks have waited for more than 30" in line["message"]
            for line in json_log.of("shopjobs.health")]  # fmt: skip
    assert said == [True] * (word == "failed")
