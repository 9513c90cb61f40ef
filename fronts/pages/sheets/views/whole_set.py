"""The page of a job's sheets, and the whole set: printed by a worker, kept for a day."""

import io
import zipfile
from collections.abc import Iterable
from functools import partial
from typing import cast

from django.http import Http404, HttpResponse
from django.http.response import HttpResponseBase
from django.utils import timezone
from django.utils.cache import get_conditional_response
from django.utils.http import quote_etag
from django.views.decorators.http import require_safe

from fronts.models import SheetFile, SheetSet
from fronts.pages.shared.blocking_findings import blocking_findings
from fronts.pages.shared.file_answers import asked_about_again, attachment, inline
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import job_view, posted, who
from fronts.pages.sheets.forms import PrintForm
from fronts.pages.sheets.rows.printed_set import Progress, progress_of, set_shown, single_sheets
from fronts.selectors.plans import finished_plan
from fronts.selectors.sheet_sets import files_of, fittings_of, is_kept, latest_set
from fronts.services.sheet_sets import sheet_set_begin, sheet_set_cancel
from fronts.sheets.fitting import fitted_cabinets
from fronts.sheets.job_source import source_of_job, with_codes_kept
from fronts.sheets.pdf import Paper, made_from
from fronts.sheets.registry import (
    FITTINGS_TOGETHER,
    fittings_together,
    has_fittings_together,
)
from fronts.tasks.sheet_set import sheets_and_pieces
from shopjobs.access import SignedInRequest, signed_in
from shopjobs.models import Job
from shopjobs.pages import go_to, render_page, site_address, wants_part
from shopjobs.views.jobs import job_or_404

PAGE = "fronts/sheets/page.html"
PART = "sheet-set"


@job_view("measure", shop_first=True)
def job_sheets(request: SignedInRequest, job: Job) -> HttpResponse:
    """Show the sheets there are, and the set; have it printed."""
    if wants_part(request) and request.method != "POST":
        progress = progress_of(latest_set(job))
        if progress is not None:
            return _part_at_work(request, job, progress)
    form = PrintForm(posted(request))
    return form_answer(
        request,
        form,
        show=partial(_page, request, job, form),
        save=partial(_begin, request, job),
        done=partial(_begun, request, job),
    )


@job_view("measure", "POST", shop_first=True)
def sheet_set_call_off(request: SignedInRequest, job: Job) -> HttpResponse:
    """Call off the set that is being printed."""
    begun = latest_set(job)
    if begun is not None:
        sheet_set_cancel(sheet_set=begun, **who(request))
    if not wants_part(request):
        return go_to(request, "fronts:job-sheets", job.pk)
    return _page(request, job, PrintForm())


@signed_in
@require_safe
def sheet_set_zip(request: SignedInRequest, job_id: int) -> HttpResponse:
    """All files of the set in one."""
    job = job_or_404(request, job_id)
    made, packed = list(files_of(_kept_set(job))), io.BytesIO()
    files = {each.name: bytes(each.content) for each in made}
    fittings = [each for each in made if each.cabinet]
    if has_fittings_together(each.cabinet for each in fittings):
        files[FITTINGS_TOGETHER] = _together(job, fittings)
    with zipfile.ZipFile(packed, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, content in files.items():
            archive.writestr(name, content)
    return attachment(packed.getvalue(), "application/zip", f"{job.number} sheets.zip")


@signed_in
@require_safe
def sheet_set_fittings(request: SignedInRequest, job_id: int) -> HttpResponseBase:
    """The fitting sheets of all cabinets, to look at and to print.

    They are put together when somebody asks for them, not again for a browser that has them.
    """
    job = job_or_404(request, job_id)
    kept = _kept_set(job)
    parts = fittings_of(kept).values_list("cabinet", "made_from")
    if not has_fittings_together(cabinet for cabinet, _ in parts):
        raise Http404
    etag = quote_etag(made_from(repr([job.number, *parts]), cast(Paper, kept.paper))[:32])
    known: HttpResponse | None = get_conditional_response(request, etag=etag)
    if known is not None:
        return known
    content = _together(job, fittings_of(kept))
    file = inline(content, "application/pdf", f"{job.number} fitting sheets.pdf")
    return asked_about_again(file, etag)


def _together(job: Job, fittings: Iterable[SheetFile]) -> bytes:
    files = ((each.cabinet, bytes(each.content)) for each in fittings)
    return fittings_together(job.number, files)


def _kept_set(job: Job) -> SheetSet:
    kept = latest_set(job)
    if kept is None or not is_kept(kept, timezone.now()):
        raise Http404
    return kept


def _begin(request: SignedInRequest, job: Job) -> SheetSet:
    today, plan, site = timezone.localdate(), finished_plan(job), site_address(request)
    source = source_of_job(job, today, plan)
    with_codes_kept(source, job, fitted_cabinets(source), site, timezone.now())
    sheets, pieces = sheets_and_pieces(source)
    return sheet_set_begin(
        job=job, kitchen=source.kitchen, fingerprint=source.fingerprint, plan=plan,
        sheets=sheets, pieces=pieces, printed_on=today, site=site, **who(request),
    )  # fmt: skip


def _begun(request: SignedInRequest, job: Job, begun: SheetSet) -> HttpResponse:
    if not wants_part(request):
        return go_to(request, "fronts:job-sheets", job.pk)
    begun.task.refresh_from_db()
    progress = progress_of(begun)
    if progress is None:
        return _page(request, job, PrintForm())
    return _part_at_work(request, job, progress)


def _part_at_work(request: SignedInRequest, job: Job, progress: Progress) -> HttpResponse:
    """How far it is, and no more: nothing else is worked out meanwhile."""
    context = {"job": job, "progress": progress}
    return render_page(request, PAGE, context, partial=PART)


def _page(
    request: SignedInRequest,
    job: Job,
    form: PrintForm,
    *,
    status: int = 200,
) -> HttpResponse:
    latest, plan = latest_set(job), finished_plan(job)
    source = source_of_job(job, timezone.localdate(), plan)
    context = {
        "job": job,
        "form": form,
        "keys": single_sheets(source),
        "stops": blocking_findings(request, job, source.schedule),
        "progress": progress_of(latest),
        "fault": "" if latest is None else latest.task.fault,
        "set": set_shown(latest, source, plan, timezone.now()),
        "sheets": sheets_and_pieces(source)[0],
    }
    return render_page(request, PAGE, context, partial=PART, status=status)
