"""Fitting: the cabinets by wall, and one cabinet's page for the installer's phone."""

from dataclasses import replace
from functools import partial

from django.contrib import messages
from django.core.exceptions import ValidationError
from django.http import HttpResponse
from django.shortcuts import redirect
from django.urls import reverse

from fronts.figures.cautions import at_cabinet as cautions_at
from fronts.figures.findings import findings_of, places_at
from fronts.figures.sizes import size
from fronts.figures.work_steps import work_for
from fronts.models import FitRecord
from fronts.models import Front as FrontRow
from fronts.pages.fit.forms import FitForm
from fronts.pages.fit.rows.at_cabinet import AtCabinet, at_cabinet, cabinet_numbers
from fronts.pages.fit.rows.fronts import FrontToFit, as_recorded, elevation_of, record_key
from fronts.pages.fit.rows.walls import walls_of
from fronts.pages.shared.announcing import announce_change
from fronts.pages.shared.blocking_findings import findings_with_links
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import found_or_404, job_view, posted, who
from fronts.rules.fits import hung_as
from fronts.rules.planned_gap import planned_gaps
from fronts.rules.results import Front
from fronts.selectors.kitchens import fit_records_of, front_keys_of, placed_kitchen_of
from fronts.selectors.schedules import schedule_for
from fronts.services.fits import fit_record
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import render_page, wants_part

CABINET = "fronts/fit/cabinet.html"


@job_view("measure", "GET", "HEAD")
def job_fit(request: SignedInRequest, job: Job) -> HttpResponse:
    """Show the job's cabinets by wall, and which of them are fitted."""
    kitchen = placed_kitchen_of(job)
    walls = walls_of(kitchen, schedule_for(job, kitchen), cabinet_numbers(job), fit_records_of(job))
    rows = [row for wall in walls for row in wall.cabinets if row.fronts]
    context = {
        "job": job,
        "step": "fit",
        "walls": walls,
        "fitted": sum(row.is_fitted for row in rows),
        "wanted": len(rows),
    }
    return render_page(request, "fronts/fit/page.html", context)


@job_view("measure", to_post="fit")
def job_fit_cabinet(request: SignedInRequest, job: Job, cabinet_id: int) -> HttpResponse:
    """Show all that is needed at one cabinet; record how a front of it fitted."""
    at = found_or_404(at_cabinet, job, cabinet_id)
    label = request.POST.get("front", "")
    form = FitForm(posted(request), unit=job.unit, auto_id=f"{record_key(label)}-%s")
    front = at.front(label)
    if not form.is_bound:
        return _page(request, at, form)
    if front is None:
        return _gone(request, at, form)
    return form_answer(
        request,
        form,
        show=partial(_shown, request, at, form, front),
        save=partial(_record, request, at, front, form),
        done=lambda _: _recorded(request, at, label),
    )


def _gone(request: SignedInRequest, at: AtCabinet, form: FitForm) -> HttpResponse:
    """The front was changed away while somebody stood before it: nothing is recorded."""
    form.add_error(
        None,
        f"{request.POST.get('front') or 'This front'} is no longer part of cabinet "
        f"{at.cabinet.label}: the kitchen has changed. Nothing was recorded.",
    )
    return _page(request, at, form, status=422)


def _record(request: SignedInRequest, at: AtCabinet, front: Front, form: FitForm) -> FitRecord:
    if request.POST.get("hung", hung_as(front)) != hung_as(front):
        raise ValidationError(
            f"{front.label} was changed since it was fitted as this says. Look at it as it is now, "
            "then record it."
        )
    return fit_record(
        front=FrontRow.objects.get(pk=front_keys_of(at.job)[front.label]),
        facts=replace(form.entered(front.label), planned=planned_gaps(front, at.kitchen)),
        hung=hung_as(front),
        fingerprint=at.now,
        **who(request),
    )


def _recorded(request: SignedInRequest, at: AtCabinet, label: str) -> HttpResponse:
    if wants_part(request):
        now = replace(at, records=fit_records_of(at.job))
        shown = _shown(request, now, FitForm(unit=at.job.unit), now.front(label))
        return announce_change(shown)
    messages.success(request, f"The fit of {label} is recorded.")
    here = reverse("fronts:job-fit-cabinet", args=[at.job.pk, at.number])
    return redirect(f"{here}#{record_key(label)}")


def _shown(
    request: SignedInRequest,
    at: AtCabinet,
    form: FitForm,
    front: Front | None,
    *,
    status: int = 200,
) -> HttpResponse:
    """The one front's part for htmx; the whole page, with what was typed, without it."""
    if front is None or not wants_part(request):
        return _page(request, at, form, status=status)
    context = {
        "job": at.job,
        "cabinet_id": at.number,
        "front": _front(at, front, form),
        "answered": True,
    }
    return render_page(request, CABINET, context, partial="fit-record", status=status)


def _page(
    request: SignedInRequest, at: AtCabinet, form: FitForm, *, status: int = 200
) -> HttpResponse:
    cabinet, fittings, unit = at.cabinet, at.fittings, at.job.unit
    about = findings_of(at.schedule, places_at(cabinet, at.fronts))
    back = f"fit-{at.number}"
    context = {
        "job": at.job,
        "step": "fit",
        "cabinet": cabinet,
        "cabinet_id": at.number,
        "sizes": size(unit, cabinet.width, cabinet.height, cabinet.depth),
        "before": at.before,
        "after": at.after,
        "findings": findings_with_links(request, at.job, about.every, back=back),
        "stopped": bool(about.stops),
        "elevation": elevation_of(at.schedule, at.kitchen, cabinet.label),
        "fronts": [_front(at, front, form) for front in at.fronts],
        "works": work_for(at.fronts, fittings, at.kitchen),
        "cautions": cautions_at(cabinet, at.fronts, list(fittings.values())),
        "form": form,
    }
    return render_page(request, CABINET, context, status=status)


def _front(at: AtCabinet, front: Front, sent: FitForm) -> FrontToFit:
    """The front; a form that was sent belongs to the front that it names."""
    if sent.data.get("front") == front.label:
        return at.shown(front, sent)
    initial = {"front": front.label, **as_recorded(at.records.get(front.label))}
    auto_id = f"{record_key(front.label)}-%s"
    return at.shown(front, FitForm(unit=at.job.unit, initial=initial, auto_id=auto_id))
