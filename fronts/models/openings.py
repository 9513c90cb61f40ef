"""Openings: the holes in a cabinet's face, and what is decided about their fronts."""

from django.core.exceptions import ValidationError
from django.db import models

from fronts.facts import LabelField, MmField, MmListField, WordsField
from fronts.models.cabinets import Cabinet
from fronts.models.doors import DoorOnHand
from fronts.models.standard import StandardFields, choices_of
from fronts.rules.kitchen import ClosedBy, FrontBuild, Hinged

BOXED = ("drawer", "drawers", "pull-out")
"""What stands on a drawer box."""
MOST_FRONTS = 20
"""More drawer fronts than this above each other are a slip of the finger."""


class Opening(StandardFields):
    """One opening; x, y from its cabinet's outer lower left corner.

    `heights` run from the top, blank where a front shares what remains; the `measured`
    sizes replace `width` and `height` where they speak.
    """

    cabinet = models.ForeignKey(Cabinet, on_delete=models.CASCADE, related_name="openings")
    position = models.PositiveIntegerField(default=0)
    label = LabelField()
    x = MmField()
    y = MmField()
    width = MmField(zero=False)
    height = MmField(zero=False)
    closed_by = models.CharField(max_length=8, choices=choices_of(ClosedBy))
    hinged = models.CharField(max_length=6, blank=True, choices=choices_of(Hinged))
    count = models.PositiveSmallIntegerField(default=1)
    heights = MmListField()
    measured_width_top = MmField(null=True, blank=True, zero=False)
    measured_width_bottom = MmField(null=True, blank=True, zero=False)
    measured_height_left = MmField(null=True, blank=True, zero=False)
    measured_height_right = MmField(null=True, blank=True, zero=False)
    diagonal_1 = MmField(null=True, blank=True, zero=False)
    diagonal_2 = MmField(null=True, blank=True, zero=False)
    front_door = models.ForeignKey(
        DoorOnHand, null=True, blank=True, on_delete=models.RESTRICT, related_name="openings"
    )
    front_choose = models.BooleanField(default=False)
    front_width = MmField(null=True, blank=True, zero=False)
    front_height = MmField(null=True, blank=True, zero=False)
    front_thickness_own = MmField(null=True, blank=True, zero=False)
    front_build = models.CharField(max_length=10, blank=True, choices=choices_of(FrontBuild))
    front_material = WordsField(max_length=80, blank=True)
    shift_x = MmField(signed=True, default=0)
    shift_y = MmField(signed=True, default=0)

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["cabinet", "label"], name="opening_label_in_cabinet"),
        ]

    def __str__(self) -> str:
        return f"{self.cabinet.label}.{self.label}"

    def clean(self) -> None:
        super().clean()
        faults = self._closing_faults() | self._size_faults()
        if faults:
            raise ValidationError(faults)

    def _closing_faults(self) -> dict[str, str]:
        faults: dict[str, str] = {}
        if self.hinged and self.closed_by != "door":
            faults["hinged"] = "only a single door has one hinge side; leave it empty"
        if self.closed_by == "drawers":
            if not 1 <= self.count <= MOST_FRONTS:
                faults["count"] = f"enter how many drawer fronts, 1 to {MOST_FRONTS}"
        elif self.count != 1:
            faults["count"] = "only a stack of drawers has several; enter 1"
        if self.heights and len(self.heights) != self.count:
            faults["heights"] = f"give {self.count} heights from the top, or none"
        if self.front_door_id and self.front_choose:
            faults["front_choose"] = "name a door on hand or have one chosen, not both"
        return faults

    def _size_faults(self) -> dict[str, str]:
        faults: dict[str, str] = {}
        if (self.diagonal_1 is None) != (self.diagonal_2 is None):
            missing = "diagonal_2" if self.diagonal_2 is None else "diagonal_1"
            faults[missing] = "give both diagonals, or neither"
        return faults
