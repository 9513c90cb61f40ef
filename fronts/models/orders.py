"""The hardware list as the office goes through it."""

from django.db import models

from fronts.facts import WordsField, columns
from fronts.rules.limits import LONGEST_NAME
from fronts.rules.records import CheckFacts as Facts


class OrderCheck(models.Model):
    """A line of the hardware list, checked by name and time, with the need as it was then.

    `checked_by_name` is who it was where a file names somebody who is not in the shop.
    """

    job = models.ForeignKey("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    item = columns.words(Facts, "item")
    need = columns.count(Facts, "need")
    fingerprint = models.CharField(max_length=64, blank=True)
    checked_by = models.ForeignKey(
        "shopjobs.Person", null=True, blank=True, on_delete=models.RESTRICT, related_name="+"
    )
    checked_by_name = WordsField(max_length=LONGEST_NAME, blank=True)
    checked_at = models.DateTimeField()
    note = columns.words(Facts, "note")

    class Meta:
        constraints = [models.UniqueConstraint(fields=["job", "item"], name="one_check_an_item")]

    def __str__(self) -> str:
        return f"{self.item}: {self.need}"

    @property
    def by(self) -> str:
        """The name of who checked it; "" where no name is known."""
        return self.checked_by.shown_name if self.checked_by else self.checked_by_name
