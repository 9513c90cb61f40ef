"""A job's photos, of its walls and its snags; what belongs to another job does not exist."""

from django.db.models import QuerySet

from fronts.models import SnagPhoto, WallPhoto
from shopjobs.models import Job


def photos_of(job: Job) -> "QuerySet[WallPhoto]":
    """The photos of the job's walls, the latest of each first."""
    photos = WallPhoto.objects.filter(job=job).select_related("taken_by")
    return photos.order_by("wall", "-taken_at", "-pk")


def photo_of(job: Job, key: int) -> WallPhoto:
    """One photo of a wall of the job."""
    photo = photos_of(job).get(pk=key)
    photo.job = job
    return photo


def snag_photos_of(job: Job) -> "QuerySet[SnagPhoto]":
    """The photos of the job's snags, in the order in which they were taken."""
    photos = SnagPhoto.objects.filter(snag__job=job).select_related("taken_by")
    return photos.order_by("pk")


def snag_photo_of(job: Job, snag_id: int, key: int) -> SnagPhoto:
    """One photo of a snag of the job."""
    photo = snag_photos_of(job).select_related("snag").get(snag=snag_id, pk=key)
    photo.snag.job = job
    return photo
