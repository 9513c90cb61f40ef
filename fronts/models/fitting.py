"""How it fitted: what the installer measured on site."""

from django.db import models

from fronts.facts import columns
from fronts.models.fronts import Front
from fronts.rules.fits import FitFacts as Facts


class FitRecord(models.Model):
    """The gaps measured round one front once it hung.

    `label` is what the front was called then. It points at nothing where the front has gone
    since. `hung` is the short name of the front as it was: a front that is made or hung
    otherwise since has not been fitted so; "" where that was not noted.
    """

    job = models.ForeignKey("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    front = models.ForeignKey(
        Front, null=True, blank=True, on_delete=models.SET_NULL, related_name="fits"
    )
    label = columns.words(Facts, "label")
    gap_left = columns.maybe_size(Facts, "gaps.left")
    gap_right = columns.maybe_size(Facts, "gaps.right")
    gap_top = columns.maybe_size(Facts, "gaps.top")
    gap_bottom = columns.maybe_size(Facts, "gaps.bottom")
    note = columns.words(Facts, "note")
    fitted_by = models.ForeignKey("shopjobs.Person", on_delete=models.RESTRICT, related_name="+")
    fitted_at = models.DateTimeField()
    fingerprint = models.CharField(max_length=64, blank=True)
    hung = models.CharField(max_length=64, blank=True)

    def __str__(self) -> str:
        return f"{self.label}, {self.fitted_at:%Y-%m-%d}"
