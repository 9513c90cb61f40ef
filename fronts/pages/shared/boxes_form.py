"""The form of how drawer boxes are made; what is empty is as usual in the form's unit."""

from typing import Any, cast

from fronts.facts.rows import columns_of
from fronts.pages.shared.kitchen_form import Group, KitchenForm, When
from fronts.pages.shared.list_hints import list_hint
from fronts.rules.box_facts import BoxesMadeOf
from fronts.rules.box_stock import MATERIAL
from fronts.rules.kinds import Unit
from fronts.rules.lengths import show
from fronts.rules.unit_figures import UNIT_FIGURES


class BoxesForm(KitchenForm):
    """Thicknesses, the corner joint, the heights that boxes come in."""

    facts = BoxesMadeOf
    groups = (
        Group("", ("side", "bottom", "groove", "material"), kind="cells wide"),
        Group("Corners", ("joint", "joint_depth"), kind="cells wide"),
        Group("", ("heights",)),
    )
    used_when = {"joint_depth": When("joint", ("rabbet", "dado"))}

    def __init__(self, *args: Any, boxes: BoxesMadeOf, **kwargs: Any) -> None:
        kwargs.setdefault("initial", columns_of(boxes))
        super().__init__(*args, **kwargs)
        usual = UNIT_FIGURES[cast(Unit, self.unit)]
        for name in ("side", "bottom", "groove"):
            self.offer(name, show(getattr(usual, name), self.unit))
        self.offer("joint_depth", "half the side")
        self.offer("material", MATERIAL)
        hint = list_hint("heights", self.unit)
        self.fields["heights"].help_text = f"{hint} Empty: as high as there is room."

    @property
    def entered(self) -> BoxesMadeOf:
        """How boxes are made."""
        return self.stated(BoxesMadeOf)
