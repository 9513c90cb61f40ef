"""Openings, the boxes behind them, and the doors on hand that close them."""

import pytest
from django.core.exceptions import ValidationError

from fronts.models import Box, Front, HingeBore, Opening
from fronts.rules.box_facts import ShelfPins
from fronts.rules.kitchen import Point
from fronts.rules.practice import inches
from fronts.services.boxes import box_remove
from shopjobs.models import Job
from tests.factories import (
    NOW,
    BoxFactory,
    CabinetFactory,
    DoorOnHandFactory,
    JobFactory,
    OpeningFactory,
)
from tests.saying import (
    box_set,
    door_change,
    door_create,
    front_of,
    opening_change,
    shelf_pins_set,
)

PIN = ShelfPins(inches(2), inches(2), inches(1), 4, inches(1, 4))


def test_an_opening_lies_within_its_cabinet(job: Job) -> None:
    """The field says by how much it stands out."""
    with pytest.raises(ValidationError) as refused:
        OpeningFactory.create(cabinet__job=job, width=inches(17), height=inches(30))

    assert refused.value.message_dict == {
        "width": ["the opening ends 1/2 in past cabinet B1"],
        "height": ["the opening ends 1 in past cabinet B1"],
    }


def test_what_a_former_way_of_closing_left_behind_goes(job: Job) -> None:
    """A stack that becomes a door has one front of no height of its own, but it hangs somewhere."""
    cabinet = CabinetFactory.create(job=job)
    stack = OpeningFactory.create(
        cabinet=cabinet, closed_by="drawers", count=2, heights=(inches(6), None)
    )
    opening_change(opening=stack, closed_by="door", at=NOW)
    front = Front.objects.get()

    assert (front.opening, front.position) == (stack, 0)
    assert (front.own_height, front.hinged) == (None, "left")


def test_openings_keep_the_order_that_they_are_given(job: Job) -> None:
    """Last in, last in the list, whatever they are called."""
    cabinet = CabinetFactory.create(job=job)
    for label in ("b", "c", "a"):
        OpeningFactory.create(cabinet=cabinet, label=label, closed_by="open")
    opening_change(opening=Opening.objects.get(label="b"), label="z", at=NOW)

    assert [opening.label for opening in Opening.objects.order_by("position")] == ["z", "c", "a"]


def test_a_label_is_given_once_a_cabinet(job: Job) -> None:
    """Another cabinet may use it again."""
    cabinet = CabinetFactory.create(job=job)
    OpeningFactory.create(cabinet=cabinet)
    OpeningFactory.create(cabinet__job=job, cabinet__label="B2")
    with pytest.raises(ValidationError) as refused:
        OpeningFactory.create(cabinet=cabinet, label="a")

    assert set(refused.value.message_dict) == {"label"}


def test_a_named_door_is_one_of_this_job_and_serves_one_front(job: Job) -> None:
    """Neither another job's door, nor one door for a pair."""
    other = JobFactory.create(shop=job.shop)
    cabinet = CabinetFactory.create(job=job)
    with pytest.raises(ValidationError) as refused:
        OpeningFactory.create(cabinet=cabinet, front_door=DoorOnHandFactory.create(job=other))
    assert set(refused.value.message_dict) == {"door"}

    with pytest.raises(ValidationError) as refused:
        OpeningFactory.create(
            cabinet=cabinet,
            closed_by="pair",
            hinged="",
            front_door=DoorOnHandFactory.create(job=job),
        )

    assert set(refused.value.message_dict) == {"door"}


class TestBoxes:
    """The box behind a front, by its place from the top."""

    def test_a_box_is_entered_and_changed_in_its_place(self, job: Job) -> None:
        """What is not given stays."""
        opening = OpeningFactory.create(cabinet__job=job, closed_by="drawer")
        BoxFactory.create(opening=opening)
        box_set(opening=opening, rise=inches(1), at=NOW)
        box = Box.objects.get()

        assert (box.rise, box.width) == (inches(1), inches(14))

    def test_a_box_needs_a_front_that_stands_on_one(self, job: Job) -> None:
        """A door has none."""
        with pytest.raises(ValidationError):
            BoxFactory.create(opening__cabinet__job=job, opening__closed_by="door")

        assert not Box.objects.exists()

    def test_a_missing_size_is_told_at_its_field(self, job: Job) -> None:
        """A new box has a width."""
        opening = OpeningFactory.create(cabinet__job=job, closed_by="drawer")
        with pytest.raises(ValidationError) as refused:
            box_set(opening=opening, height=inches(6), at=NOW)

        assert set(refused.value.message_dict) == {"width", "front_thickness", "rise"}

    def test_a_box_is_removed(self, job: Job) -> None:
        """Removing what is not there does nothing, not even to the diary."""
        opening = OpeningFactory.create(cabinet__job=job, closed_by="drawer")
        BoxFactory.create(opening=opening)
        box_remove(front=front_of(opening), at=NOW)
        before = Job.objects.get(pk=job.pk).revision
        box_remove(front=front_of(opening), at=NOW)

        assert not Box.objects.exists()
        assert Job.objects.get(pk=job.pk).revision == before

    def test_shelf_pins_are_replaced_whole(self, job: Job) -> None:
        """In the order in which they were given."""
        box = BoxFactory.create(opening__cabinet__job=job, opening__closed_by="drawer")
        shelf_pins_set(box=box, rows=[PIN], at=NOW)
        other = ShelfPins(inches(9), inches(2), inches(1), 6, inches(1, 4))
        shelf_pins_set(box=box, rows=[other, PIN], at=NOW)

        assert [row.count for row in box.shelf_pins.order_by("position")] == [6, 4]

    @pytest.mark.parametrize("count", [0, 501])
    def test_a_wrong_row_is_named_and_the_old_rows_stay(self, job: Job, count: int) -> None:
        """The second row is at fault: nothing of it all is kept."""
        box = BoxFactory.create(opening__cabinet__job=job, opening__closed_by="drawer")
        shelf_pins_set(box=box, rows=[PIN], at=NOW)
        wrong = ShelfPins(inches(2), inches(2), inches(1), count, inches(1, 4))
        with pytest.raises(ValidationError, match="row 2, count"):
            shelf_pins_set(box=box, rows=[PIN, wrong], at=NOW)

        assert box.shelf_pins.count() == 1


class TestDoors:
    """Doors on hand."""

    def test_a_door_keeps_its_bores(self, job: Job) -> None:
        """They are replaced where they are given, and stay where they aren't."""
        bores = [Point(inches(1), inches(3)), Point(inches(1), inches(25))]
        door = door_create(
            job=job, label="D1", width=inches(16), height=inches(28), thickness=inches(3, 4),
            hinge_bores=bores, at=NOW,
        )  # fmt: skip
        door_change(door=door, width=inches(17), at=NOW)
        assert HingeBore.objects.count() == 2

        door_change(door=door, hinge_bores=bores[:1], at=NOW)
        assert HingeBore.objects.count() == 1

    @pytest.mark.parametrize(
        ("changes", "field"),
        [
            ({"knob_x": inches(17), "knob_y": inches(1)}, "knob_x"),
            ({"knob_x": inches(1), "knob_y": inches(29)}, "knob_y"),
            ({"stile": inches(8)}, "stile"),
            ({"rail": inches(57, 4)}, "rail"),
            ({"hinge_bores": [Point(inches(17), inches(1))]}, "hinge_bores"),
        ],
    )
    def test_what_is_in_a_door_lies_on_it(
        self, job: Job, changes: dict[str, object], field: str
    ) -> None:
        """A hole beside the door was mistyped."""
        door = DoorOnHandFactory.create(job=job)
        with pytest.raises(ValidationError) as refused:
            door_change(door=door, at=NOW, **changes)  # type: ignore[arg-type]

        assert set(refused.value.message_dict) == {field}
