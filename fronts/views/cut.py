"""The cut list of a job."""

from django.http import HttpResponse
from django.views.decorators.http import require_safe

from fronts.selectors.kitchens import schedule_of
from fronts.sheets.imprint import findings_of
from fronts.views.cut_rows import cut_list
from shopjobs.access import SignedInRequest, signed_in
from shopjobs.pages import render_page
from shopjobs.views.jobs import job_or_404


@signed_in
@require_safe
def job_cut(request: SignedInRequest, job_id: int) -> HttpResponse:
    """Show what is to be cut, trimmed and made."""
    job = job_or_404(request, job_id)
    schedule = schedule_of(job)
    context = {
        "job": job,
        "step": "cut",
        "stops": findings_of(schedule).stops,
        "list": cut_list(schedule),
    }
    return render_page(request, "fronts/cut/page.html", context)
