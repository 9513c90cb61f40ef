"""What each table refuses of a row by itself, at the field that is wrong."""

from typing import TypeVar

import pytest
from django.core.exceptions import ValidationError
from django.db import IntegrityError, transaction
from django.db.models import Model

from fronts.models import (
    Box,
    Cabinet,
    DoorOnHand,
    Front,
    JobStandard,
    Opening,
    ShelfPins,
    ShopNumber,
    ShopStandard,
    Stock,
)
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
from tests.saying import front_of

AnyRow = TypeVar("AnyRow", bound=Model)


def fields_at_fault(row: Model) -> set[str]:
    """The names of the fields that are wrong; none where the row is right."""
    try:
        checked(row)
    except ValidationError as error:
        return set(error.message_dict)
    return set()


def altered(row: AnyRow, changes: dict[str, object]) -> AnyRow:
    """The row with these values entered."""
    for name, value in changes.items():
        setattr(row, name, value)
    return row


def test_a_level_may_say_nothing() -> None:
    """Every key is left to the farther level."""
    assert fields_at_fault(JobStandard()) == set()


@pytest.mark.parametrize(
    ("changes", "fields"),
    [
        ({"closed_by": "curtain"}, {"closed_by"}),
        ({"width": inches(0)}, {"width"}),
        ({"x": inches(-1)}, {"x"}),
        ({"label": ""}, {"label"}),
        ({"measured_diagonal_1": inches(0)}, {"measured_diagonal_1"}),
    ],
)
def test_an_opening_is_refused_at_its_fields(
    job: Job, changes: dict[str, object], fields: set[str]
) -> None:
    """What is no word that it knows, and no size."""
    opening = OpeningFactory.create(cabinet__job=job)

    assert fields_at_fault(altered(opening, changes)) == fields


@pytest.mark.parametrize(
    ("changes", "fields"),
    [
        ({"own_height": inches(0)}, {"own_height"}),
        ({"thickness": inches(-1)}, {"thickness"}),
        ({"shift_x": inches(-1), "shift_y": inches(0)}, set()),
        ({"build": "louvred"}, {"build"}),
        ({"hinged": "middle"}, {"hinged"}),
        ({"material": "a\nb"}, {"material"}),
    ],
)
def test_a_front_is_refused_at_its_fields(
    job: Job, changes: dict[str, object], fields: set[str]
) -> None:
    """A front may be moved to either side; it is never of no size."""
    front = front_of(OpeningFactory.create(cabinet__job=job))

    assert fields_at_fault(altered(front, changes)) == fields


def test_the_database_itself_has_a_front_made_from_one_door(job: Job) -> None:
    """Named, or chosen from those on hand; not both."""
    front = front_of(
        OpeningFactory.create(cabinet__job=job, front_door=DoorOnHandFactory.create(job=job))
    )
    front.choose = True

    with pytest.raises(IntegrityError), transaction.atomic():
        front.save()


@pytest.mark.parametrize("count", [0, 501])
def test_a_row_of_shelf_pins_has_holes(job: Job, count: int) -> None:
    """One at least, and no more than any box front has room for."""
    pins = ShelfPins(
        box=BoxFactory.create(opening__cabinet__job=job, opening__closed_by="drawer"),
        x=inches(1), y=inches(1), pitch=inches(1), count=count,
    )  # fmt: skip

    assert fields_at_fault(pins) == {"count"}


@pytest.mark.parametrize(
    ("changes", "fields"),
    [
        ({"label": " D1"}, {"label"}),
        ({"knob_diameter": inches(0)}, {"knob_diameter"}),
        ({"bore_diameter": inches(0)}, {"bore_diameter"}),
        ({"build": "louvred"}, {"build"}),
    ],
)
def test_a_door_is_refused_at_its_fields(
    job: Job, changes: dict[str, object], fields: set[str]
) -> None:
    """A label without space around it, sizes above zero, a build that there is."""
    door = DoorOnHandFactory.create(job=job)

    assert fields_at_fault(altered(door, changes)) == fields


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
    for table in (Cabinet, Opening, Front, Box, DoorOnHand):
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
    """Also where a front names a door of the same job."""
    opening = OpeningFactory.create(
        cabinet__job=job,
        closed_by="drawer",
        front_door=DoorOnHandFactory.create(job=job),
    )
    ShelfPinsFactory.create(box=BoxFactory.create(opening=opening))
    job.delete()

    for table in (Cabinet, Opening, Front, Box, ShelfPins, DoorOnHand):
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
            front_of(opening),
            BoxFactory.create(opening=opening),
            DoorOnHandFactory.create(job=job),
        )
    ] == [
        "B1",
        "B1.a",
        "Front 1 of B1.a",
        "Box 1 of B1.a",
        "D1",
    ]
