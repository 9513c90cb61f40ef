"""Photos of a job's walls: added, taken away, and brought back with the step."""

from datetime import datetime

from django.core.exceptions import ValidationError
from django.core.files.base import ContentFile

from fronts.models import WallPhoto
from fronts.services.saving import checked, job_told, saved
from shopjobs.models import Job, Person
from shopjobs.services.recording import deleted, recorded

MOST_PHOTOS = 200


@recorded
def photo_add(
    *, job: Job, wall: str, picture: bytes, at: datetime, by: Person | None = None
) -> WallPhoto:
    """Keep a photo of a wall; `picture` is a JPEG as pages make it."""
    if WallPhoto.objects.filter(job=job).count() >= MOST_PHOTOS:
        raise ValidationError({"image": f"A job has {MOST_PHOTOS} photos at most."})
    image = ContentFile(picture, name="photo.jpg")
    photo = WallPhoto(job=job, wall=wall, image=image, taken_at=at, taken_by=by)
    checked(photo)
    saved(photo)
    job_told(job=job, text=f"Took a photo of wall {wall}", by=by, at=at)
    return photo


@recorded
def photo_delete(*, photo: WallPhoto, at: datetime, by: Person | None = None) -> None:
    """Take a photo away; its file stays while the step can be taken back."""
    job, wall = photo.job, photo.wall
    deleted([photo])
    job_told(job=job, text=f"Deleted a photo of wall {wall}", by=by, at=at)
