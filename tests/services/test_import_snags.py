"""Snags that come with a file: none of them lost, none twice, the later word of each."""

import json
from dataclasses import replace
from datetime import timedelta

import pytest

from fronts.jobfile import read_job, write
from fronts.models import Snag
from fronts.rules.records import Records
from fronts.rules.snags import SnagFacts
from fronts.selectors.records import records_of
from fronts.services.imports import job_import
from fronts.services.snags import snag_raise, snag_settle
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person, Shop
from tests.factories import NOW, door_and_drawer

LATER = NOW + timedelta(hours=3)


@pytest.fixture
def snag(job: Job, installer: Person) -> Snag:
    """A scratch on the door B1.a."""
    cabinet = door_and_drawer(job)
    front = cabinet.openings.get(label="a").fronts.get()
    facts = SnagFacts("front", "scratched", "B1.a")
    return snag_raise(
        job=job, facts=facts, front=front, cabinet=cabinet, who=installer, by=installer, at=NOW
    )


def again(job: Job, records: Records) -> None:
    """The job's own file put in its place."""
    read = read_job(write(kitchen_of(job), records))
    job_import(kitchen=read.kitchen, shop=job.shop, at=LATER, records=read.records, replace=True)


def test_a_file_put_in_the_jobs_place_leaves_its_snags(job: Job, snag: Snag) -> None:
    """Each finds its front again by what that is called; nothing is there twice."""
    before = records_of(job)
    for records in (before, Records()):
        again(job, records)
        assert records_of(job) == before
    snag.refresh_from_db()
    assert str(snag.front) == "Front 1 of B1.a"
    assert snag.cabinet is not None


def test_the_later_word_holds(job: Job, snag: Snag, owner: Person) -> None:
    """An old file takes nothing back; a later one brings what was done elsewhere."""
    old = records_of(job)
    snag_settle(snag=snag, note="polished", by=owner, at=NOW + timedelta(hours=1))
    again(job, old)
    assert Snag.objects.get().done_note == "polished"

    (said,) = records_of(job).snags
    facts = replace(said.facts, done_note="filled")
    again(job, Records(snags=(replace(said, facts=facts, changed=LATER),)))
    now = Snag.objects.get()
    assert (now.done_note, now.done_by, now.changed_at) == ("filled", owner, LATER)


def test_two_that_were_written_at_the_same_moment_both_come(shop: Shop, job: Job) -> None:
    """A file may tell the second alone."""
    door_and_drawer(job)
    said = [
        {"of": "job", "words": words, "at": "2027-03-12T10:00:00Z", "by": "Nobody Here"}
        for words in ("paint on the floor", "a cracked tile")
    ]
    tree = json.loads(write(kitchen_of(job))) | {"snags": [*said, said[0]]}
    tree["job"]["number"] = "K-2"
    read = read_job(json.dumps(tree))
    made = job_import(kitchen=read.kitchen, shop=shop, at=NOW, records=read.records)
    assert [(one.words, one.by) for one in Snag.objects.filter(job=made).order_by("pk")] == [
        ("paint on the floor", "Nobody Here"), ("a cracked tile", "Nobody Here"),
    ]  # fmt: skip
