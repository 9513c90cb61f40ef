"""Cabinets: the boxes on a wall whose faces are closed by fronts."""

from typing import get_args

from django.db import models

from fronts.facts import LabelField, MmField
from fronts.models.standard import StandardFields, choices_of
from fronts.rules.kitchen import CabinetBuild, Kind


class Cabinet(StandardFields):
    """One cabinet; x, y of its outer lower left corner on its wall, y from the floor."""

    job = models.ForeignKey("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    position = models.PositiveIntegerField(default=0)
    label = LabelField()
    kind = models.CharField(max_length=5, choices=choices_of(Kind), default=get_args(Kind)[0])
    build = models.CharField(
        max_length=10, choices=choices_of(CabinetBuild), default=get_args(CabinetBuild)[0]
    )
    wall = LabelField()
    x = MmField(signed=True)
    y = MmField(signed=True)
    width = MmField(zero=False)
    height = MmField(zero=False)
    depth = MmField(zero=False)

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["job", "label"], name="cabinet_label_in_job"),
        ]

    def __str__(self) -> str:
        return self.label
