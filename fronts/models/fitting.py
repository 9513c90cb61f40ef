"""How it fitted: what the installer measured on site."""

from django.db import models

from fronts.facts import MmField, WordsField


class FitRecord(models.Model):
    """The gaps measured round one front once it hung; labels, as the front itself is reckoned."""

    job = models.ForeignKey("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    front = WordsField(max_length=100)
    cabinet = WordsField(max_length=40)
    gap_left = MmField(null=True, blank=True)
    gap_right = MmField(null=True, blank=True)
    gap_top = MmField(null=True, blank=True)
    gap_bottom = MmField(null=True, blank=True)
    note = WordsField(max_length=400, blank=True)
    fitted_by = models.ForeignKey("shopjobs.Person", on_delete=models.RESTRICT, related_name="+")
    fitted_at = models.DateTimeField()
    fingerprint = models.CharField(max_length=64, blank=True)

    class Meta:
        indexes = [models.Index(fields=["job", "front"])]

    def __str__(self) -> str:
        return f"{self.front}, {self.fitted_at:%Y-%m-%d}"
