"""Cuts and ticks that come with a file: by whom, of which front, none lost and none twice."""

from dataclasses import replace
from datetime import timedelta

import pytest
from django.core.exceptions import ValidationError

from fronts.jobfile import JobFile, read_job, write
from fronts.models import Front, FrontCut, WorkTick
from fronts.rules.fits import hung_as
from fronts.rules.lengths import Mm
from fronts.rules.records import NO_RECORDS, RecordedTick, Records
from fronts.selectors.kitchens import placed_kitchen_of
from fronts.selectors.records import records_of
from fronts.selectors.schedules import schedule_for
from fronts.services.front_cuts import fronts_mark_cut
from fronts.services.history import revision_undo
from fronts.services.imports import job_import
from fronts.services.work_ticks import step_tick
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person, Revision, Shop
from tests.factories import NOW, ShopFactory, door_and_drawer, overlaid
from tests.history.rows_as_they_stand import state_of_shops

LATER = NOW + timedelta(hours=1)


@pytest.fixture
def worked_on(job: Job, installer: Person) -> Job:
    """A job with a door and a drawer front that were cut, and two steps that were ticked off."""
    overlaid(job)
    door_and_drawer(job)
    kitchen = placed_kitchen_of(job)
    schedule = schedule_for(job, kitchen)
    seen = {front.label: hung_as(front) for front in schedule.fronts}
    fronts_mark_cut(job=job, kitchen=kitchen, schedule=schedule, seen=seen, by=installer, at=NOW)
    door = Front.objects.get(opening__label="a")
    for minutes, step in enumerate(("Drill 35 mm cups.", "Hang it.")):
        step_tick(front=door, step=step, by=installer, at=NOW + timedelta(minutes=minutes))
    return Job.objects.get(pk=job.pk)


def file_of(job: Job) -> JobFile:
    """The job as its file states it."""
    return read_job(write(kitchen_of(job), records_of(job)))


def brought(file: JobFile, shop: Shop) -> Job:
    """The file as a job of the shop, in the place of the one that is there."""
    return job_import(kitchen=file.kitchen, records=file.records, shop=shop, at=LATER, replace=True)


def test_they_are_brought_elsewhere_as_they_are(worked_on: Job) -> None:
    """Names, times, steps, and all that the fronts were cut as; people of that shop alone."""
    file = file_of(worked_on)
    other = ShopFactory.create(name="Elm End")

    job = brought(file, other)

    assert file_of(job) == file
    assert (len(file.records.cuts), len(file.records.ticks)) == (2, 2)
    assert file.records.cuts[0].facts.hinged == "left"
    of_it = FrontCut.objects.filter(front__opening__cabinet__job=job)
    assert {(row.cut_by, row.by) for row in of_it} == {(None, "ines")}
    assert {row.by for row in WorkTick.objects.filter(front__opening__cabinet__job=job)} == {"ines"}
    assert FrontCut.objects.count() == 2 * of_it.count() == 4


def test_brought_in_twice_nothing_is_there_twice(worked_on: Job, installer: Person) -> None:
    """Each is its person's once more."""
    file = file_of(worked_on)

    for _ in range(2):
        brought(file, worked_on.shop)

    assert file_of(worked_on) == file
    assert (FrontCut.objects.count(), WorkTick.objects.count()) == (2, 2)
    assert {row.cut_by for row in FrontCut.objects.all()} == {installer}
    assert {row.ticked_by for row in WorkTick.objects.all()} == {installer}


def test_what_the_file_does_not_hold_stays(worked_on: Job) -> None:
    """Its kitchen alone takes the place."""
    file = file_of(worked_on)

    brought(replace(file, records=NO_RECORDS), worked_on.shop)

    assert file_of(worked_on) == file


def test_the_later_cut_and_the_first_tick_hold(worked_on: Job) -> None:
    """Whichever of them the file brings."""
    file = file_of(worked_on)
    door = file.records.cuts[0]
    anew = replace(door, at=LATER, facts=replace(door.facts, width=Mm(300)))
    older = replace(file.records.cuts[1], at=NOW - timedelta(days=1))
    first, second = file.records.ticks
    ticks = (
        replace(first, at=NOW - timedelta(days=1), by="Bo"), replace(second, at=LATER, by="Bo"),
        RecordedTick(first.front, "Adjust it.", LATER, "Bo"),
    )  # fmt: skip

    brought(replace(file, records=Records(cuts=(anew, older), ticks=ticks)), worked_on.shop)

    now = records_of(worked_on)
    assert {cut.front: cut for cut in now.cuts} == {
        anew.front: anew, older.front: file.records.cuts[1],
    }  # fmt: skip
    assert now.ticks == (ticks[0], second, ticks[2])


def test_what_no_row_can_keep_is_refused_with_its_front(worked_on: Job) -> None:
    """And nothing is brought in."""
    file = file_of(worked_on)
    cut = replace(file.records.cuts[0], at=LATER)
    fine = replace(cut, facts=replace(cut.facts, left=Mm(1, 3)))

    with pytest.raises(ValidationError, match=r"cut of B1\.a"):
        brought(replace(file, records=Records(cuts=(fine,))), worked_on.shop)

    assert file_of(worked_on) == file


def test_bringing_in_is_undone(worked_on: Job, owner: Person) -> None:
    """Every row is as it was."""
    before = state_of_shops()
    file = file_of(worked_on)
    cut = replace(file.records.cuts[0], at=LATER, by="Bo")
    brought(replace(file, records=Records(cuts=(cut,))), worked_on.shop)

    last = Revision.objects.filter(job=worked_on).latest("pk")
    revision_undo(revision=last, by=owner, at=LATER)

    assert state_of_shops() == before
