"""A job's snags, and a new one of them."""

from collections.abc import Sequence
from functools import partial

from django.http import HttpResponse
from django.shortcuts import redirect

from fronts.models import Snag
from fronts.pages.shared.announcing import announce_change
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import entered_at, job_view, who
from fronts.pages.shared.photos_sent import held_with_photos
from fronts.pages.snags.forms import SnagForm
from fronts.pages.snags.views.parts import (
    HERE,
    PAGE,
    back_to,
    cabinet_part,
    here_of,
    job_part,
    new_form,
)
from fronts.selectors.snags import place_now
from fronts.services.snags import snag_raise
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import render_page, wants_part
from shopjobs.selectors import colleague_of


@job_view("measure", to_post="fit", holds=False)
def job_snags(request: SignedInRequest, job: Job) -> HttpResponse:
    """Show the job's snags; write a new one down, here or at a cabinet."""
    here = here_of(request, job)
    if request.method != "POST":
        return _answer(request, job, here, new_form(job, here))
    form = new_form(job, here, request.POST, request.FILES)
    with held_with_photos(request, job, form) as (held, images):
        return _answer(request, held, here, form, images)


def _answer(
    request: SignedInRequest,
    job: Job,
    here: int | None,
    form: SnagForm,
    images: Sequence[str] = (),
) -> HttpResponse:
    return form_answer(
        request,
        form,
        show=partial(_shown, request, job, here, form),
        save=partial(_raise, request, job, form, images),
        done=partial(_raised, request, job, here),
    )


def _raise(request: SignedInRequest, job: Job, form: SnagForm, images: Sequence[str]) -> Snag:
    given = form.cleaned_data
    at = place_now(job, *given["on"])
    return snag_raise(
        job=job,
        facts=form.entered(at.label),
        cabinet=at.cabinet,
        front=at.front,
        who=colleague_of(request.user, given["who"]) if given["who"] else None,
        images=images,
        entered=entered_at(request),
        **who(request),
    )


def _raised(request: SignedInRequest, job: Job, here: int | None, snag: Snag) -> HttpResponse:
    if not wants_part(request):
        return redirect(back_to(job, here, snag.pk))
    return announce_change(_shown(request, job, here, new_form(job, here), said=snag))


def _shown(
    request: SignedInRequest,
    job: Job,
    here: int | None,
    form: SnagForm,
    *,
    said: Snag | None = None,
    status: int = 200,
) -> HttpResponse:
    """The part of the page where one is; without htmx the job's own page, with what was typed."""
    if here is not None and wants_part(request):
        context = cabinet_part(job, here, form) | {"said": said}
        return render_page(request, HERE, context, status=status)
    context = job_part(job, form) | {"said": said, "here": here or ""}
    return render_page(request, PAGE, context, partial="snags", status=status)
