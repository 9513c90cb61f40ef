"""Photos of a snag: kept, shown, taken away."""

from collections.abc import Sequence
from functools import partial

from django.http import HttpResponse

from fronts.models import SnagPhoto
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import entered_at, found_or_404, job_view, who
from fronts.pages.shared.photos_sent import held_with_photos
from fronts.pages.shared.photos_shown import photo_answer
from fronts.pages.snags.forms import SnagPhotoForm
from fronts.pages.snags.views.parts import row_answer
from fronts.selectors.photos import snag_photo_of
from fronts.selectors.snags import snag_of
from fronts.services.photos import photo_delete, snag_photos_add
from shopjobs.access import SignedInRequest
from shopjobs.models import Job


@job_view("fit", "POST", holds=False)
def snag_photo_new(request: SignedInRequest, job: Job, snag_id: int) -> HttpResponse:
    """Keep one more photo of a snag, or several."""
    form = SnagPhotoForm(request.POST, request.FILES, auto_id=f"snag-{snag_id}-%s")
    with held_with_photos(request, job, form) as (held, images):
        return _photo_answer(request, held, snag_id, form, images)


def _photo_answer(
    request: SignedInRequest, job: Job, snag_id: int, form: SnagPhotoForm, images: Sequence[str]
) -> HttpResponse:
    snag = found_or_404(snag_of, job, snag_id)
    return form_answer(
        request,
        form,
        show=partial(row_answer, request, job, snag_id, photo_form=form),
        save=lambda: snag_photos_add(
            snag=snag,
            images=images,
            entered=entered_at(request),
            **who(request),
        ),
        done=lambda _: row_answer(request, job, snag_id),
    )


@job_view("measure", "GET", "HEAD")
def snag_photo_image(_: SignedInRequest, job: Job, snag_id: int, key: int) -> HttpResponse:
    """The photo itself, to its shop alone."""
    return photo_answer(found_or_404(snag_photo_of, job, snag_id, key).image)


@job_view("fit", "POST")
def snag_photo_delete_now(
    request: SignedInRequest, job: Job, snag_id: int, key: int
) -> HttpResponse:
    """Take a photo away; Undo brings it back."""
    photo: SnagPhoto = found_or_404(snag_photo_of, job, snag_id, key)
    photo_delete(photo=photo, **who(request))
    return row_answer(request, job, snag_id)
