"""What fronts were cut to: frozen when somebody marked them as cut."""

from django.db import models

from fronts.facts.lengths import MmField
from fronts.models.fronts import Front


class FrontCut(models.Model):
    """The size that a front was cut to, and where its lower left corner was in its cabinet.

    A later measurement changes nothing of it; it says what is to be trimmed, or made again.
    """

    front = models.OneToOneField(Front, on_delete=models.CASCADE, related_name="cut")
    width = MmField()
    height = MmField()
    thickness = MmField()
    left = MmField(signed=True)
    bottom = MmField(signed=True)
    cut_by = models.ForeignKey(
        "shopjobs.Person", null=True, blank=True, on_delete=models.RESTRICT, related_name="+"
    )
    cut_at = models.DateTimeField()

    def __str__(self) -> str:
        return f"{self.front}, cut"
