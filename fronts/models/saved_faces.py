"""Faces of cabinets that a shop saved under names of its own."""

from django.db import models
from django.db.models.functions import Lower

from fronts.rules.kinds import UNITS
from fronts.rules.limits import LONGEST_FACE, LONGEST_LABEL


class SavedFace(models.Model):
    """What closes a cabinet, in words, by a name; bare numbers in the words are in `unit`."""

    shop = models.ForeignKey("shopjobs.Shop", on_delete=models.CASCADE, related_name="+")
    name = models.CharField(max_length=LONGEST_LABEL)
    words = models.CharField("what closes it", max_length=LONGEST_FACE)
    unit = models.CharField(max_length=2, choices=[(unit, unit) for unit in UNITS])

    class Meta:
        verbose_name = "saved face"
        constraints = [models.UniqueConstraint("shop", Lower("name"), name="one_face_a_name")]

    def __str__(self) -> str:
        return self.name
