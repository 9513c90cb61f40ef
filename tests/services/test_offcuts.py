"""Offcuts as they are entered, changed, laid by; two people never have one piece."""

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace
from threading import Barrier

import pytest
from django.core.exceptions import ValidationError
from django.db import connection

from fronts.cutting.model import Request, StockSize, WantedPart
from fronts.cutting.plan import plan as solve
from fronts.cutting.plan_json import plan_to_store, request_to_store
from fronts.models import CutPlan, Offcut, PlanState
from fronts.rules.lengths import INCH, Mm
from fronts.rules.offcuts import OffcutFacts
from fronts.selectors.needed import wanted_by
from fronts.selectors.offcuts import lost_offcuts, offcuts_for
from fronts.services.history import capability_for, revision_undo
from fronts.services.offcuts import offcut_change, offcut_enter, offcut_throw_away
from fronts.services.plan_offcuts import plan_offcuts_lay_by
from shopjobs.models import Job, Person, Revision
from shopjobs.services.jobs import job_delete
from shopjobs.services.refused import Refused
from tests.factories import NOW, JobFactory, PersonFactory

BIRCH = OffcutFacts("birch plywood", 3 * INCH / 4, 40 * INCH, 30 * INCH)


def entered(job: Job, facts: OffcutFacts = BIRCH, laid_by: Job | None = None) -> Offcut:
    """A piece on the rack of the job's shop."""
    return offcut_enter(shop=job.shop, facts=facts, job=laid_by, by=None, at=NOW)


def plan_that_takes(job: Job, by: Person, offcut: Offcut) -> CutPlan:
    """A finished plan whose one part comes out of the offcut."""
    sheet = StockSize("0", 96 * INCH, 48 * INCH)
    own = StockSize(offcut.label, offcut.length, offcut.width, count=1, own=True)
    part = WantedPart("B1.a", 20 * INCH, 15 * INCH)
    request = Request(Mm(3), Mm(10), (sheet, own), (part,))
    asked = {"key": "k", "name": "birch plywood 3/4", "seconds": 1, **request_to_store(request)}
    return CutPlan.objects.create(
        job=job, fingerprint="x", asked=[asked], found=[plan_to_store(solve(request, 1))],
        state=PlanState.DONE, made_by=by, started_at=NOW, finished_at=NOW,
    )  # fmt: skip


def both(*deeds: Callable[[], object]) -> None:
    """Do several things at the same time, each on a connection of its own."""
    start = Barrier(len(deeds))

    def run(deed: Callable[[], object]) -> None:
        try:
            start.wait(30)
            deed()
        finally:
            connection.close()

    with ThreadPoolExecutor(len(deeds)) as pool:
        for done in [pool.submit(run, deed) for deed in deeds]:
            done.result(60)


@pytest.mark.django_db(transaction=True)
def test_two_plans_that_end_at_once_never_take_one_piece_twice() -> None:
    one = JobFactory.create()
    other = JobFactory.create(shop=one.shop)
    person = PersonFactory.create(shop=one.shop)
    row = entered(one)
    plans = [plan_that_takes(job, person, row) for job in (one, other)]
    both(*(lambda plan=plan: plan_offcuts_lay_by(plan=plan, at=NOW) for plan in plans))
    row.refresh_from_db()
    assert row.job in (one, other)
    lost = [bool(lost_offcuts(plan)) for plan in plans]
    assert lost == [row.job != one, row.job != other]


@pytest.mark.django_db(transaction=True)
def test_two_who_enter_pieces_at_once_write_two_numbers_on_them() -> None:
    job = JobFactory.create()
    both(lambda: entered(job), lambda: entered(job))
    assert sorted(Offcut.objects.values_list("number", flat=True)) == [1, 2]


@pytest.mark.django_db
def test_each_shop_counts_for_itself_and_sees_its_own(job: Job) -> None:
    other = JobFactory.create()
    assert [entered(job).label, entered(job).label, entered(other).label] == ["R1", "R2", "R1"]
    assert [each.label for each in offcuts_for(other)] == ["R1"]


@pytest.mark.django_db
def test_what_is_thrown_away_is_said_why_comes_back_and_keeps_its_number(
    job: Job, office: Person
) -> None:
    row = entered(job)
    offcut_throw_away(row=row, why="split", by=office, at=NOW)
    with pytest.raises(Refused, match="R1 has gone meanwhile: split"):
        offcut_throw_away(row=row, why="again", by=office, at=NOW)
    assert entered(job).label == "R2"
    revision = Revision.objects.get(text="Threw the offcut R1 away: split")
    assert capability_for(revision, office) == "edit_kitchen"
    revision_undo(revision=revision, at=NOW, by=office)
    assert [each.label for each in offcuts_for(job)] == ["R1", "R2"]


@pytest.mark.django_db
def test_a_changed_piece_is_told_and_undone(job: Job, office: Person) -> None:
    row = entered(job)
    smaller = replace(BIRCH, length=20 * INCH)
    offcut_change(row=row, facts=smaller, job=job, by=office, at=NOW)
    revision = Revision.objects.order_by("pk").last()
    assert revision is not None
    revision_undo(revision=revision, at=NOW, by=office)
    row.refresh_from_db()
    assert (row.facts, row.job) == (BIRCH, None)


@pytest.mark.django_db
def test_no_size_is_kept_that_is_none(job: Job) -> None:
    with pytest.raises(ValidationError):
        entered(job, replace(BIRCH, width=Mm(0)))


@pytest.mark.django_db
def test_a_plan_without_its_offcut_says_so_and_is_no_longer_bought_by(
    job: Job, office: Person
) -> None:
    row = entered(job)
    plan = plan_that_takes(job, office, row)
    plan_offcuts_lay_by(plan=plan, at=NOW)
    row.refresh_from_db()
    assert lost_offcuts(plan) == {}
    wanted_by([job])
    before = Job.objects.get(pk=job.pk).revision
    offcut_throw_away(row=row, why="split", by=office, at=NOW)
    assert lost_offcuts(plan) == {1: "has gone: split"}
    assert Job.objects.get(pk=job.pk).revision == before + 1  # So what it needs is asked anew.


@pytest.mark.django_db
def test_a_smaller_piece_is_another(job: Job, office: Person) -> None:
    row = entered(job)
    plan = plan_that_takes(job, office, row)
    plan_offcuts_lay_by(plan=plan, at=NOW)
    row.refresh_from_db()
    smaller = replace(BIRCH, length=20 * INCH)
    offcut_change(row=row, facts=smaller, job=job, by=office, at=NOW)
    assert lost_offcuts(plan) == {1: "has another size by now"}


@pytest.mark.django_db
def test_what_a_deleted_job_had_is_anybody_s(job: Job, owner: Person) -> None:
    gone = JobFactory.create(shop=job.shop)
    entered(job, laid_by=gone)
    assert offcuts_for(job) == []
    job_delete(job=gone, by=owner, at=NOW)
    assert [each.label for each in offcuts_for(job)] == ["R1"]
