"""Photos of a job: added, taken away, and brought back with the step."""

from collections.abc import Sequence
from datetime import datetime
from typing import TypeVar

from django.core.exceptions import ValidationError

from fronts.models import Snag, SnagPhoto, WallPhoto
from fronts.rules.limits import MOST_PHOTOS, MOST_SNAG_PHOTOS
from fronts.services.saving import checked, job_told, saved
from shopjobs.models import Job, Person
from shopjobs.services.recording import deleted, recorded

Taken = TypeVar("Taken", WallPhoto, SnagPhoto)


@recorded
def photo_add(
    *,
    job: Job,
    wall: str,
    image: str,
    at: datetime,
    by: Person | None = None,
    entered: datetime | None = None,
) -> WallPhoto:
    """Keep a photo of a wall; `image` is the name of its file, which was put before.

    `entered` is when it was taken, where it waited to be sent.
    """
    if WallPhoto.objects.filter(job=job).count() >= MOST_PHOTOS:
        raise ValidationError({"image": f"A job has {MOST_PHOTOS} photos at most."})
    taken = entered or at
    photo = WallPhoto(job=job, wall=wall, image=image, taken_at=taken, taken_by=by)
    checked(photo)
    return _kept(photo, at)


@recorded
def snag_photos_add(
    *,
    snag: Snag,
    images: Sequence[str],
    at: datetime,
    by: Person | None = None,
    entered: datetime | None = None,
) -> Snag:
    """Keep photos of a snag, each by the name of its file; the snag has all of them then.

    `entered` is when they were taken, where they waited to be sent.
    """
    there = SnagPhoto.objects.filter(snag=snag).count()
    if there + len(images) > MOST_SNAG_PHOTOS:
        raise ValidationError({"image": f"A snag has {MOST_SNAG_PHOTOS} photos at most."})
    for image in images:
        _kept(SnagPhoto(snag=snag, image=image, taken_at=entered or at, taken_by=by), at)
    return snag


@recorded
def photo_delete(*, photo: WallPhoto | SnagPhoto, at: datetime, by: Person | None = None) -> None:
    """Take a photo away; its file stays with its job, as Undo has no end in time."""
    job, of = photo.job, photo.of
    deleted([photo])
    job_told(job=job, text=f"Deleted a photo of {of}", by=by, at=at)


def _kept(photo: Taken, at: datetime) -> Taken:
    saved(photo)
    text = f"Took a photo of {photo.of}"
    job_told(job=photo.job, text=text, by=photo.taken_by, at=at)
    return photo
