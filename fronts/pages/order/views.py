"""The hardware order: gone through line by line, and taken away as a file."""

from django.core.exceptions import PermissionDenied, ValidationError
from django.http import HttpResponse
from django.utils import timezone
from django.views.decorators.http import require_GET, require_http_methods

from fronts.pages.order.forms import OrderLineForm
from fronts.pages.order.rows.csv_file import order_csv
from fronts.pages.order.rows.lines import hardware_list
from fronts.pages.shared.blocking_findings import blocking_findings
from fronts.rules.results import Schedule
from fronts.selectors.kitchens import schedule_of
from fronts.services.order_lists import order_line_check, order_line_uncheck
from shopjobs.access import SignedInRequest, may, signed_in
from shopjobs.models import Job
from shopjobs.pages import go_to, render_page, wants_part
from shopjobs.views.jobs import job_or_404


@signed_in
@require_http_methods(["GET", "POST"])
def job_order(request: SignedInRequest, job_id: int) -> HttpResponse:
    """Show the hardware list; check a line of it, or take its mark back."""
    job = job_or_404(request, job_id)
    schedule = schedule_of(job)
    if request.method != "POST":
        return _page(request, job, schedule)
    if not may(request.user, "order"):
        raise PermissionDenied
    form = OrderLineForm(request.POST)
    if not _marked(request, form, job, schedule):
        return _page(request, job, schedule, refused=form)
    return (
        _page(request, job, schedule)
        if wants_part(request)
        else go_to(request, "fronts:job-order", job.pk)
    )


@signed_in
@require_GET
def job_order_csv(request: SignedInRequest, job_id: int) -> HttpResponse:
    """The hardware list as a file for a spreadsheet."""
    job = job_or_404(request, job_id)
    return order_csv(job, hardware_list(job, schedule_of(job)))


def _marked(request: SignedInRequest, form: OrderLineForm, job: Job, schedule: Schedule) -> bool:
    if not form.is_valid():
        return False
    asked, now = form.cleaned_data, timezone.now()
    try:
        if asked["mark"] == "uncheck":
            order_line_uncheck(job=job, item=asked["item"], by=request.user, at=now)
        else:
            order_line_check(
                job=job, schedule=schedule, item=asked["item"], seen=asked["need"],
                note=asked["note"], by=request.user, at=now,
            )  # fmt: skip
    except ValidationError as refused:
        form.add_error(None, refused.messages)
        return False
    return True


def _page(
    request: SignedInRequest, job: Job, schedule: Schedule, refused: OrderLineForm | None = None
) -> HttpResponse:
    context = {
        "job": job,
        "step": "order",
        "hardware": hardware_list(job, schedule, refused),
        "stops": blocking_findings(request, job, schedule),
        "form": refused or OrderLineForm(),
    }
    return render_page(
        request, "fronts/order/page.html", context, partial="order-list",
        status=200 if refused is None else 422,
    )  # fmt: skip
