"""A job's sheets, as PDF on the shop's paper."""

from collections.abc import Sequence
from dataclasses import replace
from typing import cast

from django.contrib import messages
from django.http import Http404, HttpResponse, StreamingHttpResponse
from django.http.response import HttpResponseBase
from django.utils import timezone
from django.utils.cache import get_conditional_response
from django.utils.http import quote_etag
from django.views.decorators.http import require_safe

from fronts.pages.shared.file_answers import asked_about_again, inline
from fronts.pages.shared.job_view import found_or_404
from fronts.pages.shared.wall_addresses import WALL
from fronts.pages.sheets.views.refused import not_printed
from fronts.selectors.kitchens import cabinet_of, cabinets_of
from fronts.selectors.plans import finished_plan
from fronts.selectors.records import records_of
from fronts.selectors.sheet_sets import printed_before
from fronts.sheets import fitting, wall
from fronts.sheets.cutting_plan import NoPlan
from fronts.sheets.job_source import source_of_job, with_codes_kept
from fronts.sheets.pdf import (
    LARGER,
    PageSize,
    Paper,
    PrintingError,
    render,
)
from fronts.sheets.places import printing_place
from fronts.sheets.registry import FITTING, SHEETS, Printout, fitting_printout
from fronts.sheets.sheet_page import SheetSource
from shopjobs.access import SignedInRequest, signed_in
from shopjobs.models import Job
from shopjobs.pages import go_to, site_address
from shopjobs.views.jobs import job_or_404

MOST_AT_ONCE = 3
"""Cabinets whose fitting sheets are made while one waits: more come with the whole set."""


@signed_in
@require_safe
def job_sheet(request: SignedInRequest, job_id: int, key: str) -> HttpResponseBase:
    """One of the job's sheets, by its key."""
    job, sheet = job_or_404(request, job_id), SHEETS.get(key)
    if sheet is None:
        raise Http404
    count = cabinets_of(job).count() if key == FITTING else 0
    if count > MOST_AT_ONCE:
        messages.error(
            request,
            f"The fitting sheets of {count} cabinets are printed with the whole set, below; "
            "the sheet of one cabinet is on its own page.",
        )
        return go_to(request, "fronts:job-sheets", job.pk)
    try:
        plan = finished_plan(job) if sheet.needs_plan else None
        source = source_of_job(job, timezone.localdate(), plan)
        if sheet.needs_records:
            source = replace(source, records=records_of(job))
        if key == FITTING:
            source = _with_codes(request, job, source, fitting.fitted_cabinets(source))
        html = sheet.content(source)
    except NoPlan:
        messages.info(request, "There is no cutting plan yet. Make it here.")
        return go_to(request, "fronts:job-cut", job.pk)
    return _printed(request, job, sheet.name, Printout("", lambda: html))


@signed_in
@require_safe
def cabinet_sheet(request: SignedInRequest, job_id: int, cabinet_id: int) -> HttpResponseBase:
    """The fitting sheet of one cabinet."""
    job = job_or_404(request, job_id)
    label = found_or_404(cabinet_of, job, cabinet_id).label
    source = _with_codes(request, job, source_of_job(job, timezone.localdate()), [label])
    return _printed(request, job, f"fitting {label}", fitting_printout(source, label))


@signed_in
@require_safe
def wall_sheet(request: SignedInRequest, job_id: int) -> HttpResponseBase:
    """The drawing of the wall that the address names, on larger paper where that says so."""
    job = job_or_404(request, job_id)
    source, name = source_of_job(job, timezone.localdate()), request.GET.get(WALL, "")
    if name not in source.kitchen.wall_names:
        raise Http404
    paper = cast(Paper, str(job.shop.paper))
    size = LARGER[paper] if "larger" in request.GET else paper
    drawn = Printout("", lambda: wall.content(source, name, size))
    return _printed(request, job, f"wall {name}", drawn, size)


def _with_codes(
    request: SignedInRequest, job: Job, source: SheetSource, labels: Sequence[str]
) -> SheetSource:
    """Whatever opens as a PDF may be printed: what it shows is frozen."""
    return with_codes_kept(source, job, labels, site_address(request), timezone.now())


def _printed(
    request: SignedInRequest, job: Job, called: str, sheet: Printout, size: PageSize | None = None
) -> HttpResponseBase:
    """The sheet as a PDF on paper of a size, or the shop's.

    None is made again for a browser that has just this one.
    """
    paper = size or cast(Paper, str(job.shop.paper))
    name = sheet.made_from(paper)
    etag = quote_etag(name[:32])
    known: HttpResponse | None = get_conditional_response(request, etag=etag)
    if known is not None:
        return known
    try:
        content = b"" if request.method == "HEAD" else _made(job, name, sheet, paper)
    except PrintingError as lacking:
        return not_printed(request, lacking, job)
    file = inline(content, "application/pdf", f"{job.number} {called}.pdf")
    # A file that was not made is no file of length 0.
    response = file if content else StreamingHttpResponse((), headers=dict(file.items()))
    return asked_about_again(response, etag)


def _made(job: Job, name: str, sheet: Printout, paper: PageSize) -> bytes:
    """The PDF; the one of the job's set, where that holds just this."""
    before = printed_before(job, [name]).get(name)
    if before is not None:
        return before
    with printing_place(job.shop_id):
        return render(sheet.html(), paper)
