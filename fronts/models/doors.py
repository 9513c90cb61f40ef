"""Doors on hand: doors that exist and may become fronts."""

from django.db import models

from fronts.facts import columns
from fronts.models.kept import Kept
from fronts.rules.kitchen import DoorOnHand as Facts
from fronts.rules.kitchen import Point


class DoorOnHand(Kept):
    """One door; places from its lower left corner seen from the front."""

    facts, owner = Facts, "job"

    job = models.ForeignKey("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    position = models.PositiveIntegerField(default=0)
    label = columns.words(Facts, "label")
    width = columns.size(Facts, "width")
    height = columns.size(Facts, "height")
    thickness = columns.size(Facts, "thickness")
    build = columns.word(Facts, "build")
    stile = columns.maybe_size(Facts, "stile")
    rail = columns.maybe_size(Facts, "rail")
    panel_thickness = columns.maybe_size(Facts, "panel_thickness")
    knob_x = columns.maybe_size(Facts, "knob_hole.x")
    knob_y = columns.maybe_size(Facts, "knob_hole.y")
    knob_diameter = columns.maybe_size(Facts, "knob_hole.diameter")
    bore_diameter = columns.size(Facts, "bore_diameter")
    material = columns.words(Facts, "material")

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["job", "label"], name="door_label_in_job"),
        ]

    def __str__(self) -> str:
        return self.label


class HingeBore(Kept):
    """An old hinge bore in a door on hand."""

    facts, owner = Point, "door"

    door = models.ForeignKey(DoorOnHand, on_delete=models.CASCADE, related_name="hinge_bores")
    position = models.PositiveIntegerField(default=0)
    x = columns.size(Point, "x")
    y = columns.size(Point, "y")

    def __str__(self) -> str:
        return f"Bore {self.position + 1} of {self.door}"
