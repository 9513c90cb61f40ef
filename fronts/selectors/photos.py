"""A job's photos; what belongs to another job does not exist."""

from django.db.models import QuerySet

from fronts.models import WallPhoto
from shopjobs.models import Job


def photos_of(job: Job) -> "QuerySet[WallPhoto]":
    """The job's photos, the latest of each wall first."""
    photos = WallPhoto.objects.filter(job=job).select_related("taken_by")
    return photos.order_by("wall", "-taken_at", "-pk")


def photo_of(job: Job, key: int) -> WallPhoto:
    """One photo of the job."""
    photo = photos_of(job).get(pk=key)
    photo.job = job
    return photo
