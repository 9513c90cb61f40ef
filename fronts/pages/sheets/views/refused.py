"""What is answered where a sheet can't be made, or not yet."""

from django.http import HttpResponse

from fronts.sheets.pdf import PrintingBusyError, PrintingError
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import render_page

PAGE, OF_NO_JOB = "fronts/sheets/no_printing.html", "base.html"


def not_printed(
    request: SignedInRequest, lacking: PrintingError, job: Job | None = None
) -> HttpResponse:
    """Say why; where others print just now, the page asks again by itself."""
    busy = isinstance(lacking, PrintingBusyError)
    about = {"job": job} if job else {"layout": OF_NO_JOB}
    context = {**about, "message": str(lacking), "busy": busy}
    refused = render_page(request, PAGE, context, status=503)
    if busy:
        refused.headers["Retry-After"] = "2"
        # Django logs each 503 as a failure of the site's, and those are mailed; it is none.
        refused._has_been_logged = True  # type: ignore[attr-defined]
    return refused
