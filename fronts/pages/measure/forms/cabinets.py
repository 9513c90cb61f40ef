"""The forms of a cabinet."""

from collections.abc import Sequence
from typing import Any, cast

from django import forms

from fronts import models
from fronts.facts.rows import columns_of
from fronts.facts.size_form_fields import Size
from fronts.pages.shared.kitchen_form import Group, KitchenForm
from fronts.rules.kinds import (
    CabinetKind,
)
from fronts.rules.kitchen import Cabinet
from fronts.rules.lengths import show
from fronts.rules.next_cabinet import next_label, run_end
from fronts.rules.standards import EMPTY

BODY = Group("", ("label", "width", "height", "depth"), kind="cells")
PLACE = Group("Its kind, and where it stands", ("kind", "build", "wall", "x", "y"), kind="cells")


class CabinetForm(KitchenForm):
    """A cabinet's outer sizes, and where on its wall it stands."""

    facts = Cabinet
    without = ("standard",)
    groups: tuple[Group, ...] = (BODY, PLACE)

    def __init__(self, *args: Any, cabinet: Cabinet | None = None, **kwargs: Any) -> None:
        if cabinet is not None:
            kwargs.setdefault("initial", columns_of(cabinet))
        super().__init__(*args, **kwargs)

    @property
    def entered(self) -> Cabinet:
        """The cabinet as it was entered, without what is in it and what it says of the standard."""
        return self.stated(Cabinet, openings=(), standard=EMPTY)


class CopyForm(KitchenForm):
    """Where a copy of a cabinet goes, and what it is called."""

    groups = (Group("", ("label", "x"), kind="cells"),)

    label = forms.CharField(
        label="Label of the copy",
        max_length=40,
        error_messages={"required": "Enter a label, like B2."},
    )
    x = Size(label="From the wall's left end", signed=True, zero=True, required=False)

    def __init__(
        self, *args: Any, cabinet: models.Cabinet, cabinets: Sequence[Cabinet], **kwargs: Any
    ) -> None:
        kind = cast(CabinetKind, cabinet.kind)
        label = next_label(cabinets, kind, after=cabinet.label)
        kwargs.setdefault("initial", {"label": label})
        super().__init__(*args, **kwargs)
        self.offer("x", f"next: {show(run_end(cabinets, cabinet.wall, kind), self.unit)}")
