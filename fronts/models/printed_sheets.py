"""What fitting sheets showed when they were printed, so that old paper can be told from new."""

from django.db import models

from fronts.facts import WordsField
from fronts.rules.limits import LONGEST_LABEL
from fronts.rules.shown_figures import ShownFigure


class PrintedSheet(models.Model):
    """The figures of one cabinet's sheet under its code, frozen when it was first printed.

    `label` is what the cabinet was called then; the row points at none that has gone since, and
    History keeps no account of that. `figures` are `[of, name, says]` each.
    """

    job = models.ForeignKey("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    cabinet = models.ForeignKey(
        "Cabinet", null=True, blank=True, on_delete=models.SET_NULL, related_name="+"
    )
    label = WordsField(max_length=LONGEST_LABEL)
    code = models.CharField(max_length=9, db_index=True)
    figures = models.JSONField()
    printed_at = models.DateTimeField()

    class Meta:
        constraints = [
            models.UniqueConstraint(
                fields=["job", "label", "code"], name="printed_sheet_once_a_code"
            ),
        ]

    def __str__(self) -> str:
        return f"{self.label}, {self.code}"

    @property
    def shown(self) -> tuple[ShownFigure, ...]:
        """The figures as rules have them."""
        return tuple(ShownFigure(*each) for each in self.figures)
