"""Forms that were saved, remembered for some days, so that sending one again makes nothing."""

from django.db import models

from shopjobs.models.person import Person


class SentForm(models.Model):
    """What a person sent, by its digest, and the row that came of it, if one did.

    The row may be of any table and may be gone since, so it is named, not pointed at.
    """

    person = models.ForeignKey(Person, on_delete=models.CASCADE, related_name="+")
    digest = models.CharField(max_length=64)
    at = models.DateTimeField()
    made_in = models.CharField(max_length=80, blank=True)
    made_key = models.BigIntegerField(null=True, blank=True)

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["person", "digest"], name="form_saved_once"),
        ]

    def __str__(self) -> str:
        return f"{self.made_in} {self.made_key or ''}".strip() or "nothing made"
