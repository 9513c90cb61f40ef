"""What is in stock and the shop's own numbers, at their limits."""

from fractions import Fraction
from typing import Any

import pytest
from django.core.exceptions import ValidationError

from fronts.models import ShopNumber
from fronts.rules.practice import NUMBERS, PRACTICE, inches
from fronts.services.stock import practice_set, stock_clear
from fronts.snapshot import kitchen_of
from shopjobs.models import Job, Revision, Shop
from tests.factories import NOW
from tests.own_ways import own_numbers
from tests.saying import stock_set

LISTS = ["screw_lengths", "knob_screw_lengths", "slide_lengths"]


@pytest.mark.parametrize("name", LISTS)
def test_two_hundred_lengths_lie_in_stock_and_no_more(name: str, shop: Shop, job: Job) -> None:
    """Each list for itself."""
    lengths = [inches(number, 16) for number in range(1, 201)]
    said: dict[str, Any] = {name: lengths}
    stock_set(owner=shop, at=NOW, **said)

    assert getattr(kitchen_of(job).stock, name) == tuple(lengths)
    with pytest.raises(ValidationError) as refused:
        stock_set(owner=shop, at=NOW, **said | {name: [*lengths, inches(20)]})
    assert refused.value.message_dict == {name: ["enter at most 200 lengths"]}


WITHIN = [
    ("spares", "0"), ("spares", "100"), ("stile", "0"), ("stile", "20000"),
    ("stile", "12345.0123456789"), ("hole_move", "0.1"), ("site_celsius", "-20"),
]  # fmt: skip
BEYOND = [
    ("spares", "100.1"), ("stile", "20000.1"), ("stile", "12345.01234567891"),
    ("hole_move", "0"), ("site_celsius", "-21"),
]  # fmt: skip


@pytest.mark.parametrize(("name", "value"), WITHIN)
def test_a_number_is_kept_exactly_up_to_its_limits(
    name: str, value: str, shop: Shop, job: Job
) -> None:
    """The limit itself is within."""
    practice_set(owner=shop, at=NOW, values={name: Fraction(value)})

    assert getattr(kitchen_of(job).practice, name) == Fraction(value)


@pytest.mark.parametrize(("name", "value"), BEYOND)
def test_a_number_beyond_its_limits_is_refused(name: str, value: str, shop: Shop) -> None:
    """Under its name, and nothing is left behind."""
    with pytest.raises(ValidationError) as refused:
        practice_set(owner=shop, at=NOW, values={name: Fraction(value)})

    assert set(refused.value.message_dict) == {name}
    assert not ShopNumber.objects.exists()


def test_the_driest_month_may_be_as_damp_as_the_dampest(shop: Shop, job: Job) -> None:
    """A room whose air is held the same all year."""
    same = {"humidity_low": Fraction(45), "humidity_high": Fraction(45)}
    practice_set(owner=shop, at=NOW, values=same)

    practice = kitchen_of(job).practice
    assert practice.humidity_low == practice.humidity_high == Fraction(45)


def test_a_jobs_numbers_are_held_to_the_shops(shop: Shop, job: Job) -> None:
    """A job can't say a driest month that is damper than its shop's dampest."""
    practice_set(owner=shop, at=NOW, values={"humidity_high": Fraction(50)})

    with pytest.raises(ValidationError):
        practice_set(owner=job, at=NOW, values={"humidity_low": Fraction(51)})


def test_what_changed_is_told_of_whom_it_concerns(shop: Shop, job: Job) -> None:
    """In the diary; the shop's stock can hold again once, and then there is nothing to tell."""
    stock_set(owner=shop, at=NOW, knob_thread="M4")
    stock_set(owner=job, at=NOW, knob_thread="M4")
    practice_set(owner=job, at=NOW, values={"spares": Fraction(6)})
    stock_clear(job=job, at=NOW)
    stock_clear(job=job, at=NOW)

    told = Revision.objects.exclude(text__startswith="Made").order_by("pk")
    assert [(line.text, line.job) for line in told] == [
        ("Changed the shop's stock", None),
        ("Changed the job's stock", job),
        ("Changed the job's own numbers", job),
        ("Took the shop's stock for this job again", job),
    ]


@pytest.mark.parametrize("name", [number.name for number in NUMBERS])
def test_a_job_can_say_the_usual_number_against_its_shop(name: str, shop: Shop, job: Job) -> None:
    """Each of them, exactly: 15 lb/ft² has no end as a decimal of kg/mm²."""
    usual = getattr(PRACTICE, name)
    practice_set(owner=shop, at=NOW, values={name: own_numbers(Fraction(9, 10))[name]})
    assert getattr(kitchen_of(job).practice, name) != usual

    practice_set(owner=job, at=NOW, values={name: usual})

    assert getattr(kitchen_of(job).practice, name) == usual
