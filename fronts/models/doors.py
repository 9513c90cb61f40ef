"""Doors on hand: doors that exist and may become fronts."""

from django.core.exceptions import ValidationError
from django.db import models

from fronts.facts import LabelField, MmField, WordsField
from fronts.models.standard import choices_of
from fronts.rules.kitchen import CHOOSE, FrontBuild
from fronts.rules.lengths import Mm

BORE = Mm(35)
"""A hinge cup's diameter, unless another was measured."""


class DoorOnHand(models.Model):
    """One door; places from its lower left corner seen from the front."""

    job = models.ForeignKey("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    position = models.PositiveIntegerField(default=0)
    label = LabelField()
    width = MmField(zero=False)
    height = MmField(zero=False)
    thickness = MmField(zero=False)
    build = models.CharField(max_length=10, choices=choices_of(FrontBuild), default="slab")
    stile = MmField(null=True, blank=True, zero=False)
    rail = MmField(null=True, blank=True, zero=False)
    panel_thickness = MmField(null=True, blank=True, zero=False)
    knob_x = MmField(null=True, blank=True)
    knob_y = MmField(null=True, blank=True)
    knob_diameter = MmField(null=True, blank=True, zero=False)
    bore_diameter = MmField(zero=False, default=BORE)
    material = WordsField(max_length=80, blank=True)

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["job", "label"], name="door_label_in_job"),
        ]

    def __str__(self) -> str:
        return self.label

    def clean(self) -> None:
        super().clean()
        faults: dict[str, str] = {}
        if self.label == CHOOSE:
            faults["label"] = f"“{CHOOSE}” has a meaning of its own; call this door otherwise"
        if (self.knob_x is None) != (self.knob_y is None):
            missing = "knob_y" if self.knob_y is None else "knob_x"
            faults[missing] = "give both places of the knob hole, or neither"
        if self.knob_diameter is not None and self.knob_x is None:
            faults["knob_x"] = "give the place of the knob hole too"
        if faults:
            raise ValidationError(faults)


class HingeBore(models.Model):
    """An old hinge bore in a door on hand."""

    door = models.ForeignKey(DoorOnHand, on_delete=models.CASCADE, related_name="hinge_bores")
    position = models.PositiveIntegerField(default=0)
    x = MmField()
    y = MmField()

    def __str__(self) -> str:
        return f"Bore {self.position + 1} of {self.door}"
