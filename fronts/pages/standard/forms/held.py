"""What of a shop's ways is in force: what its short pages begin from."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, cast

from fronts.facts.rows import columns_of
from fronts.models import ShopStandard
from fronts.pages.shared.item_choice import Items, standard_items
from fronts.rules.box_facts import USUAL_BOXES, BoxesMadeOf
from fronts.rules.box_stock import MATERIAL
from fronts.rules.kinds import Unit
from fronts.rules.practice import NUMBER_NAMES, PRACTICE, TABLES, Practice
from fronts.rules.unit_figures import UNIT_FIGURES
from fronts.selectors.standards import InForce, standard_levels
from fronts.snapshot.hardware import boxes_made_of_in_force
from fronts.snapshot.stock import practice_in_force
from shopjobs.models import Shop

BOXES = "boxes_"
"""What begins the names of the fields of how boxes are made."""
_IN_WORDS = {"material": MATERIAL, "joint_depth": "half the side", "heights": "to suit"}


@dataclass(frozen=True, slots=True)
class Held:
    """The standard by its columns, the numbers and tables, how boxes are made."""

    unit: Unit
    levels: Mapping[str, InForce]
    practice: Practice
    boxes: BoxesMadeOf
    items: Items

    @property
    def own(self) -> dict[str, Any]:
        """What the shop says itself, by the names of the fields."""
        practice = {
            name: getattr(self.practice, name)
            for name in (*NUMBER_NAMES, *TABLES)
            if getattr(self.practice, name) != getattr(PRACTICE, name)
        }
        boxes = {f"{BOXES}{name}": value for name, value in columns_of(self.boxes).items()}
        standard = {name: held.value for name, held in self.levels.items() if held.own}
        return {**standard, **practice, **boxes}

    def usual(self, name: str) -> Any:
        """What holds where the shop says nothing."""
        if name.startswith(BOXES):
            return self._usual_box(name.removeprefix(BOXES))
        if name in self.levels:
            usual = UNIT_FIGURES[self.unit].back if name == "back" else None
            return self.levels[name].beneath if usual is None else usual
        return getattr(PRACTICE, name)

    def _usual_box(self, name: str) -> Any:
        if name in ("side", "bottom", "groove"):
            return getattr(UNIT_FIGURES[self.unit], name)
        return _IN_WORDS.get(name, getattr(USUAL_BOXES, name))


def held_by(shop: Shop) -> Held:
    """What is in force in this shop."""
    level = ShopStandard.objects.filter(shop=shop).first()
    return Held(
        unit=cast(Unit, shop.unit),
        levels=standard_levels(shop),
        practice=practice_in_force(shop, level),
        boxes=boxes_made_of_in_force(shop),
        items=standard_items(shop),
    )
