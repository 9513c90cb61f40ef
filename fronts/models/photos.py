"""Photos taken on site: of the walls, and of snags."""

import secrets
from typing import Any

from django.db import models

from fronts.facts import WordsField
from fronts.models.snags import Snag
from fronts.rules.limits import LONGEST_LABEL
from shopjobs.models import Job


def place_of(job: Job) -> str:
    """Where a new photo's file lies: by shop and job, under a name that nobody can guess."""
    return f"photos/{job.shop_id}/{job.pk}/{secrets.token_hex(12)}.jpg"


def _place(photo: Any, _: str) -> str:
    return place_of(photo.job)


class Photo(models.Model):
    """One photo of a `job`.

    A deleted photo's file stays for as long as history can bring the photo back.
    """

    image = models.FileField(upload_to=_place)
    taken_at = models.DateTimeField()
    taken_by = models.ForeignKey(
        "shopjobs.Person", null=True, blank=True, on_delete=models.RESTRICT, related_name="+"
    )

    class Meta:
        abstract = True
        verbose_name = "photo"


class WallPhoto(Photo):
    """A photo of a wall; `wall` is the wall's name as it was then."""

    job = models.ForeignKey("shopjobs.Job", on_delete=models.CASCADE, related_name="+")
    wall = WordsField(max_length=LONGEST_LABEL)

    def __str__(self) -> str:
        return f"Photo of {self.of}"

    @property
    def of(self) -> str:
        """What is seen on it: `wall North`."""
        return f"wall {self.wall}"


class SnagPhoto(Photo):
    """A photo of a snag."""

    snag = models.ForeignKey(Snag, on_delete=models.CASCADE, related_name="photos")

    def __str__(self) -> str:
        return f"Photo of {self.of}"

    @property
    def job(self) -> Job:
        """The snag's job."""
        return self.snag.job

    @property
    def of(self) -> str:
        """What is seen on it: `the snag on front B1.a`."""
        return f"the snag on {self.snag.on}"
