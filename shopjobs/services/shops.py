"""Making and changing a shop."""

from contextlib import AbstractContextManager
from datetime import datetime
from decimal import Decimal

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
    """Make a shop; its name is not yet any other's."""
    with _taken(name):
        return Shop.objects.create(name=name, unit=unit, step=step, paper=paper)


@recorded
def shop_change(
    *, shop: Shop, name: str, unit: str, step: Decimal, paper: str, by: Person, at: datetime
) -> Shop:
    """Change a shop's name and habits. Jobs that there are keep their own unit and step."""
    shop.name, shop.unit, shop.step, shop.paper = name, unit, step, paper
    with _taken(name):
        saved(shop, ["name", "unit", "step", "paper"])
    text = "Changed the shop's settings"
    tell(Told(shop=shop, text=text, at=at, by=by, words=words_of_rows))
    return shop


def _taken(name: str) -> AbstractContextManager[None]:
    words = f"There is already a shop called “{name}”. Give another name."
    return refuse_twice(words, field="name")
