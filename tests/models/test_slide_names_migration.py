"""Slides that were bought under two names, by the unit of the job, are bought under one."""

from decimal import Decimal
from typing import Any

import pytest

from fronts.models import HardwareList, SlideItem
from fronts.rules.lengths import Mm
from tests.factories import ShopFactory
from tests.models.steps import migrated, newest

pytestmark = pytest.mark.thorough

BEFORE = ("fronts", "0030_budgets")


def test_names_by_the_unit_of_a_job_become_the_one_of_the_list(now: Any) -> None:
    """Offers come along; of two names the offers stand together, each once."""
    shop = ShopFactory.create()
    listed = HardwareList.objects.create(shop=shop)
    SlideItem.objects.create(
        hardware=listed,
        code="S-1",
        kind="side",
        lengths=(Mm(450), Mm("457.2")),
        load_kg=Decimal(40),
    )
    before = migrated(BEFORE)
    goods, offers = before("fronts", "Goods").objects, before("fronts", "Offer").objects
    supplier = before("fronts", "Supplier").objects.create(shop_id=shop.pk, name="Northfield")
    for name in (
        "slide S-1, 457.2 mm", "slide S-1, 18 in", "slide S-1, ≈17 23/32 in", "slide X, 500 mm",
        "slide screw", "slide Y, ≈19 11/16 in",
    ):  # fmt: skip
        row = goods.create(shop_id=shop.pk, name=name)
        for code in ("A", name[-6:]):
            offers.create(
                goods=row, supplier=supplier, code=code, price=Decimal(9), currency="USD",
                place=offers.count(),
            )  # fmt: skip

    after = newest()

    named = after("fronts", "Goods").objects.order_by("name")
    assert [(row.name, [each.code for each in row.offers.order_by("place")]) for row in named] == [
        ("slide S-1, 18 in", ["A", " 18 in", "7.2 mm"]),
        ("slide S-1, 450 mm", ["A", "/32 in"]),
        ("slide X, 500 mm", ["A", "500 mm"]),
        ("slide Y, ≈19 11/16 in", ["A", "/16 in"]),
        ("slide screw", ["A", " screw"]),
    ]
