"""What goes with something that is taken away is told as it was just before."""

import pytest

from fronts.models import (
    Box,
    Cabinet,
    CutPlan,
    DoorOnHand,
    FitRecord,
    Front,
    Opening,
    OrderCheck,
    PlanState,
)
from fronts.rules.box_facts import ShelfPins
from fronts.rules.fingerprint import parts_fingerprint
from fronts.rules.fits import FitFacts, hung_as
from fronts.rules.practice import inches
from fronts.selectors.fits import fit_records_of
from fronts.selectors.schedules import schedule_of
from fronts.services.boxes import box_remove
from fronts.services.cabinets import cabinet_delete
from fronts.services.doors import door_delete
from fronts.services.fits import fit_record
from fronts.services.openings import opening_delete
from fronts.services.orders import order_check
from fronts.services.stock import stock_clear
from shopjobs.models import Job, Person, Revision
from tests.factories import (
    HINGES,
    NOW,
    BoxFactory,
    CabinetFactory,
    DoorOnHandFactory,
    OpeningFactory,
    door_and_drawer,
    overlaid,
)
from tests.ordering import facts_of
from tests.saying import front_of, opening_change, shelf_pins_set, stock_set


@pytest.fixture
def cabinet(job: Job) -> Cabinet:
    """A cabinet with a door `a` and a drawer `b` on its box."""
    overlaid(job)
    return door_and_drawer(job)


def told() -> list[str]:
    """What the last revision says went."""
    revision = Revision.objects.order_by("pk").last()
    assert revision is not None
    went: list[str] = revision.went
    return went


def fitted(front: Front, by: Person) -> FitRecord:
    """A record of how a front fitted as it is now."""
    job, label = front.opening.cabinet.job, str(front.opening)
    hung = hung_as(schedule_of(job).front(label))
    facts = FitFacts(label, note="snug")
    return fit_record(front=front, facts=facts, hung=hung, fingerprint="", by=by, at=NOW)


def checked(job: Job, item: str, by: Person) -> OrderCheck:
    """A line of the order, checked as it is now."""
    facts = facts_of(job)[item]
    return order_check(job=job, item=item, facts=facts, fingerprint="", by=by, at=NOW)


def planned(job: Job, by: Person) -> CutPlan:
    """A cutting plan for the parts as they are now."""
    return CutPlan.objects.create(
        job=job, fingerprint=parts_fingerprint(schedule_of(job).parts), asked=[], made_by=by,
        state=PlanState.DONE, started_at=NOW,
    )  # fmt: skip


def test_a_cabinet_goes_with_all_that_is_in_it(cabinet: Cabinet, owner: Person) -> None:
    """Openings, boxes, and records of fit, which stay but count for no front."""
    record = fitted(front_of(Opening.objects.get(label="a")), owner)
    cabinet_delete(cabinet=cabinet, at=NOW, by=owner)

    assert told() == [
        "openings B1.a, B1.b", "box 1 of B1.b", "the record of how B1.a fitted",
    ]  # fmt: skip
    assert not Cabinet.objects.exists()
    assert not Box.objects.exists()
    record.refresh_from_db()
    assert record.front is None


def test_an_empty_cabinet_takes_nothing_with_it(job: Job) -> None:
    """So nothing is told."""
    cabinet_delete(cabinet=CabinetFactory.create(job=job), at=NOW)

    assert told() == []
    assert not Cabinet.objects.exists()


def test_checks_and_plans_that_fit_no_more_are_told(cabinet: Cabinet, owner: Person) -> None:
    """The hinges that were checked, the plan of the parts; a line that stays right is left."""
    job = cabinet.job
    OpeningFactory.create(
        cabinet=CabinetFactory.create(job=job, label="B2", x=inches(30)), closed_by="drawer"
    )
    checked(job, HINGES, owner)
    checked(job, "knob or pull", owner)
    checked(job, "slide screw", owner)
    planned(job, owner)
    opening_delete(opening=Opening.objects.get(label="a", cabinet=cabinet), at=NOW, by=owner)

    assert told() == [
        f"the order's checks hold no more: {HINGES} 2 → 0, knob or pull 3 → 2",
        "the cutting plan of 1 Mar 09:30 is of other parts",
    ]


def test_what_did_not_hold_before_is_not_told_to_go(cabinet: Cabinet, owner: Person) -> None:
    """A check of another number, a plan of other parts, a front changed since: no news."""
    job, door = cabinet.job, Opening.objects.get(label="a")
    checked(job, HINGES, owner)
    planned(job, owner)
    fitted(front_of(door), owner)
    OrderCheck.objects.update(need=9)
    opening_change(opening=door, front_thickness=inches(7, 8), at=NOW)
    opening_delete(opening=Opening.objects.get(label="b"), at=NOW, by=owner)

    assert told() == ["box 1 of B1.b"]


def test_a_front_that_becomes_another_is_told(cabinet: Cabinet, owner: Person) -> None:
    """Fitted as made from a door on hand; without that it is cut new, and fitted anew."""
    door = DoorOnHandFactory.create(job=cabinet.job)
    opening_change(opening=Opening.objects.get(label="a"), front_door=door, at=NOW)
    fitted(front_of(Opening.objects.get(label="a")), owner)
    door_delete(row=door, at=NOW, by=owner)

    assert told() == ["B1.a gets a new front", "B1.a is another front now, to be fitted anew"]
    assert Front.objects.get(opening__label="a").door is None
    assert not DoorOnHand.objects.exists()


def test_fronts_that_lose_their_place_are_told(job: Job, owner: Person) -> None:
    """The third drawer's box and record; the others' stay."""
    stack = OpeningFactory.create(cabinet__job=job, closed_by="drawers", count=3)
    for index in range(3):
        BoxFactory.create(opening=stack, index=index)
    for index in (0, 2):
        facts = FitFacts(f"B1.a.{index + 1}", note="snug")
        fit_record(
            front=front_of(stack, index), facts=facts, hung="", fingerprint="", by=owner, at=NOW
        )
    opening_change(opening=stack, count=2, at=NOW, by=owner)

    assert told() == ["box 3 of B1.a", "the record of how B1.a.3 fitted"]
    assert [box.front.position for box in Box.objects.order_by("front__position")] == [0, 1]
    assert list(fit_records_of(job)) == ["B1.a.1"]


def test_a_front_that_loses_its_box_keeps_its_record(job: Job, owner: Person) -> None:
    """A drawer that becomes a fixed front: the box alone goes."""
    opening = OpeningFactory.create(cabinet__job=job, closed_by="drawer")
    BoxFactory.create(opening=opening)
    facts = FitFacts("B1.a", note="snug")
    record = fit_record(
        front=front_of(opening), facts=facts, hung="", fingerprint="", by=owner, at=NOW
    )
    opening_change(opening=opening, closed_by="fixed", at=NOW, by=owner)

    assert told() == ["box 1 of B1.a"]
    assert fit_records_of(job) == {"B1.a": record}


def test_a_change_that_takes_nothing_tells_of_nothing(cabinet: Cabinet, owner: Person) -> None:
    """Though a check holds no more by it: that is the order's to say."""
    checked(cabinet.job, HINGES, owner)
    opening_change(opening=Opening.objects.get(label="a"), closed_by="fixed", at=NOW, by=owner)

    assert told() == []


def test_a_box_goes_with_its_holes(cabinet: Cabinet, owner: Person) -> None:
    """Its front stays."""
    box = Box.objects.get()
    pins = ShelfPins(inches(1), inches(1), inches(1), 3)
    shelf_pins_set(box=box, rows=[pins], at=NOW, by=owner)
    box_remove(front=box.front, at=NOW, by=owner)

    assert told() == ["its shelf-pin holes"]
    assert Front.objects.filter(opening__label="b").exists()


def test_a_jobs_own_stock_goes(job: Job, owner: Person) -> None:
    """The shop's holds again."""
    stock_set(owner=job, screw_lengths=[inches(1)], at=NOW, by=owner)
    stock_clear(job=job, at=NOW, by=owner)

    assert told() == ["this job's own lengths"]
