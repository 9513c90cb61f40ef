"""Making and changing a shop."""

from contextlib import AbstractContextManager
from datetime import datetime
from decimal import Decimal

from django.conf import settings
from django.utils.module_loading import import_string

from shopjobs.models import Person, Shop
from shopjobs.models.shop import SIXTEENTH, Paper, Unit
from shopjobs.services.change_words import words_of_rows
from shopjobs.services.recording import Told, recorded, saved, tell
from shopjobs.services.refused import refuse_twice


@recorded
def shop_create(
    *,
    name: str,
    unit: str = Unit.INCH,
    step: Decimal = SIXTEENTH,
    paper: str = Paper.LETTER,
) -> Shop:
    """Make a shop, with the numbers that its unit starts from; its name is no other's yet."""
    with _taken(name):
        shop = Shop.objects.create(name=name, unit=unit, step=step, paper=paper)
    import_string(settings.SHOP_STARTER)(shop=shop, at=shop.created_at)
    return shop


@recorded
def shop_change(
    *, shop: Shop, name: str, unit: str, step: Decimal, paper: str, by: Person, at: datetime
) -> Shop:
    """Change a shop's name and habits. Jobs that there are keep their own unit and step.

    Without any job, and without numbers of its own, it starts from those of its new unit.
    """
    other_unit = unit != shop.unit
    shop.name, shop.unit, shop.step, shop.paper = name, unit, step, paper
    with _taken(name):
        saved(shop, ["name", "unit", "step", "paper"])
    if other_unit:
        import_string(settings.SHOP_STARTER)(shop=shop, at=at, by=by)
    text = "Changed the shop's settings"
    tell(Told(shop=shop, text=text, at=at, by=by, words=words_of_rows))
    return shop


def _taken(name: str) -> AbstractContextManager[None]:
    words = f"There is already a shop called “{name}”. Give another name."
    return refuse_twice(words, field="name")
