"""What a shop that works in millimetres starts with."""

from decimal import Decimal
from typing import Any

import pytest

from fronts.models import ShopNumber, ShopStandard, Stock
from fronts.rules.lengths import Mm
from fronts.rules.metric import METRIC_NUMBERS, METRIC_STANDARD, METRIC_STOCK
from fronts.rules.practice import PRACTICE
from fronts.rules.standard_keys import Standard
from fronts.rules.standards import COMMON_STOCK, EMPTY
from fronts.services.history import revision_undo
from fronts.services.standards import standard_set
from fronts.services.stock import practice_set
from fronts.snapshot.standards import standard_of
from fronts.snapshot.stock import practice_in_force, stock_in_force
from shopjobs.models import Person, Revision, Shop
from shopjobs.services.shops import shop_change
from tests.factories import NOW
from tests.factories.shops import JobFactory, PersonFactory, ShopFactory

MILLIMETRE = Decimal("1.00000000")

pytestmark = pytest.mark.django_db


def _owner() -> tuple[Person, Shop]:
    shop = ShopFactory.create()
    return PersonFactory.create(shop=shop, owner=True), shop


def _said(shop: Shop) -> Any:
    return standard_of(ShopStandard.objects.filter(shop=shop).first())


def _in_millimetres(shop: Shop, by: Person) -> None:
    shop_change(
        shop=shop, name=shop.name, unit="mm", step=MILLIMETRE, paper=shop.paper, by=by, at=NOW
    )


def _says_nothing(shop: Shop) -> bool:
    return (
        _said(shop) == EMPTY
        and stock_in_force(shop) == COMMON_STOCK
        and practice_in_force(shop) == PRACTICE
    )


def test_a_metric_shop_starts_metric() -> None:
    """Its standard, stock and numbers are round millimetres; another shop's are not touched."""
    other, shop = ShopFactory.create(), ShopFactory.create(unit="mm", step=MILLIMETRE)
    numbers = practice_in_force(shop)

    assert _said(shop) == METRIC_STANDARD
    assert stock_in_force(shop) == METRIC_STOCK
    assert {name: getattr(numbers, name) for name in METRIC_NUMBERS} == METRIC_NUMBERS
    assert _says_nothing(other)


def test_a_shop_that_turns_metric_before_its_first_job() -> None:
    """It starts metric; one Undo takes the unit and the numbers back."""
    owner, shop = _owner()
    _in_millimetres(shop, owner)
    assert _said(shop).hinge_end == Mm(100)

    latest = Revision.objects.filter(shop=shop).latest("pk")
    revision_undo(revision=latest, at=NOW, by=owner)

    assert Shop.objects.get(pk=shop.pk).unit == "in"
    assert _says_nothing(shop)


def test_what_jobs_were_reckoned_with_stays() -> None:
    """A shop with a job keeps its numbers when its unit changes."""
    owner, shop = _owner()
    JobFactory.create(shop=shop)
    _in_millimetres(shop, owner)

    assert _says_nothing(shop)


def test_what_a_shop_said_itself_stays() -> None:
    """Its own gap, its own ledge; only its stock, of which it said nothing, starts metric."""
    owner, shop = _owner()
    own = Standard(gap_between=Mm(4))
    standard_set(owner=shop, standard=own, at=NOW, by=owner)
    practice_set(owner=shop, values={"ledge_thickness": Mm(9)}, at=NOW, by=owner)
    _in_millimetres(shop, owner)

    assert _said(shop) == own
    assert ShopNumber.objects.filter(shop=shop).count() == 1
    assert Stock.objects.get(shop=shop).knob_thread == "M4"
