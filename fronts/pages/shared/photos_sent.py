"""Photos that a form brings: their files are put first, and then their job is held."""

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from typing import Protocol

from fronts.pages.shared.job_view import job_held
from fronts.services.photo_files import pictures_put
from shopjobs.access import SignedInRequest
from shopjobs.models import Job


class BringsPictures(Protocol):
    """A form with pictures, none where it can't be saved as it was sent."""

    @property
    def pictures(self) -> Sequence[bytes]: ...


@contextmanager
def held_with_photos(
    request: SignedInRequest, job: Job, form: BringsPictures
) -> Iterator[tuple[Job, list[str]]]:
    """The job, which nobody else changes in the block, and the names of the pictures' files.

    What the block makes no photo of is removed after it.
    """
    with pictures_put(job, form.pictures) as images, job_held(request, job.pk) as held:
        yield held, images
