"""The sign-off, as the client is shown it on site."""

from django.http import HttpResponse

from fronts.figures.sign_off import sign_off_shown
from fronts.pages.shared.job_view import job_view
from fronts.selectors.records import records_of
from fronts.selectors.schedules import worked_out
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import render_page


@job_view("measure", "GET", "HEAD")
def job_sign_off(request: SignedInRequest, job: Job) -> HttpResponse:
    """Show each front's gaps as fitted, or what is missing until the client can sign."""
    kitchen, schedule = worked_out(job)
    shown = sign_off_shown(schedule, kitchen, records_of(job))
    context = {"job": job, "step": "sign-off", "shown": shown}
    return render_page(request, "fronts/sign_off/page.html", context)
