"""Openings: the holes in a cabinet's face."""

from django.db import models

from fronts.facts import columns
from fronts.models.cabinets import Cabinet
from fronts.models.kept import Kept
from fronts.models.standard import StandardFields
from fronts.rules.kinds import CLOSINGS, ClosedBy, Closing
from fronts.rules.kitchen import Opening as Facts


class Opening(StandardFields, Kept):
    """One opening; x, y from its cabinet's outer lower left corner.

    The `measured` sizes replace `width` and `height` where they speak.
    """

    facts, owner = Facts, "cabinet"

    cabinet = models.ForeignKey(Cabinet, on_delete=models.CASCADE, related_name="openings")
    position = models.PositiveIntegerField(default=0)
    label = columns.words(Facts, "label")
    x = columns.size(Facts, "x")
    y = columns.size(Facts, "y")
    width = columns.size(Facts, "width")
    height = columns.size(Facts, "height")
    closed_by = columns.word(Facts, "closed_by")
    measured_width_top = columns.maybe_size(Facts, "measured.width_top")
    measured_width_bottom = columns.maybe_size(Facts, "measured.width_bottom")
    measured_height_left = columns.maybe_size(Facts, "measured.height_left")
    measured_height_right = columns.maybe_size(Facts, "measured.height_right")
    measured_diagonal_1 = columns.maybe_size(Facts, "measured.diagonal_1")
    measured_diagonal_2 = columns.maybe_size(Facts, "measured.diagonal_2")

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["cabinet", "label"], name="opening_label_in_cabinet"),
        ]

    def __str__(self) -> str:
        return f"{self.cabinet.label}.{self.label}"

    @property
    def closing(self) -> Closing:
        """What is true of every opening that is closed so."""
        closed_by: ClosedBy = self.closed_by  # type: ignore[assignment] # one of its choices
        return CLOSINGS[closed_by]
