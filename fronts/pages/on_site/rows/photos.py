"""The photos of a job as they are shown, wall by wall."""

from collections import defaultdict

from fronts.pages.shared.photos_shown import PhotoShown, photo_shown
from fronts.selectors.photos import photos_of
from shopjobs.models import Job


def photos_by_wall(job: Job) -> dict[str, list[PhotoShown]]:
    """The photos by the names that their walls had then, the latest first."""
    found: dict[str, list[PhotoShown]] = defaultdict(list)
    for photo in photos_of(job):
        found[photo.wall].append(photo_shown(photo, "photo", job.pk, photo.pk))
    return dict(found)
