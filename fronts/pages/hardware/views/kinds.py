"""The kinds of item that a list has: each with its form and its drawing, by its word."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from django.db.models import QuerySet
from django.utils.safestring import SafeString, mark_safe

from fronts.drawings.band_item import band_item_drawing
from fronts.drawings.handle_item import handle_item_drawing
from fronts.drawings.hinge_item import hinge_item_drawing
from fronts.drawings.lift_item import lift_item_drawing
from fronts.drawings.slide_item import slide_item_drawing
from fronts.models import HardwareList
from fronts.models.items import item_table
from fronts.models.kept import order_of
from fronts.pages.hardware.forms.items import (
    BandForm,
    HandleForm,
    HingeForm,
    ItemForm,
    LiftForm,
    SlideForm,
)
from fronts.rules.fact_kinds import Rows
from fronts.rules.facts import rows_of
from fronts.rules.items import BandItem, HandleItem, Hardware, HingeItem, LiftItem, SlideItem
from fronts.rules.kinds import Unit
from shopjobs.words import capitalized


@dataclass(frozen=True, slots=True)
class ItemPage:
    """One kind of item; `path` stands for it in addresses and is its fact of a list."""

    path: str
    kind: type
    declared: Rows
    form: type[ItemForm]
    draw: Callable[[Any, Unit], str] | None

    @property
    def table(self) -> Any:
        """The table that keeps such items."""
        return item_table(self.kind)

    def rows(self, row: HardwareList) -> "QuerySet[Any]":
        """The items of a list, in the order of preference."""
        items: QuerySet[Any] = self.table._default_manager.filter(hardware=row)
        return items.order_by(*order_of(self.table))

    @property
    def heading(self) -> str:
        """What they are called together."""
        return capitalized(self.declared.says)

    def drawing(self, item: Any, unit: Unit) -> SafeString:
        """What each number means, drawn with an item's own where it is known."""
        if self.draw is None or item is None:
            return SafeString("")
        return mark_safe(self.draw(item, unit))  # noqa: S308 - drawn by us, words escaped


_FORMS: Mapping[type, type[ItemForm]] = {
    HingeItem: HingeForm, SlideItem: SlideForm, HandleItem: HandleForm, LiftItem: LiftForm,
    BandItem: BandForm,
}  # fmt: skip
_DRAWN: Mapping[type, Callable[[Any, Unit], str]] = {
    HingeItem: hinge_item_drawing,
    SlideItem: slide_item_drawing,
    HandleItem: handle_item_drawing,
    LiftItem: lift_item_drawing,
    BandItem: band_item_drawing,
}
ITEM_PAGES: Mapping[str, ItemPage] = {
    fact.name: ItemPage(fact.name, fact.kind, declared, _FORMS[fact.kind], _DRAWN.get(fact.kind))
    for fact, declared in rows_of(Hardware)
}


class ItemsConverter:
    """A kind of item in an address, by its word."""

    regex = "|".join(ITEM_PAGES)

    def to_python(self, value: str) -> ItemPage:
        """The kind whose word stands in the address."""
        return ITEM_PAGES[value]

    def to_url(self, value: ItemPage | str) -> str:
        """The word of a kind."""
        return value if isinstance(value, str) else value.path
