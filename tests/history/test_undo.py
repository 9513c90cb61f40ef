"""Everything that somebody does to a job can be taken back, to the row, and done again."""

import random

import pytest

from fronts import models
from fronts.rules.kitchen import Point
from fronts.rules.practice import inches
from fronts.services.cabinets import cabinet_delete
from fronts.services.history import ChangedSince, revision_undo
from fronts.services.imports import job_import
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person, Revision, Shop
from shopjobs.services.history_steps import steps_of
from shopjobs.services.refused import Refused
from tests.factories import NOW, CabinetFactory, DoorOnHandFactory, OpeningFactory
from tests.history.rows_as_they_stand import state_of_shops
from tests.history.shop_deeds import DEEDS_OF_SHOP
from tests.history.states import DEEDS, do
from tests.kitchen_files import demo_kitchen
from tests.saying import cabinet_change, door_change, opening_change

MANY = 40


@pytest.fixture
def demo(shop: Shop, owner: Person) -> Job:
    """The demo kitchen as a job of the shop's."""
    return job_import(kitchen=demo_kitchen(), shop=shop, at=NOW, by=owner)


@pytest.mark.parametrize("deed", DEEDS)
def test_each_deed_is_taken_back_and_done_again(deed: str, demo: Job, owner: Person) -> None:
    """Every row is as it was, with its key; then as it was after."""
    chance = random.Random(7)
    for other in ("close_otherwise", "box_behind", "fit_front", "stock_of_job", "check_line"):
        do(other, demo, owner, chance)
    before, told = state_of_shops(), Revision.objects.count()
    for _ in range(20):
        do(deed, demo, owner, chance)
        if Revision.objects.count() > told:
            break
    after = state_of_shops()
    assert after != before

    undo(demo, owner)
    assert state_of_shops() == before
    redo(demo, owner)
    assert state_of_shops() == after


@pytest.mark.parametrize("deed", DEEDS_OF_SHOP)
def test_each_deed_of_the_shop_is_taken_back_and_done_again(
    deed: str, demo: Job, owner: Person, office: Person
) -> None:
    """What holds for all jobs, and people: the same, in the shop's own history."""
    shop, chance = demo.shop, random.Random(7)
    do(deed, demo, owner, chance)
    before = state_of_shops()
    for _ in range(20):
        do(deed, demo, owner, chance)
        after = state_of_shops()
        if after != before:
            break
    assert after != before

    undo(shop, owner)
    assert state_of_shops() == before
    redo(shop, owner)
    assert state_of_shops() == after


@pytest.mark.parametrize("seed", range(3))
def test_any_row_of_deeds_is_taken_back_step_by_step(seed: int, demo: Job, owner: Person) -> None:
    """As many steps as one likes, and all of them again."""
    chance = random.Random(seed)
    states = [state_of_shops()]
    while len(states) <= MANY:
        do(chance.choice(list(DEEDS)), demo, owner, chance)
        state = state_of_shops()
        if state != states[-1]:
            states.append(state)

    for state in reversed(states[:-1]):
        undo(demo, owner)
        assert state_of_shops() == state
    for state in states[1:]:
        redo(demo, owner)
        assert state_of_shops() == state
    assert steps_of(demo, owner).redo is None


def test_an_import_over_a_job_is_one_step(demo: Job, owner: Person) -> None:
    """The kitchen that was there comes back, with the same keys."""
    before, kitchen = state_of_shops(), kitchen_of(demo)
    job_import(kitchen=kitchen, shop=demo.shop, at=NOW, by=owner, replace=True)
    assert state_of_shops() != before

    undo(demo, owner)

    assert state_of_shops() == before


def test_a_new_deed_ends_what_could_be_done_again(demo: Job, owner: Person) -> None:
    """Undone, then something else done: there is nothing to do again."""
    cabinet = models.Cabinet.objects.filter(job=demo).first()
    assert cabinet is not None
    cabinet_change(cabinet=cabinet, depth=inches(25), at=NOW, by=owner)
    undo(demo, owner)
    assert steps_of(demo, owner).redo is not None

    cabinet_change(cabinet=cabinet, depth=inches(26), at=NOW, by=owner)

    assert steps_of(demo, owner).redo is None


def test_what_was_left_as_it_was_is_no_step(demo: Job, owner: Person) -> None:
    """Saving a form unchanged leaves no line."""
    told = Revision.objects.count()
    cabinet = models.Cabinet.objects.filter(job=demo).first()
    assert cabinet is not None
    cabinet_change(cabinet=cabinet, width=cabinet.width, at=NOW, by=owner)

    assert Revision.objects.count() == told


def test_everybody_goes_through_what_they_did(job: Job, owner: Person, office: Person) -> None:
    """One's own comes back; the other's stays, and is said to be the other's."""
    cabinet = CabinetFactory.create(job=job, by=owner)
    cabinet_change(cabinet=cabinet, width=inches(20), at=NOW, by=owner)
    cabinet_change(cabinet=cabinet, depth=inches(20), at=NOW, by=office)
    steps = steps_of(job, owner)

    assert steps.undo is not None
    assert steps.undo.text == "B1: width 18 → 20"
    assert steps.theirs is not None
    assert steps.theirs.text == "B1: depth 24 → 20"
    revision_undo(revision=steps.undo, at=NOW, by=owner)
    cabinet.refresh_from_db()
    assert (cabinet.width, cabinet.depth) == (inches(18), inches(20))


def test_what_somebody_changed_since_is_said_before_it_goes(
    job: Job, owner: Person, office: Person
) -> None:
    """Who, when and what; it goes once that is confirmed."""
    cabinet = CabinetFactory.create(job=job, by=owner)
    cabinet_change(cabinet=cabinet, width=inches(20), at=NOW, by=owner)
    mine = steps_of(job, owner).undo
    cabinet_change(cabinet=cabinet, width=inches(21), at=NOW, by=office)
    assert mine is not None

    with pytest.raises(ChangedSince) as asked:
        revision_undo(revision=mine, at=NOW, by=owner)
    (line,) = asked.value.dependents
    assert line.startswith(f"B1, width: by {office.shown_name}, ")
    assert "B1: width 20 → 21" in line
    cabinet.refresh_from_db()
    assert cabinet.width == inches(21)

    revision_undo(revision=mine, at=NOW, by=owner, confirmed=True)
    cabinet.refresh_from_db()
    assert cabinet.width == inches(18)


def test_what_came_into_a_cabinet_since_is_said(job: Job, owner: Person, office: Person) -> None:
    """Taking back that a cabinet was entered would take another's opening with it."""
    cabinet = CabinetFactory.create(job=job, by=owner)
    mine = steps_of(job, owner).undo
    OpeningFactory.create(cabinet=cabinet, by=office)
    assert mine is not None

    with pytest.raises(ChangedSince) as asked:
        revision_undo(revision=mine, at=NOW, by=owner)
    assert any(office.shown_name in line for line in asked.value.dependents)


def test_what_has_no_place_any_more_is_refused(job: Job, owner: Person) -> None:
    """A label that another has by now, a cabinet that is gone, an opening that would stick out."""
    cabinet = CabinetFactory.create(job=job, by=owner)
    opening = OpeningFactory.create(cabinet=cabinet, by=owner)
    opening_change(opening=opening, height=inches(20), at=NOW, by=owner)
    lower = newest()
    cabinet_change(cabinet=cabinet, height=inches(26), at=NOW, by=owner)
    with pytest.raises(Exception, match="past cabinet"):
        revision_undo(revision=lower, at=NOW, by=owner)

    cabinet_delete(cabinet=cabinet, at=NOW, by=owner)
    gone = newest()
    with pytest.raises(Refused, match="is gone"):
        revision_undo(revision=lower, at=NOW, by=owner, confirmed=True)
    CabinetFactory.create(job=job, label="B1", by=owner)
    with pytest.raises(Refused, match="another cabinet in its place"):
        revision_undo(revision=gone, at=NOW, by=owner)


def undo(of: Job | Shop, by: Person) -> None:
    """One step back."""
    step = steps_of(of, by).undo
    assert step is not None
    revision_undo(revision=step, at=NOW, by=by)


def redo(of: Job | Shop, by: Person) -> None:
    """One step on again."""
    step = steps_of(of, by).redo
    assert step is not None
    revision_undo(revision=step, at=NOW, by=by)


def newest() -> Revision:
    """What was done last."""
    revision = Revision.objects.order_by("-pk").first()
    assert revision is not None
    return revision


def test_bores_that_nobody_touched_stay_as_they_are(job: Job, owner: Person) -> None:
    """A wider door is told by its width alone, and its bores are the same rows."""
    door = DoorOnHandFactory.create(job=job, hinge_bores=[Point(inches(1), inches(3))], by=owner)
    (bore,) = models.HingeBore.objects.all()

    door_change(door=door, width=inches(17), at=NOW, by=owner)

    assert newest().text == "D1: width 16 → 17"
    assert list(models.HingeBore.objects.all()) == [bore]
