"""Fronts: what closes an opening, one row each, with what is decided about it."""

from django.db import models

from fronts.facts import columns
from fronts.models.doors import DoorOnHand
from fronts.models.kept import Kept
from fronts.models.openings import Opening
from fronts.rules.kitchen import FrontFacts as Facts
from fronts.rules.kitchen import HandlePlace as PlaceFacts


class Front(Kept):
    """One front of its opening, from the left or from the top.

    What later happens to a front points at this row, not at its label. A named `door`
    or `choose` says which door on hand it is made from.
    """

    facts, owner = Facts, "opening"

    opening = models.ForeignKey(Opening, on_delete=models.CASCADE, related_name="fronts")
    position = models.PositiveSmallIntegerField()
    own_height = columns.maybe_size(Facts, "own_height")
    door = models.ForeignKey(
        DoorOnHand, null=True, blank=True, on_delete=models.RESTRICT, related_name="fronts"
    )
    choose = models.BooleanField(default=False)
    width = columns.maybe_size(Facts, "width")
    height = columns.maybe_size(Facts, "height")
    thickness = columns.maybe_size(Facts, "thickness")
    build = columns.word(Facts, "build")
    material = columns.words(Facts, "material")
    shift_x = columns.size(Facts, "shift_x")
    shift_y = columns.size(Facts, "shift_y")
    hinged = columns.word(Facts, "hinged")
    handle = columns.words(Facts, "handle")
    hinge = columns.words(Facts, "hinge")
    glass = columns.flag(Facts, "glass")
    machine_least_width = columns.maybe_size(Facts, "machine.least_width")
    machine_most_width = columns.maybe_size(Facts, "machine.most_width")
    machine_least_height = columns.maybe_size(Facts, "machine.least_height")
    machine_most_height = columns.maybe_size(Facts, "machine.most_height")
    machine_most_kg = columns.number(Facts, "machine.most_kg")
    room_behind = columns.maybe_size(Facts, "room_behind")
    grain = columns.word(Facts, "grain")
    grain_set = columns.words(Facts, "grain_set")
    made_by = columns.word(Facts, "made_by")

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["opening", "position"], name="front_in_opening"),
            models.CheckConstraint(
                condition=models.Q(choose=False) | models.Q(door=None),
                name="door_named_or_chosen",
            ),
        ]

    def __str__(self) -> str:
        return f"Front {self.position + 1} of {self.opening}"


class HandlePlace(Kept):
    """A place of its own for a knob or pull on its front."""

    facts, owner = PlaceFacts, "front"

    front = models.ForeignKey(Front, on_delete=models.CASCADE, related_name="handles")
    position = models.PositiveIntegerField(default=0)
    x = columns.size(PlaceFacts, "x")
    y = columns.size(PlaceFacts, "y")

    def __str__(self) -> str:
        return f"Handle {self.position + 1} of {self.front}"
