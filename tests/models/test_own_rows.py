"""What each table refuses of a row by itself, at the field that is wrong."""

from fractions import Fraction

import pytest
from django.core.exceptions import ValidationError
from django.db import IntegrityError, transaction

from fronts.models import (
    Box,
    Cabinet,
    DoorOnHand,
    JobStandard,
    Opening,
    ShelfPins,
    ShopNumber,
    ShopStandard,
    Stock,
)
from fronts.rules.kitchen import CHOOSE
from fronts.rules.practice import inches
from fronts.services.saving import checked
from shopjobs.models import Job, Shop
from tests.factories import (
    BoxFactory,
    CabinetFactory,
    DoorOnHandFactory,
    OpeningFactory,
    ShelfPinsFactory,
)


def fields_at_fault(row: Cabinet | DoorOnHand | Opening | Box | JobStandard) -> set[str]:
    """The names of the fields that are wrong; none where the row is right."""
    try:
        checked(row)
    except ValidationError as error:
        return set(error.message_dict)
    return set()


def test_a_group_is_given_whole_or_not_at_all() -> None:
    """Each missing part of an overlay, a reveal or an inset gap is named."""
    some = Fraction(3)

    assert fields_at_fault(JobStandard(overlay_left=some, overlay_top=some)) == {
        "overlay_right",
        "overlay_bottom",
    }
    assert fields_at_fault(JobStandard(reveal_between=some)) == {
        "reveal_left",
        "reveal_right",
        "reveal_top",
        "reveal_bottom",
    }
    assert fields_at_fault(JobStandard(inset_left=some, inset_right=some, inset_top=some)) == {
        "inset_bottom"
    }


def test_overlay_and_reveal_exclude_each_other() -> None:
    """One level says how far fronts lap in one way."""
    some = Fraction(3)
    both = JobStandard(
        overlay_left=some, overlay_right=some, overlay_top=some, overlay_bottom=some,
        reveal_between=some, reveal_left=some, reveal_right=some, reveal_top=some,
        reveal_bottom=some,
    )  # fmt: skip

    assert fields_at_fault(both) == {"reveal_between"}


def test_a_level_may_say_nothing() -> None:
    """Every key is left to the farther level."""
    assert fields_at_fault(JobStandard()) == set()


@pytest.mark.parametrize(
    ("changes", "fields"),
    [
        ({"closed_by": "pair", "hinged": "left"}, {"hinged"}),
        ({"closed_by": "drawers", "hinged": "", "count": 0}, {"count"}),
        ({"closed_by": "drawers", "hinged": "", "count": 21}, {"count"}),
        ({"closed_by": "drawer", "hinged": "", "count": 2}, {"count"}),
        ({"closed_by": "drawers", "hinged": "", "count": 3, "heights": (inches(6),)}, {"heights"}),
        ({"diagonal_1": inches(31)}, {"diagonal_2"}),
        ({"diagonal_2": inches(31)}, {"diagonal_1"}),
        ({"closed_by": "curtain"}, {"closed_by", "hinged"}),
        ({"width": inches(0)}, {"width"}),
        ({"x": inches(-1)}, {"x"}),
        ({"label": ""}, {"label"}),
        ({"front_material": "a\nb"}, {"front_material"}),
    ],
)
def test_an_opening_is_refused_at_its_fields(
    job: Job, changes: dict[str, object], fields: set[str]
) -> None:
    """What contradicts itself or is no size."""
    opening = OpeningFactory.create(cabinet__job=job)
    for name, value in changes.items():
        setattr(opening, name, value)

    assert fields_at_fault(opening) == fields


def test_a_named_door_and_a_chosen_one_exclude_each_other(job: Job) -> None:
    """A front is made from one door."""
    opening = OpeningFactory.create(cabinet__job=job, front_door=DoorOnHandFactory.create(job=job))
    opening.front_choose = True

    assert fields_at_fault(opening) == {"front_choose"}


def test_a_box_stands_behind_a_front_that_is_there(job: Job) -> None:
    """A door has no box, a stack has one a front."""
    cabinet = CabinetFactory.create(job=job)
    stack = OpeningFactory.create(cabinet=cabinet, closed_by="drawers", count=2)
    box = BoxFactory.create(opening=stack, index=1)
    box.index = 2

    assert fields_at_fault(box) == {"__all__"}

    stack.closed_by, box.index = "door", 0
    assert fields_at_fault(box) == {"__all__"}


@pytest.mark.parametrize(
    ("changes", "fields"),
    [
        ({"label": CHOOSE}, {"label"}),
        ({"knob_x": inches(1)}, {"knob_y"}),
        ({"knob_y": inches(1)}, {"knob_x"}),
        ({"knob_diameter": inches(1, 4)}, {"knob_x"}),
        ({"bore_diameter": inches(0)}, {"bore_diameter"}),
        ({"build": "louvred"}, {"build"}),
    ],
)
def test_a_door_is_refused_at_its_fields(
    job: Job, changes: dict[str, object], fields: set[str]
) -> None:
    """A knob hole has both its places; one word has a meaning of its own."""
    door = DoorOnHandFactory.create(job=job)
    for name, value in changes.items():
        setattr(door, name, value)

    assert fields_at_fault(door) == fields


def test_a_stock_has_a_length_in_every_place(shop: Shop) -> None:
    """Blanks are for heights only."""
    with pytest.raises(ValidationError) as refused:
        checked(Stock(shop=shop, slide_lengths=[inches(20), None]))

    assert set(refused.value.message_dict) == {"slide_lengths"}


def test_a_number_is_one_that_the_shop_has(shop: Shop) -> None:
    """Its name is a field of the shop's practice."""
    with pytest.raises(ValidationError) as refused:
        checked(ShopNumber(shop=shop, name="shoe_size", value=9))

    assert set(refused.value.message_dict) == {"name"}


def test_the_database_itself_keeps_labels_apart(job: Job) -> None:
    """Even where two people save at the same moment."""
    cabinet = CabinetFactory.create(job=job)
    opening = OpeningFactory.create(cabinet=cabinet, closed_by="drawer")
    BoxFactory.create(opening=opening)
    DoorOnHandFactory.create(job=job)
    for table in (Cabinet, Opening, Box, DoorOnHand):
        twin = table._default_manager.get()
        twin.pk = None
        twin._state.adding = True
        with pytest.raises(IntegrityError), transaction.atomic():
            twin.save()


def test_one_standard_and_one_stock_a_shop(shop: Shop) -> None:
    """A second row could not be told from the first."""
    for table in (ShopStandard, Stock):
        table._default_manager.create(shop=shop)
        with pytest.raises(IntegrityError), transaction.atomic():
            table._default_manager.create(shop=shop)


def test_a_job_goes_with_all_that_was_entered_for_it(job: Job) -> None:
    """Also where an opening names a door of the same job."""
    opening = OpeningFactory.create(
        cabinet__job=job,
        closed_by="drawer",
        front_door=DoorOnHandFactory.create(job=job),
    )
    ShelfPinsFactory.create(box=BoxFactory.create(opening=opening))
    job.delete()

    for table in (Cabinet, Opening, Box, ShelfPins, DoorOnHand):
        assert not table._default_manager.exists()


def test_rows_say_what_they_are(job: Job) -> None:
    """Each in the words of the drawings."""
    cabinet = CabinetFactory.create(job=job)
    opening = OpeningFactory.create(cabinet=cabinet, closed_by="drawer")

    assert [
        str(each)
        for each in (
            cabinet,
            opening,
            BoxFactory.create(opening=opening),
            DoorOnHandFactory.create(job=job),
        )
    ] == [
        "B1",
        "B1.a",
        "Box 1 of B1.a",
        "D1",
    ]
