"""Cutting plans as they are begun, worked out beside the page, and kept."""

import time
from datetime import timedelta

import pytest

from fronts.cutting.model import Request, StockSize, WantedPart
from fronts.cutting.plan import plan as solve
from fronts.cutting.plan_json import plan_to_store, request_to_store, stored_plan, stored_request
from fronts.models import CutPlan, PlanState
from fronts.rules.lengths import INCH, Mm
from fronts.selectors.plans import finished_plan, latest_plan
from fronts.services.cutting import AT_ONCE, KEPT, MARGIN, Asked, plan_begin, plan_work
from shopjobs.models import DiaryEntry, Job, Person
from shopjobs.services.refused import Refused
from tests.factories import NOW, JobFactory

SHEETS = Request(
    kerf=INCH / 8,
    trim=INCH / 4,
    stock=(
        StockSize("sheet", 96 * INCH, 48 * INCH, None, "length", Mm(5225, 100)),
        StockSize("offcut", 40 * INCH, 30 * INCH, 1, "length", Mm(0)),
    ),
    parts=(
        WantedPart("B1.a", 28 * INCH, Mm(1163, 3), 3, "length"),
        WantedPart("B2.a.1", 6 * INCH, 20 * INCH, 1, "length", "B2.a", 1),
        WantedPart("B2.a.2", 9 * INCH, 20 * INCH, 1, "length", "B2.a", 2),
    ),
)
STICKS = Request(
    kerf=Mm(3), trim=Mm(15), stock=(StockSize("stick", Mm(2440)),),
    parts=(WantedPart("stile", Mm(700), count=7),),
)  # fmt: skip


def begin(job: Job, by: Person, **changes: object) -> CutPlan:
    """Begin a plan for both requests."""
    asked = [Asked("k1", "plywood 3/4", SHEETS), Asked("k2", "maple 3/4 × 2 1/4", STICKS)]
    values = {"fingerprint": "1234-abcd", "asked": asked, "seconds": 2, "by": by, "at": NOW}
    return plan_begin(job=job, **values | changes)  # type: ignore[arg-type]


@pytest.mark.parametrize("request_", [SHEETS, STICKS], ids=["sheets", "sticks"])
def test_what_is_kept_comes_back_exactly(request_: Request) -> None:
    """Requests and plans survive being kept: thirds of a millimetre, prices, blocks and all."""
    found = solve(request_, 2.0)

    assert stored_request(request_to_store(request_)) == request_
    assert stored_plan(plan_to_store(found), request_) == found
    assert found.unplaced == ()


@pytest.mark.django_db
def test_a_plan_that_was_begun_is_at_work(job: Job, office: Person) -> None:
    """It is kept with what it is made from, who asked, and when it must be over."""
    begun = begin(job, office)

    kept = latest_plan(job)
    assert kept == begun
    assert (begun.state, begun.fingerprint, begun.made_by) == ("working", "1234-abcd", office)
    assert begun.due_at == NOW + timedelta(seconds=2) + MARGIN
    assert [stored_request(row) for row in begun.asked] == [SHEETS, STICKS]
    assert DiaryEntry.objects.filter(job=job, text="Began a cutting plan").exists()
    assert finished_plan(job) is None


@pytest.mark.django_db
def test_a_plan_is_worked_out_for_each_material(job: Job, office: Person) -> None:
    """The plans that are kept are those that the engine finds, with their proof."""
    begun = begin(job, office)

    plan_work(plan_id=begun.pk)

    kept = finished_plan(job)
    assert kept is not None
    sheets, sticks = (
        stored_plan(found, request)
        for found, request in zip(kept.found, (SHEETS, STICKS), strict=True)
    )
    assert kept.finished_at is not None
    assert (sheets.proved, sheets.unplaced) == (True, ())
    # 7 sticks of 700 mm, three to a stick of 2440 mm: three sticks.
    assert (sticks.sheets_used, sticks.lower_bound, sticks.proved) == (3, 3, True)


@pytest.mark.django_db
def test_one_plan_of_a_job_at_a_time(job: Job, office: Person) -> None:
    """A second press does not start a second run."""
    begin(job, office)

    with pytest.raises(Refused, match="worked out already"):
        begin(job, office, at=NOW + timedelta(seconds=1))
    assert CutPlan.objects.count() == 1


@pytest.mark.django_db
def test_so_many_plans_of_all_jobs_at_a_time(job: Job, office: Person) -> None:
    """Each takes a core: a third one is refused until one of them is done or was lost."""
    others = [JobFactory.create(shop=job.shop, number=f"K-{n}") for n in range(2, 2 + AT_ONCE)]
    running = [begin(each, office) for each in others]

    with pytest.raises(Refused, match="for other jobs are being worked out"):
        begin(job, office)
    assert not CutPlan.objects.filter(job=job).exists()

    plan_work(plan_id=running[0].pk)
    assert begin(job, office).state == PlanState.WORKING
    lost = running[1].due_at + timedelta(seconds=1)
    assert begin(others[0], office, at=lost).state == PlanState.WORKING


@pytest.mark.django_db
def test_a_plan_that_died_with_its_server_is_given_up(job: Job, office: Person) -> None:
    """What should long be over stands in nobody's way."""
    lost = begin(job, office)

    again = begin(job, office, at=lost.due_at + timedelta(seconds=1))

    lost.refresh_from_db()
    assert (lost.state, again.state) == (PlanState.FAILED, PlanState.WORKING)
    assert "server was stopped" in lost.fault


@pytest.mark.django_db
def test_old_plans_go(job: Job, office: Person) -> None:
    """A job keeps its last few finished plans."""
    for day in range(KEPT + 3):
        at = NOW + timedelta(days=day)
        begun = begin(job, office, asked=[Asked("k2", "maple", STICKS)], at=at)
        plan_work(plan_id=begun.pk)

    kept = CutPlan.objects.filter(job=job)
    assert kept.count() == KEPT
    assert latest_plan(job) == finished_plan(job) == kept.latest("started_at")


@pytest.mark.django_db(transaction=True)
def test_it_is_worked_out_beside_the_page(job: Job, office: Person) -> None:
    """Beginning returns at once; a process of its own does the work, a thread keeps it."""
    begun = begin(job, office)

    _wait_for_end(begun)

    assert (begun.state, len(begun.found)) == (PlanState.DONE, 2)


@pytest.mark.django_db(transaction=True)
def test_a_run_that_fails_does_not_stay_at_work(job: Job, office: Person) -> None:
    """Stock that no part fits: the engine refuses it, and the plan is given up in words."""
    hopeless = Request(
        kerf=Mm(3), trim=Mm(10), stock=(StockSize("offcut", Mm(100), Mm(100)),),
        parts=(WantedPart("B1.a", Mm(700), Mm(400)),),
    )  # fmt: skip

    begun = begin(job, office, asked=[Asked("k", "plywood", hopeless)])
    _wait_for_end(begun)

    assert begun.state == PlanState.FAILED
    assert "could not be worked out" in begun.fault


@pytest.mark.django_db
def test_a_run_that_takes_too_long_is_given_up(
    job: Job, office: Person, monkeypatch: pytest.MonkeyPatch
) -> None:
    """By the name of its material; what was found before it stays."""
    monkeypatch.setattr("fronts.services.cutting.MARGIN", timedelta(0))
    begun = begin(job, office, seconds=0)

    plan_work(plan_id=begun.pk)

    begun.refresh_from_db()
    assert (begun.state, begun.found) == (PlanState.FAILED, [])
    assert begun.fault == "No plan for plywood 3/4 came within its time."


def _wait_for_end(begun: CutPlan) -> None:
    """Wait for the run to end; a run that doesn't fails by the state that is left."""
    end = time.monotonic() + 60
    while begun.state == PlanState.WORKING and time.monotonic() < end:
        time.sleep(0.1)
        begun.refresh_from_db()
