"""Photos in tests, as their files are put."""

from django.utils import timezone

from fronts.models.photos import place_of
from shopjobs.models import Job
from shopjobs.services.unnamed_files import file_put


def picture_put(*, job: Job, picture: bytes) -> str:
    """A picture where the job's photos lie: the name of its file."""
    return file_put(name=place_of(job), content=picture, at=timezone.now())
