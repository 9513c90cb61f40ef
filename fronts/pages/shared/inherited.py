"""What a front has from its standard where it says nothing itself, shown in its empty fields."""

from collections.abc import Mapping

from fronts.pages.shared.kitchen_form import KitchenForm
from fronts.pages.shared.standard_form import STANDARD_WORDS, inherited
from fronts.selectors.standards import DEFAULT, InForce

_FROM_STANDARD = {
    "build": "front_build",
    "material": "front_material",
    "thickness": "front_thickness",
    "handle": "front_handle",
    "hinge": "front_hinge",
    "made_by": "made_by",
}
"""The column of the standard that holds for each fact of a front."""

NO_LEVELS: Mapping[str, InForce] = {}


def offer_inherited(form: KitchenForm, levels: Mapping[str, InForce], prefix: str = "") -> None:
    """Say in fields of fronts what some level says for them, and which; `prefix` begins them."""
    for fact, column in _FROM_STANDARD.items():
        held, name = levels.get(column), f"{prefix}{fact}"
        if held and name in form.fields and held.value not in (None, "") and held.level != DEFAULT:
            words = STANDARD_WORDS.get(column, {}).get(str(held.value), held.value)
            form.offer(name, inherited(words, held.level, form.unit))
