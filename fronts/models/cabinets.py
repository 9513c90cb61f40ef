"""Cabinets: the boxes on a wall whose faces are closed by fronts."""

from django.db import models

from fronts.facts import columns
from fronts.models.kept import Kept
from fronts.models.standard import StandardFields
from fronts.rules.kitchen import Cabinet as Facts


class Cabinet(StandardFields, Kept):
    """One cabinet; x, y of its outer lower left corner on its wall, y from the floor."""

    facts, owner = Facts, "job"

    job = models.ForeignKey("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    position = models.PositiveIntegerField(default=0)
    label = columns.words(Facts, "label")
    kind = columns.word(Facts, "kind")
    build = columns.word(Facts, "build")
    wall = columns.words(Facts, "wall")
    x = columns.maybe_size(Facts, "x")
    y = columns.size(Facts, "y")
    width = columns.size(Facts, "width")
    height = columns.size(Facts, "height")
    depth = columns.size(Facts, "depth")

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["job", "label"], name="cabinet_label_in_job"),
        ]

    def __str__(self) -> str:
        return self.label
