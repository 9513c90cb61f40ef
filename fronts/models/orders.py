"""The hardware list as the office goes through it."""

from django.db import models

from fronts.facts import WordsField


class OrderCheck(models.Model):
    """A line of the hardware list, checked by name and time, with the need as it was then."""

    job = models.ForeignKey("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    item = WordsField(max_length=200)
    need = models.PositiveIntegerField()
    fingerprint = models.CharField(max_length=64, blank=True)
    checked_by = models.ForeignKey("shopjobs.Person", on_delete=models.RESTRICT, related_name="+")
    checked_at = models.DateTimeField()
    note = WordsField(max_length=400, blank=True)

    class Meta:
        constraints = [models.UniqueConstraint(fields=["job", "item"], name="one_check_an_item")]

    def __str__(self) -> str:
        return f"{self.item}: {self.need}"
