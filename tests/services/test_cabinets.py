"""Cabinets: entered, changed, put in order, copied."""

from dataclasses import replace
from fractions import Fraction

import pytest
from django.core.exceptions import ValidationError

from fronts.models import Cabinet, Opening
from fronts.rules.box_facts import ShelfPins
from fronts.rules.practice import inches
from fronts.services.cabinets import cabinet_copy
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Person, Revision
from tests.factories import NOW, BoxFactory, CabinetFactory, DoorOnHandFactory, OpeningFactory
from tests.saying import cabinet_change, opening_change, shelf_pins_set


def labels_of(job: Job) -> list[str]:
    """The job's cabinets in their order."""
    return [each.label for each in Cabinet.objects.filter(job=job).order_by("position")]


def test_a_change_is_counted_and_told(job: Job, owner: Person) -> None:
    """The job's revision goes up, and history says who did what and when."""
    cabinet = CabinetFactory.create(job=job)
    before = job.revision
    cabinet_change(cabinet=cabinet, width=inches(21), by=owner, at=NOW)
    line = Revision.objects.order_by("pk").last()

    assert Job.objects.get(pk=job.pk).revision == before + 1
    assert line is not None
    assert (line.text, line.person, line.job, line.at) == (
        "B1: width 18 → 21",
        owner,
        job,
        NOW,
    )


def test_what_is_not_given_stays(job: Job) -> None:
    """A change names what it changes."""
    cabinet = CabinetFactory.create(job=job)
    cabinet_change(cabinet=cabinet, depth=inches(22), at=NOW)
    found = Cabinet.objects.get()

    assert (found.width, found.depth) == (inches(18), inches(22))


def test_a_label_is_given_once_a_job(job: Job) -> None:
    """The second one is refused at its field, and nothing is kept of it."""
    CabinetFactory.create(job=job)
    with pytest.raises(ValidationError) as refused:
        CabinetFactory.create(job=job, label="B1")

    assert set(refused.value.message_dict) == {"label"}
    assert Cabinet.objects.count() == 1


def test_every_fault_is_told_at_once(job: Job) -> None:
    """One message a field, so that nobody is sent round in circles."""
    with pytest.raises(ValidationError) as refused:
        CabinetFactory.create(
            job=job, label="", width=inches(0), depth=Fraction(1, 3), kind="shelf"
        )

    assert set(refused.value.message_dict) == {"label", "width", "depth", "kind"}


def test_a_cabinet_stays_larger_than_its_openings(job: Job) -> None:
    """Where no words say how they stand: which opening, what it is left, and what would do."""
    cabinet = CabinetFactory.create(job=job)
    OpeningFactory.create(cabinet=cabinet, x=inches(1), width=inches(31, 2))
    with pytest.raises(ValidationError) as refused:
        cabinet_change(cabinet=cabinet, width=inches(16), at=NOW)

    assert refused.value.message_dict == {
        "width": [
            "16 in leaves opening B1.a 15 in of its width of 15 1/2 in; "
            "16 1/2 in would do, or change the opening first"
        ]
    }
    assert Cabinet.objects.get().width == inches(18)


def test_a_new_cabinet_comes_last(job: Job) -> None:
    """The order is the one that people give."""
    for label in ("B1", "B2", "B3"):
        CabinetFactory.create(job=job, label=label)
    assert [each.position for each in Cabinet.objects.order_by("pk")] == [0, 1, 2]


def test_a_copy_has_all_but_the_one_door(job: Job) -> None:
    """Openings, boxes and pins come along; the named door stays, there is only one of it."""
    cabinet = CabinetFactory.create(job=job)
    opening = OpeningFactory.create(
        cabinet=cabinet, closed_by="pull-out", front_door=DoorOnHandFactory.create(job=job)
    )
    pins = ShelfPins(inches(2), inches(2), inches(1), 4, inches(1, 4))
    shelf_pins_set(box=BoxFactory.create(opening=opening), rows=[pins], at=NOW)
    OpeningFactory.create(cabinet=cabinet, label="b", closed_by="fixed", front_choose=True)
    cabinet_copy(cabinet=cabinet, label="B2", x=inches(18), at=NOW)

    first, second = kitchen_of(job).cabinets
    assert (second.label, second.x, second.width) == ("B2", inches(18), first.width)
    assert [each.label for each in second.openings] == ["a", "b"]
    (boxed,), (copied,) = first.openings[0].fronts, second.openings[0].fronts
    assert (boxed.door_on_hand, copied.door_on_hand) == ("D1", None)
    assert copied == replace(boxed, door_on_hand=None)
    assert copied.box is not None
    assert copied.box.shelf_pins == (pins,)
    assert second.openings[1].fronts[0].door_on_hand == "choose"


def test_a_copy_under_a_taken_label_changes_nothing(job: Job) -> None:
    """All of it, or none of it."""
    cabinet = CabinetFactory.create(job=job)
    OpeningFactory.create(cabinet=cabinet)
    with pytest.raises(ValidationError):
        cabinet_copy(cabinet=cabinet, label="B1", x=inches(18), at=NOW)

    assert (Cabinet.objects.count(), Opening.objects.count()) == (1, 1)


def test_no_two_fronts_get_one_name(job: Job) -> None:
    """`B1` with opening `a.1` would be called like the first drawer of `B1.a`."""
    cabinet = CabinetFactory.create(job=job)
    OpeningFactory.create(cabinet=cabinet, closed_by="drawers", count=2)
    other = CabinetFactory.create(job=job, label="B1.a", x=inches(18))
    with pytest.raises(ValidationError) as refused:
        OpeningFactory.create(cabinet=other, label="1")

    assert "B1.a.1" in refused.value.message_dict["label"][0]


def test_a_new_label_gives_no_two_fronts_one_name(job: Job) -> None:
    """Nor does a cabinet that is called otherwise."""
    OpeningFactory.create(cabinet=CabinetFactory.create(job=job), closed_by="drawers", count=2)
    other = CabinetFactory.create(job=job, label="B2", x=inches(18))
    OpeningFactory.create(cabinet=other, label="1")

    with pytest.raises(ValidationError) as refused:
        cabinet_change(cabinet=other, label="B1.a", at=NOW)

    assert "B1.a.1" in refused.value.message_dict["label"][0]


def test_one_drawer_more_gives_no_two_fronts_one_name(job: Job) -> None:
    """`B1.a` with one drawer has no front called `B1.a.2`; with two it has."""
    stack = OpeningFactory.create(
        cabinet=CabinetFactory.create(job=job), closed_by="drawers", count=1
    )
    other = CabinetFactory.create(job=job, label="B1.a", x=inches(18))
    OpeningFactory.create(cabinet=other, label="2")

    with pytest.raises(ValidationError) as refused:
        opening_change(opening=stack, count=2, at=NOW)

    assert "B1.a.2" in refused.value.message_dict["label"][0]


def test_a_box_has_fifty_rows_of_holes_and_no_more(job: Job) -> None:
    """The fiftieth is kept; the next is one too many."""
    opening = OpeningFactory.create(cabinet=CabinetFactory.create(job=job), closed_by="pull-out")
    box = BoxFactory.create(opening=opening)
    rows = [ShelfPins(inches(n, 4), inches(1), inches(1), 2, inches(1, 4)) for n in range(1, 52)]
    shelf_pins_set(box=box, rows=rows[:50], at=NOW)

    with pytest.raises(ValidationError, match="at most 50 rows"):
        shelf_pins_set(box=box, rows=rows, at=NOW)
    assert box.shelf_pins.count() == 50
