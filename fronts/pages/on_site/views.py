"""Measuring on site: all openings by wall, and one size at a time."""

from collections.abc import Sequence
from functools import partial

from django.contrib import messages
from django.http import HttpResponse, JsonResponse
from django.shortcuts import redirect
from django.urls import reverse
from django_htmx.http import HttpResponseClientRedirect, replace_url

from fronts.figures.what_follows import WhatFollows
from fronts.models import Opening
from fronts.pages.on_site.forms import PHOTO, PhotoForm, SizeForm
from fronts.pages.on_site.rows.at_size import PAIR, AtSize, at_size, follows_from
from fronts.pages.on_site.rows.keys import digit_keys, fraction_keys
from fronts.pages.on_site.rows.openings import Stop, by_wall, stops_of, to_continue
from fronts.pages.on_site.rows.photos import photos_by_wall
from fronts.pages.shared.announcing import announce_change
from fronts.pages.shared.follows import say_what_follows
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import entered_at, found_or_404, job_view, posted, who
from fronts.pages.shared.photos_sent import held_with_photos
from fronts.pages.shared.photos_shown import PhotoShown, photo_answer
from fronts.rules.site_sizes import NAMES
from fronts.selectors.kitchens import cabinets_of, opening_of, placed_kitchen_of
from fronts.selectors.photos import photo_of, photos_of, snag_photos_of
from fronts.services.photos import photo_add, photo_delete
from fronts.services.site_sizes import size_measure
from shopjobs.access import SignedInRequest
from shopjobs.edit_conflict import last_writer
from shopjobs.models import Job
from shopjobs.pages import render_page, wants_part

_OF_SNAGS = ("job-snags", "job-sign-off")
_OF_THE_SITE = ("set-up", "jigs")
"""The sheets of the whole kitchen to which the page of what is fitted leads."""
PAGE, SIZE = "fronts/on_site/page.html", "fronts/on_site/size.html"


@job_view("measure", "GET", "HEAD")
def job_on_site(request: SignedInRequest, job: Job) -> HttpResponse:
    """Show the job's openings wall by wall, and what is measured of each."""
    stops = stops_of(job, placed_kitchen_of(job))
    context = {
        "job": job,
        "step": "measure",
        "walls": _with_photos(job, by_wall(stops)),
        "openings": len(stops),
        "measured": sum(stop.is_measured for stop in stops),
        "go_on": to_continue(stops),
    }
    return render_page(request, PAGE, context)


def _with_photos(
    job: Job, walls: list[tuple[str, list[Stop]]]
) -> list[tuple[str, list[Stop], list[PhotoShown]]]:
    """The walls with their photos; last those of which there are photos alone."""
    photos = photos_by_wall(job)
    known = [(wall, stops, photos.pop(wall, [])) for wall, stops in walls]
    return [*known, *((wall, [], shown) for wall, shown in photos.items())]


@job_view("measure", "POST", holds=False)
def photo_new(request: SignedInRequest, job: Job) -> HttpResponse:
    """Keep a photo of a wall."""
    form = PhotoForm(request.POST, request.FILES, auto_id=f"{PHOTO}-%s")
    with held_with_photos(request, job, form) as (held, images):
        return _photo_answer(request, held, form, images)


def _photo_answer(
    request: SignedInRequest, job: Job, form: PhotoForm, images: Sequence[str]
) -> HttpResponse:
    wall = request.POST.get("wall", "")
    return form_answer(
        request, form, show=partial(_photos, request, job, wall, form),
        save=lambda: photo_add(
            job=job, wall=wall, image=images[0], entered=entered_at(request), **who(request)
        ),
        done=lambda _: _photos(request, job, wall),
    )  # fmt: skip


@job_view("measure", "GET", "HEAD")
def photo_image(_: SignedInRequest, job: Job, key: int) -> HttpResponse:
    """The photo itself, to its shop alone."""
    return photo_answer(found_or_404(photo_of, job, key).image)


@job_view("measure", "POST")
def photo_delete_now(request: SignedInRequest, job: Job, key: int) -> HttpResponse:
    """Take a photo away; Undo brings it back."""
    photo = found_or_404(photo_of, job, key)
    photo_delete(photo=photo, **who(request))
    return _photos(request, job, photo.wall)


def _photos(
    request: SignedInRequest,
    job: Job,
    wall: str,
    form: PhotoForm | None = None,
    *,
    status: int = 200,
) -> HttpResponse:
    """The wall's photos, with what was refused; the whole page without htmx."""
    if not wants_part(request):
        if form is not None:
            told = [str(one) for errors in form.errors.values() for one in errors]
            messages.error(request, " ".join(told))
        return redirect("fronts:job-on-site", job.pk)
    shown = photos_by_wall(job).get(wall, [])
    context = {"job": job, "wall": wall, "shown": shown, "form": form}
    answer = render_page(request, PAGE, context, partial="photos", status=status)
    return announce_change(answer) if form is None else answer


@job_view("measure", "GET", "HEAD")
def job_along(_: SignedInRequest, job: Job) -> HttpResponse:
    """The addresses of all that is taken along to the site: pages to measure and fit,
    sheets, photos."""
    here = [job.pk]
    openings = [stop.key for stop in stops_of(job, placed_kitchen_of(job))]
    cabinets = list(cabinets_of(job).prefetch_related(None).values_list("pk", flat=True))
    pages = [
        reverse(f"fronts:{name}", args=here) for name in ("job-fit", "job-on-site", *_OF_SNAGS)
    ]
    for cabinet in cabinets:
        pages.append(reverse("fronts:job-fit-cabinet", args=[*here, cabinet]))
    for opening in openings:
        pages += [reverse("fronts:on-site-size", args=[*here, opening, name]) for name in NAMES]
    pages += [reverse("fronts:cabinet-sheet", args=[*here, cabinet]) for cabinet in cabinets]
    pages += [reverse("fronts:job-sheet", args=[*here, key]) for key in _OF_THE_SITE]
    photos = photos_of(job).values_list("pk", flat=True)
    pages += [reverse("fronts:photo-image", args=[*here, photo]) for photo in photos]
    of_snags = snag_photos_of(job).values_list("snag", "pk")
    pages += [reverse("fronts:snag-photo-image", args=[*here, *keys]) for keys in of_snags]
    return JsonResponse({"pages": pages})


@job_view("measure")
def on_site_size(request: SignedInRequest, job: Job, opening_id: int, size: str) -> HttpResponse:
    """Take one size of an opening, and go on to the next."""
    at = found_or_404(at_size, job, opening_id, size, request.GET.get(PAIR, ""))
    form = _form(request, at)
    return form_answer(
        request,
        form,
        show=partial(_shown, request, at, form),
        save=partial(_save, request, at, form),
        done=lambda opening: _went_on(request, at, form, opening),
        ask=lambda asks: _shown(request, at, form, question=asks.message, status=422),
    )


def _form(request: SignedInRequest, at: AtSize, *, anew: bool = False) -> SizeForm:
    form = SizeForm(
        None if anew else posted(request),
        unit=at.job.unit,
        held=at.stop.opening.measured,
        size=at.size.name,
        auto_id="size-%s",
    )
    form.written_by = partial(last_writer, at.job, (Opening(pk=at.stop.key),))
    return form


def _save(request: SignedInRequest, at: AtSize, form: SizeForm) -> Opening:
    return size_measure(
        opening=opening_of(at.job, at.stop.key),
        name=at.size.name,
        length=form.length,
        pair=at.pair,
        kitchen=at.kitchen,
        confirmed=form.is_sure or form.length == at.length,
        **who(request),
    )


def _went_on(request: SignedInRequest, at: AtSize, form: SizeForm, _: Opening) -> HttpResponse:
    """The next size, with what is kept of this one said; after the last all openings."""
    now = at_size(at.job, at.stop.key, at.size.name, at.carried)
    to, said, follows = now.after, now.said, follows_from(at, now)
    if at.waits and form.typed:
        to = now.with_pair(form.typed)
        said = f"{at.size.title.capitalize()}: {form.typed}. It is kept with the other diagonal."
    if to is not None and wants_part(request):
        shown = _shown(request, to, _form(request, to, anew=True), said=said, follows=follows)
        return announce_change(shown)
    messages.success(request, said)
    say_what_follows(request, follows)
    address = to.action if to else reverse("fronts:job-on-site", args=[at.job.pk])
    return HttpResponseClientRedirect(address) if wants_part(request) else redirect(address)


def _shown(
    request: SignedInRequest,
    at: AtSize,
    form: SizeForm,
    *,
    said: str = "",
    follows: WhatFollows | None = None,
    question: str = "",
    status: int = 200,
) -> HttpResponse:
    context = {
        "job": at.job,
        "step": "measure",
        "at": at,
        "form": form,
        "field": form.asked,
        "said": said,
        "follows": follows,
        "question": question,
        "digits": digit_keys(at.job.unit),
        "fractions": fraction_keys(at.job.unit, at.kitchen.job.step),
        "in_place": wants_part(request),
        "back": at.action,
    }
    response = render_page(request, SIZE, context, partial="size-step", status=status)
    return replace_url(response, at.action) if wants_part(request) else response
