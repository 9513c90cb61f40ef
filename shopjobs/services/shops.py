"""Making and changing a shop."""

from contextlib import AbstractContextManager
from datetime import datetime
from decimal import Decimal

from django.db import transaction

from shopjobs.models import Person, Shop
from shopjobs.models.shop import SIXTEENTH, Paper, Unit
from shopjobs.services.diary import diary_write
from shopjobs.services.refused import refuse_twice


@transaction.atomic
def shop_create(
    *,
    name: str,
    unit: str = Unit.INCH,
    step: Decimal = SIXTEENTH,
    paper: str = Paper.LETTER,
) -> Shop:
    """Make a shop; its name is not yet any other's."""
    with _taken(name):
        return Shop.objects.create(name=name, unit=unit, step=step, paper=paper)


@transaction.atomic
def shop_change(
    *, shop: Shop, name: str, unit: str, step: Decimal, paper: str, by: Person, at: datetime
) -> Shop:
    """Change a shop's name and habits. Jobs that there are keep their own unit and step."""
    shop.name, shop.unit, shop.step, shop.paper = name, unit, step, paper
    with _taken(name):
        shop.save(update_fields=["name", "unit", "step", "paper"])
    diary_write(shop=shop, text="Changed the shop's settings", at=at, person=by)
    return shop


def _taken(name: str) -> AbstractContextManager[None]:
    words = f"There is already a shop called “{name}”. Give another name."
    return refuse_twice(words, field="name")
