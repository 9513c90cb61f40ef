"""A shop's file while people write."""

import threading
from io import BytesIO
from itertools import count

import pytest
from django.db import connections

from shopjobs.services.jobs import job_create
from shopjobs.services.shop_files.exporting import shop_export
from shopjobs.services.shop_files.lines import read_lines
from tests.factories import NOW
from tests.shop_files.whole_shop import OURS, whole_shop


@pytest.mark.django_db(transaction=True)
def test_a_file_is_of_one_moment() -> None:
    """People go on writing meanwhile; each change, which is two rows, is in it whole or not."""
    shop, stop, made = whole_shop("Alder Row Cabinets", OURS), threading.Event(), count(1)

    def write() -> None:
        try:
            while not stop.wait(0.01):
                job_create(shop=shop, number=f"W-{next(made)}", at=NOW)
        finally:
            connections.close_all()

    writing = threading.Thread(target=write)
    writing.start()
    try:
        files = [BytesIO() for _ in range(4)]
        for file in files:
            shop_export(shop=shop, to=file)
    finally:
        stop.set()
        writing.join()

    numbers = [_jobs_and_lines(file) for file in files]
    assert [jobs for jobs, _ in numbers] == [lines for _, lines in numbers]
    assert numbers[0] < numbers[-1]
    assert numbers[-1][0] < next(made)


def _jobs_and_lines(file: BytesIO) -> tuple[int, int]:
    """How many jobs a file holds, and how many lines of history say that one was made."""
    file.seek(0)
    rows = [line for line in read_lines(file) if isinstance(line, list)]
    jobs = [row for label, _, row in rows if label == "shopjobs.job"]
    lines = [row for label, _, row in rows if label == "shopjobs.revision"]
    written = [job["number"] for job in jobs if job["number"].startswith("W-")]
    return len(written), sum(line["text"].startswith("Made job W-") for line in lines)
