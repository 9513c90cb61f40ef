"""The photos of a job as they are shown, wall by wall."""

from collections import defaultdict
from dataclasses import dataclass
from datetime import datetime

from django.urls import reverse

from fronts.selectors.photos import photos_of
from shopjobs.models import Job


@dataclass(frozen=True, slots=True)
class PhotoShown:
    """One photo: where it is, who took it and when."""

    key: int
    wall: str
    src: str
    taken_by: str
    taken_at: datetime


def photos_by_wall(job: Job) -> dict[str, list[PhotoShown]]:
    """The photos by the names that their walls had then, the latest first."""
    found: dict[str, list[PhotoShown]] = defaultdict(list)
    for photo in photos_of(job):
        src = reverse("fronts:photo-image", args=[job.pk, photo.pk])
        by = photo.taken_by.shown_name if photo.taken_by else ""
        found[photo.wall].append(PhotoShown(photo.pk, photo.wall, src, by, photo.taken_at))
    return dict(found)
