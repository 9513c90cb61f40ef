"""Cutting plans as they are begun, worked out piece by piece, and kept."""

from datetime import timedelta

import pytest

from fronts.cutting.model import Request, StockSize, WantedPart
from fronts.cutting.plan import plan as solve
from fronts.cutting.plan_json import plan_to_store, request_to_store, stored_plan, stored_request
from fronts.models import CutPlan, PlanState
from fronts.rules.lengths import INCH, Mm
from fronts.selectors.plans import finished_plan, latest_plan
from fronts.services.cutting import Asked, plan_begin, plan_cancel
from shopjobs.models import Job, Person, Revision
from shopjobs.services.refused import Refused
from tests.factories import NOW
from tests.queue_work import in_queue, work_off

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
HOPELESS = Request(
    kerf=Mm(3), trim=Mm(10), stock=(StockSize("offcut", Mm(100), Mm(100)),),
    parts=(WantedPart("B1.a", Mm(700), Mm(400)),),
)  # fmt: skip
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
@in_queue
def test_a_plan_that_was_begun_is_at_work(job: Job, office: Person) -> None:
    """It is kept with what it is made from and who asked, and nothing of it is done yet."""
    begun = begin(job, office)

    kept = latest_plan(job)
    assert kept == begun
    assert (begun.state, begun.fingerprint, begun.made_by) == ("working", "1234-abcd", office)
    assert [stored_request(row) for row in begun.asked] == [SHEETS, STICKS]
    assert begun.task is not None
    assert begun.task.piece_seconds == 2 + 15  # What a process takes to start and to write.
    assert Revision.objects.filter(job=job, text="Began a cutting plan").exists()
    assert finished_plan(job) is None


@pytest.mark.django_db
@in_queue
def test_each_material_is_a_piece_of_its_own(job: Job, office: Person) -> None:
    """What is there of a plan is kept at once; the rest comes when its turn does."""
    begun = begin(job, office)

    work_off(1)
    begun.refresh_from_db()
    assert (len(begun.found), begun.state) == (1, PlanState.WORKING)

    work_off()
    begun.refresh_from_db()
    assert (len(begun.found), begun.state) == (2, PlanState.DONE)


@pytest.mark.django_db
def test_a_plan_is_worked_out_for_each_material(job: Job, office: Person) -> None:
    """The plans that are kept are those that the engine finds, with their proof."""
    begin(job, office)

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
@in_queue
def test_one_plan_of_a_job_at_a_time(job: Job, office: Person) -> None:
    """A second press does not start a second run."""
    begin(job, office)

    with pytest.raises(Refused, match="worked out already"):
        begin(job, office, at=NOW + timedelta(seconds=1))
    assert CutPlan.objects.count() == 1


@pytest.mark.django_db
@in_queue
def test_a_plan_that_is_cancelled_says_by_whom(job: Job, office: Person) -> None:
    """Nobody works on it any more, the one before it still holds, and a new one can be begun."""
    before = begin(job, office)
    work_off()
    begun = begin(job, office, at=NOW + timedelta(hours=1))

    plan_cancel(plan=begun, by=office, at=NOW + timedelta(hours=2))
    work_off()

    begun.refresh_from_db()
    assert (begun.state, begun.found, begun.fault) == ("failed", [], "Cancelled by otto.")
    assert Revision.objects.filter(job=job, text="Cancelled a cutting plan").count() == 1
    assert finished_plan(job) == before
    assert begin(job, office, at=NOW + timedelta(hours=3)).state == PlanState.WORKING


@pytest.mark.django_db
def test_a_plan_that_is_done_is_not_cancelled(job: Job, office: Person) -> None:
    """Who presses Cancel too late changes nothing."""
    begin(job, office)
    done = finished_plan(job)
    assert done is not None

    plan_cancel(plan=done, by=office, at=NOW + timedelta(hours=1))

    assert finished_plan(job) == done
    assert not Revision.objects.filter(text="Cancelled a cutting plan").exists()


@pytest.mark.django_db
def test_old_plans_go(job: Job, office: Person) -> None:
    """A job keeps its last three finished plans."""
    for day in range(5):
        at = NOW + timedelta(days=day)
        begin(job, office, asked=[Asked("k2", "maple", STICKS)], at=at)

    kept = CutPlan.objects.filter(job=job)
    assert kept.count() == 3
    assert latest_plan(job) == finished_plan(job) == kept.latest("started_at")


@pytest.mark.django_db
def test_a_run_that_fails_does_not_stay_at_work(job: Job, office: Person) -> None:
    """Stock that no part fits: the engine refuses it, and the plan is given up in words."""
    asked = [Asked("k2", "maple", STICKS), Asked("k", "plywood", HOPELESS)]

    begin(job, office, asked=asked)

    failed = latest_plan(job)
    assert failed is not None
    assert (failed.state, len(failed.found)) == (PlanState.FAILED, 1)
    assert failed.fault.startswith("plywood: The plan could not be worked out")
