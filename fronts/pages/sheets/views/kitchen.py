"""The printed sheets, as PDF on the shop's paper."""

import hashlib
from collections.abc import Callable
from functools import partial
from typing import cast

from django.contrib import messages
from django.http import Http404, HttpResponse, StreamingHttpResponse
from django.http.response import HttpResponseBase
from django.utils import timezone
from django.utils.cache import get_conditional_response
from django.utils.http import quote_etag
from django.views.decorators.http import require_safe

from fronts.models import Cabinet
from fronts.pages.shared.file_answers import inline
from fronts.rules.fingerprint import fingerprint
from fronts.rules.kitchen import Kitchen
from fronts.rules.results import Schedule
from fronts.rules.schedule import schedule as schedule_for
from fronts.selectors.kitchens import cabinet_of, cabinets_of
from fronts.sheets import fitting, front_schedule, hardware, jigs
from fronts.sheets.pdf import Paper, PrintingBusyError, PrintingError, render
from fronts.sheets.sheet_page import Imprint
from fronts.snapshot import kitchen_of
from shopjobs.access import SignedInRequest, signed_in
from shopjobs.models import Job
from shopjobs.pages import go_to, render_page
from shopjobs.views.jobs import job_or_404

Content = Callable[[Schedule, Kitchen, Imprint], str]
MOST_AT_ONCE = 60
"""Cabinets whose fitting sheets come in one file: about as many as a minute makes."""


@signed_in
@require_safe
def sheet_schedule(request: SignedInRequest, job_id: int) -> HttpResponseBase:
    """The front schedule and cut sheet of a job."""
    return _sheet(request, job_id, "front schedule", front_schedule.content)


@signed_in
@require_safe
def sheet_hardware(request: SignedInRequest, job_id: int) -> HttpResponseBase:
    """The hardware sheet of a job."""
    return _sheet(request, job_id, "hardware", _hardware)


@signed_in
@require_safe
def sheet_jigs(request: SignedInRequest, job_id: int) -> HttpResponseBase:
    """All jigs and shims of a job."""
    return _sheet(request, job_id, "jigs and shims", jigs.content)


@signed_in
@require_safe
def sheet_fitting(request: SignedInRequest, job_id: int, cabinet_id: int) -> HttpResponseBase:
    """The fitting sheet of one cabinet."""
    job = job_or_404(request, job_id)
    try:
        label = cabinet_of(job, cabinet_id).label
    except Cabinet.DoesNotExist as missing:
        raise Http404 from missing
    return print_sheet(request, job, f"fitting {label}", _made(job, partial(_of_cabinet, label)))


@signed_in
@require_safe
def sheet_all_fittings(request: SignedInRequest, job_id: int) -> HttpResponseBase:
    """The fitting sheets of all cabinets, where they aren't too many for one file."""
    job = job_or_404(request, job_id)
    count = cabinets_of(job).count()
    if count > MOST_AT_ONCE:
        messages.error(
            request,
            f"{count} cabinets are too many for one file, which takes {MOST_AT_ONCE}. Print the "
            "sheet of each cabinet from its own page: the cabinets stand below.",
        )
        return go_to(request, "fronts:job-fit", job.pk)
    return _sheet(request, job_id, "fitting sheets", fitting.content)


def _of_cabinet(label: str, schedule: Schedule, kitchen: Kitchen, imprint: Imprint) -> str:
    return fitting.content(schedule, kitchen, imprint, [label])


def _hardware(schedule: Schedule, kitchen: Kitchen, imprint: Imprint) -> str:
    return hardware.content(schedule, imprint)


def _sheet(request: SignedInRequest, job_id: int, name: str, content: Content) -> HttpResponseBase:
    job = job_or_404(request, job_id)
    return print_sheet(request, job, name, _made(job, content))


def _made(job: Job, content: Content) -> str:
    kitchen = kitchen_of(job)
    schedule = schedule_for(kitchen)
    return content(schedule, kitchen, Imprint(timezone.localdate(), fingerprint(schedule)))


def print_sheet(request: SignedInRequest, job: Job, name: str, html: str) -> HttpResponseBase:
    """The sheet as a PDF; none is made again for a browser that has just this one."""
    paper = cast(Paper, str(job.shop.paper))
    etag = quote_etag(hashlib.sha256(f"{paper}\n{html}".encode()).hexdigest()[:32])
    known: HttpResponse | None = get_conditional_response(request, etag=etag)
    if known is not None:
        return known
    try:
        content = b"" if request.method == "HEAD" else render(html, paper)
    except PrintingError as lacking:
        busy = isinstance(lacking, PrintingBusyError)
        context = {"job": job, "message": str(lacking), "busy": busy}
        return render_page(request, "fronts/sheets/no_printing.html", context, status=503)
    file = inline(content, "application/pdf", f"{job.number} {name}.pdf")
    # A file that was not made is no file of length 0.
    response = file if content else StreamingHttpResponse((), headers=dict(file.items()))
    response.headers["ETag"] = etag
    response.headers["Cache-Control"] = "private, no-cache"
    return response
