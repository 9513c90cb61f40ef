"""A mark that somebody puts on a line of a list, by name and time."""

from django.db import models

from fronts.facts import WordsField
from fronts.rules.limits import LONGEST_NAME


class Check(models.Model):
    """Who checked something and when; `fingerprint` is the short name of what it was then.

    `checked_by_name` is who it was where a file names somebody who is not in the shop.
    """

    fingerprint = models.CharField(max_length=64, blank=True)
    checked_by = models.ForeignKey(
        "shopjobs.Person", null=True, blank=True, on_delete=models.RESTRICT, related_name="+"
    )
    checked_by_name = WordsField(max_length=LONGEST_NAME, blank=True)
    checked_at = models.DateTimeField()

    class Meta:
        abstract = True

    @property
    def by(self) -> str:
        """The name of who checked it; "" where no name is known."""
        return self.checked_by.shown_name if self.checked_by else self.checked_by_name
