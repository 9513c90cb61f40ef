"""One cabinet's page for the installer's phone, and how each of its fronts fitted."""

from dataclasses import replace
from functools import partial
from typing import Any

from django.contrib import messages
from django.core.exceptions import ValidationError
from django.http import HttpResponse
from django.shortcuts import redirect
from django.urls import reverse

from fronts.figures.cautions import at_cabinet as cautions_at
from fronts.figures.cautions import most_at_hand
from fronts.figures.findings import findings_of, places_at
from fronts.figures.sizes import size
from fronts.models import FitRecord
from fronts.models import Front as FrontRow
from fronts.pages.fit.forms import FitForm
from fronts.pages.fit.rows.at_cabinet import AtCabinet, at_cabinet
from fronts.pages.fit.rows.fronts import FrontToFit, elevation_of, front_to_fit, record_key
from fronts.pages.fit.rows.recorded import as_recorded
from fronts.pages.shared.announcing import announce_change
from fronts.pages.shared.blocking_findings import findings_with_links
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import entered_at, found_or_404, job_view, posted, who
from fronts.rules.fits import hung_as
from fronts.rules.kinds import MOST_FRONTS
from fronts.rules.labels import numbered
from fronts.rules.planned_gap import planned_gaps
from fronts.rules.results import Front
from fronts.rules.sign_off import unmade_openings
from fronts.selectors.fits import fits_of
from fronts.services.fits import front_fit
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import PartsResponse, render_page, wants_part

CABINET = "fronts/fit/cabinet.html"


@job_view("measure", to_post="fit")
def job_fit_cabinet(request: SignedInRequest, job: Job, cabinet_id: int) -> HttpResponse:
    """Show all that is needed at one cabinet; record how a front of it stands and fitted."""
    at = found_or_404(at_cabinet, job, cabinet_id)
    label = request.POST.get("front", "")
    form = FitForm(posted(request), unit=job.unit, auto_id=f"{record_key(label)}-%s")
    front = at.front(label)
    if not form.is_bound:
        return cabinet_page(request, at, form)
    return form_answer(
        request,
        form,
        show=partial(_shown, request, at, form, front),
        save=partial(_record, request, at, front, form),
        done=lambda record: _recorded(request, at, label, record),
        ask=lambda asks: _shown(request, at, form, front, question=asks.message, status=422),
    )


def gone(at: AtCabinet, label: str) -> ValidationError:
    """The front was changed away while somebody stood before it: nothing is recorded."""
    unmade = unmade_openings(at.kitchen, at.schedule)
    if any(label in (one, *numbered(one, MOST_FRONTS)) for one in unmade):
        return ValidationError(f"{label} can’t be worked out now: see its stop, then record it.")
    return ValidationError(
        f"{label or 'This front'} is no longer part of cabinet {at.cabinet.label}: the kitchen "
        "has changed. Nothing was recorded."
    )


def _record(
    request: SignedInRequest, at: AtCabinet, front: Front | None, form: FitForm
) -> FitRecord:
    if front is None:
        raise gone(at, form.cleaned_data["front"])
    if request.POST.get("hung", hung_as(front)) != hung_as(front):
        raise ValidationError(
            f"{front.label} was changed since it was fitted as this says. Look at it as it is now, "
            "then record it."
        )
    return front_fit(
        front=FrontRow.objects.get(pk=at.keys[front.label]),
        hangs=front,
        kitchen=at.kitchen,
        facts=form.entered(front.label, planned_gaps(front, at.kitchen)),
        fingerprint=at.now,
        confirmed=form.is_sure,
        entered=entered_at(request),
        **who(request),
    )


def _recorded(
    request: SignedInRequest, at: AtCabinet, label: str, record: FitRecord
) -> HttpResponse:
    now = replace(at, records=fits_of(at.job, at.keys))
    meanwhile = _meanwhile(request, now, label, record)
    if wants_part(request):
        front, form = now.front(label), FitForm(unit=at.job.unit)
        return announce_change(_shown(request, now, form, front, meanwhile=meanwhile))
    messages.success(request, f"{label}: recorded.")
    if meanwhile is not None:
        messages.warning(request, f"{meanwhile.by} recorded {label} too: both are kept.")
    here = reverse("fronts:job-fit-cabinet", args=[at.job.pk, at.number])
    return redirect(f"{here}#{record_key(label)}")


def _meanwhile(
    request: SignedInRequest, now: AtCabinet, label: str, record: FitRecord
) -> FitRecord | None:
    """What somebody else recorded of the front since the form was made, the latest of it."""
    seen = request.POST.get("seen", "")
    known = int(seen) if seen.isdecimal() and len(seen) < 19 else 0
    others = (
        one
        for one in now.records.get(label, ())
        if one.pk > known and one.fitted_by_id != record.fitted_by_id
    )
    return next(others, None)


def _shown(
    request: SignedInRequest,
    at: AtCabinet,
    form: FitForm,
    front: Front | None,
    *,
    question: str = "",
    meanwhile: FitRecord | None = None,
    status: int = 200,
) -> HttpResponse:
    """The one front's part for htmx, and what follows from it; the whole page without it."""
    if front is None and form.is_bound and not form.non_field_errors():
        form.add_error(None, gone(at, request.POST.get("front", "")))
    if front is None or not wants_part(request):
        return cabinet_page(request, at, form, question=question, status=status)
    context = {
        "job": at.job,
        "cabinet_id": at.number,
        "at": at,
        "front": _front(at, front, form, meanwhile=meanwhile),
        "question": question,
        "pressed": request.POST.get("state", ""),
        "answered": True,
        "part": True,
    }
    parts = [f"{CABINET}#{part}" for part in ("fit-record", "fronts-here", "where-next")]
    response = PartsResponse(request, parts, context)
    response.status_code = status
    return response


def cabinet_page(
    request: SignedInRequest,
    at: AtCabinet,
    form: FitForm,
    *,
    question: str = "",
    status: int = 200,
) -> HttpResponse:
    """The whole page of a cabinet; a form that was sent stands at its front."""
    cabinet, unit = at.cabinet, at.job.unit
    about = findings_of(at.schedule, places_at(cabinet, at.fronts))
    beside = [one for one in about.every if one not in about.stops]
    back = f"fit-{at.number}"
    cautions = cautions_at(cabinet, at.fronts, list(at.fittings.values()))
    context: dict[str, Any] = {
        "job": at.job,
        "step": "fit",
        "at": at,
        "cabinet": cabinet,
        "cabinet_id": at.number,
        "sizes": size(unit, cabinet.width, cabinet.height, cabinet.depth),
        "stops": findings_with_links(request, at.job, about.stops, back=back),
        "findings": findings_with_links(request, at.job, beside, back=back),
        "elevation": elevation_of(at.schedule, at.kitchen, cabinet.label),
        "fronts": [_front(at, front, form) for front in at.fronts],
        "caution": most_at_hand(cautions),
        "cautions": [one for one in cautions if one != most_at_hand(cautions)],
        "form": form,
        "question": question,
        "pressed": request.POST.get("state", ""),
    }
    return render_page(request, CABINET, context, status=status)


def _front(
    at: AtCabinet, front: Front, sent: FitForm, *, meanwhile: FitRecord | None = None
) -> FrontToFit:
    """The front; a form that was sent belongs to the front that it names."""
    known = at.at(front, meanwhile=meanwhile)
    if sent.data.get("front") == front.label:
        return front_to_fit(known, sent)
    initial = {"front": front.label, **as_recorded(known.record)}
    auto_id = f"{record_key(front.label)}-%s"
    return front_to_fit(known, FitForm(unit=at.job.unit, initial=initial, auto_id=auto_id))
