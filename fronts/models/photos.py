"""Photos of the walls, taken on site."""

import secrets
from typing import Any

from django.db import models

from fronts.facts import WordsField
from fronts.rules.limits import LONGEST_LABEL


def _place(photo: Any, _: str) -> str:
    """Where its file lies: by shop and job, under a name that nobody can guess."""
    return f"photos/{photo.job.shop_id}/{photo.job_id}/{secrets.token_hex(12)}.jpg"


class WallPhoto(models.Model):
    """One photo; `wall` is the wall's name as it was then.

    A deleted photo's file stays for as long as the deletion can be taken back.
    """

    job = models.ForeignKey("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    wall = WordsField(max_length=LONGEST_LABEL)
    image = models.FileField(upload_to=_place)
    taken_at = models.DateTimeField()
    taken_by = models.ForeignKey(
        "shopjobs.Person", null=True, blank=True, on_delete=models.RESTRICT, related_name="+"
    )

    class Meta:
        verbose_name = "photo"

    def __str__(self) -> str:
        return f"Photo of wall {self.wall}"
