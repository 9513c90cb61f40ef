"""The embedded database, set up for several people at once."""

import threading

import pytest
from django.db import connection, connections

from shopjobs.models import Job
from shopjobs.services.jobs import job_touch

THREADS = 4
CHANGES = 15

only_sqlite = pytest.mark.skipif(
    connection.vendor != "sqlite", reason="these are settings of SQLite; another database is in use"
)


@only_sqlite
@pytest.mark.django_db
def test_sqlite_is_set_up_for_several_people() -> None:
    """Readers don't wait for a writer, writers wait their turn, and references hold."""
    with connection.cursor() as cursor:
        read = {}
        for pragma in ("journal_mode", "synchronous", "foreign_keys", "busy_timeout"):
            cursor.execute(f"PRAGMA {pragma}")
            read[pragma] = cursor.fetchone()[0]

    assert read == {
        "journal_mode": "wal",
        "synchronous": 1,
        "foreign_keys": 1,
        "busy_timeout": 10_000,
    }


@pytest.mark.django_db(transaction=True)
def test_changes_at_the_same_time_all_count(job: Job) -> None:
    """Several people change one job at once: none is refused, none is lost."""
    faults: list[Exception] = []

    def change() -> None:
        try:
            for _ in range(CHANGES):
                job_touch(job=Job.objects.get(pk=job.pk))
        except Exception as fault:
            faults.append(fault)
        finally:
            connections.close_all()

    threads = [threading.Thread(target=change) for _ in range(THREADS)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()

    assert faults == []
    job.refresh_from_db()
    assert job.revision == 1 + THREADS * CHANGES
