"""Drawer boxes behind an opening, and the shelf-pin holes in their fronts."""

from django.core.exceptions import ValidationError
from django.db import models

from fronts.facts import MmField
from fronts.models.openings import BOXED, Opening
from fronts.models.standard import choices_of
from fronts.rules.kitchen import SlideKind


class Box(models.Model):
    """The box behind one front; `index` counts the fronts of its opening from the top, from 0.

    `rise` is its bottom edge above the opening's bottom edge.
    """

    opening = models.ForeignKey(Opening, on_delete=models.CASCADE, related_name="boxes")
    index = models.PositiveSmallIntegerField(default=0)
    width = MmField(zero=False)
    height = MmField(zero=False)
    depth = MmField(null=True, blank=True, zero=False)
    front_thickness = MmField(zero=False)
    rise = MmField()
    side_clearance = MmField(null=True, blank=True)
    slide = models.CharField(max_length=6, blank=True, choices=choices_of(SlideKind))
    slide_width = MmField(null=True, blank=True, zero=False)
    slide_height = MmField(null=True, blank=True, zero=False)

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["opening", "index"], name="one_box_a_front"),
        ]

    def __str__(self) -> str:
        return f"Box {self.index + 1} of {self.opening}"

    def clean(self) -> None:
        super().clean()
        if self.opening.closed_by not in BOXED:
            raise ValidationError("a box stands behind a drawer or a pull-out front only")
        if self.index >= self.opening.count:
            raise ValidationError(f"this opening has {self.opening.count} fronts only")


class ShelfPins(models.Model):
    """A row of holes upwards from x, y, from the box front's lower left corner."""

    box = models.ForeignKey(Box, on_delete=models.CASCADE, related_name="shelf_pins")
    position = models.PositiveIntegerField(default=0)
    x = MmField()
    y = MmField()
    pitch = MmField(zero=False)
    count = models.PositiveSmallIntegerField(default=1)
    diameter = MmField(zero=False)

    def __str__(self) -> str:
        return f"Shelf pins {self.position + 1} of {self.box}"

    def clean(self) -> None:
        super().clean()
        if self.count < 1:
            raise ValidationError({"count": "enter how many holes, 1 or more"})
