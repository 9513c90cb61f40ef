"""Drawer boxes behind a front, and the shelf-pin holes in their fronts."""

from django.db import models

from fronts.facts import columns
from fronts.models.fronts import Front
from fronts.models.kept import Kept
from fronts.rules.box_facts import Box as Facts
from fronts.rules.box_facts import BoxToMake as ToMakeFacts
from fronts.rules.box_facts import ShelfPins as PinFacts


class Box(Kept):
    """The box that a front stands on."""

    facts, owner = Facts, "front"

    front = models.OneToOneField(Front, on_delete=models.CASCADE, related_name="box")
    width = columns.size(Facts, "width")
    height = columns.size(Facts, "height")
    depth = columns.maybe_size(Facts, "depth")
    front_thickness = columns.size(Facts, "front_thickness")
    rise = columns.size(Facts, "rise")
    side_clearance = columns.maybe_size(Facts, "side_clearance")
    slide = columns.word(Facts, "slide")
    slide_width = columns.maybe_size(Facts, "slide_width")
    slide_height = columns.maybe_size(Facts, "slide_height")
    shelves = columns.count(Facts, "shelves")
    load_kg = columns.number(Facts, "load_kg")

    def __str__(self) -> str:
        return f"Box {self.front.position + 1} of {self.front.opening}"


class BoxToMake(Kept):
    """What is decided about the box that a front is to stand on."""

    facts, owner = ToMakeFacts, "front"

    front = models.OneToOneField(Front, on_delete=models.CASCADE, related_name="box_to_make")
    slide = columns.word(ToMakeFacts, "slide")
    shelves = columns.count(ToMakeFacts, "shelves")
    load_kg = columns.number(ToMakeFacts, "load_kg")

    def __str__(self) -> str:
        return f"Box {self.front.position + 1} of {self.front.opening}"


class ShelfPins(Kept):
    """A row of holes upwards from x, y, from the box front's lower left corner."""

    facts, owner = PinFacts, "box"

    box = models.ForeignKey(Box, on_delete=models.CASCADE, related_name="shelf_pins")
    position = models.PositiveIntegerField(default=0)
    x = columns.size(PinFacts, "x")
    y = columns.size(PinFacts, "y")
    pitch = columns.size(PinFacts, "pitch")
    count = columns.count(PinFacts, "count")
    diameter = columns.size(PinFacts, "diameter")

    def __str__(self) -> str:
        return f"Shelf pins {self.position + 1} of {self.box}"
