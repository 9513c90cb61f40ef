"""Walls, and what stands on them beside cabinets."""

from django.db import models

from fronts.facts import columns
from fronts.models.kept import Kept
from fronts.rules.wall_facts import Thing as ThingFacts
from fronts.rules.wall_facts import Wall as Facts


class Wall(Kept):
    """A wall of the job, by the name that its cabinets say."""

    facts, owner = Facts, "job"

    job = models.ForeignKey("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    position = models.PositiveIntegerField(default=0)
    label = columns.words(Facts, "label")
    length = columns.maybe_size(Facts, "length")
    left_corner = columns.word(Facts, "left.corner")
    left_wall = columns.words(Facts, "left.wall")
    left_angle = columns.number(Facts, "left.angle")
    right_corner = columns.word(Facts, "right.corner")
    right_wall = columns.words(Facts, "right.wall")
    right_angle = columns.number(Facts, "right.angle")

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["job", "label"], name="wall_label_in_job"),
        ]

    def __str__(self) -> str:
        return self.label


class Thing(Kept):
    """An appliance, filler, end panel or gap in a run."""

    facts, owner = ThingFacts, "job"

    job = models.ForeignKey("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    position = models.PositiveIntegerField(default=0)
    label = columns.words(ThingFacts, "label")
    kind = columns.word(ThingFacts, "kind")
    wall = columns.words(ThingFacts, "wall")
    width = columns.size(ThingFacts, "width")
    after = columns.words(ThingFacts, "after")
    run = columns.word(ThingFacts, "run")
    x = columns.maybe_size(ThingFacts, "x")
    y = columns.maybe_size(ThingFacts, "y")
    height = columns.maybe_size(ThingFacts, "height")
    depth = columns.maybe_size(ThingFacts, "depth")
    panel = columns.flag(ThingFacts, "panel")
    name = columns.words(ThingFacts, "name")

    class Meta:
        verbose_name = "thing on a wall"
        constraints = [
            models.UniqueConstraint(fields=["job", "label"], name="thing_label_in_job"),
        ]

    def __str__(self) -> str:
        return self.label
