"""The hardware order: gone through line by line, and taken away as a file."""

from functools import partial

from django.http import HttpResponse

from fronts.models import OrderCheck
from fronts.pages.order.forms import OrderLineForm
from fronts.pages.order.rows.csv_file import order_csv
from fronts.pages.order.rows.lines import Row, hardware_list
from fronts.pages.shared.announcing import announce_change
from fronts.pages.shared.blocking_findings import blocking_findings
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import job_view, posted, who
from fronts.rules.results import Schedule
from fronts.selectors.orders import order_check_of
from fronts.selectors.schedules import schedule_of
from fronts.services.order_lists import order_line_check, order_line_uncheck
from shopjobs.access import SignedInRequest
from shopjobs.models import Job
from shopjobs.pages import go_to, render_page, wants_part


@job_view("measure", to_post="order")
def job_order(request: SignedInRequest, job: Job) -> HttpResponse:
    """Show the hardware list; check a line of it, or take its mark back."""
    schedule = schedule_of(job)
    form = OrderLineForm(posted(request), check_of=partial(order_check_of, job))
    return form_answer(
        request,
        form,
        show=partial(_page, request, job, schedule, form),
        save=partial(_mark, request, job, schedule, form),
        done=lambda _: _marked(request, job, schedule),
    )


@job_view("measure", "GET")
def job_order_csv(request: SignedInRequest, job: Job) -> HttpResponse:
    """The hardware list as a file for a spreadsheet."""
    return order_csv(job, hardware_list(job, schedule_of(job)))


def _mark(
    request: SignedInRequest, job: Job, schedule: Schedule, form: OrderLineForm
) -> OrderCheck | None:
    asked, by_whom = form.cleaned_data, who(request)
    if asked["mark"] == "uncheck":
        order_line_uncheck(job=job, item=asked["item"], **by_whom)
        return None
    return order_line_check(
        job=job, schedule=schedule, item=asked["item"], seen=asked["need"],
        note=asked["note"], **by_whom,
    )  # fmt: skip


def _marked(request: SignedInRequest, job: Job, schedule: Schedule) -> HttpResponse:
    if wants_part(request):
        return announce_change(_page(request, job, schedule, OrderLineForm()))
    return go_to(request, "fronts:job-order", job.pk)


def _page(
    request: SignedInRequest,
    job: Job,
    schedule: Schedule,
    form: OrderLineForm,
    *,
    status: int = 200,
) -> HttpResponse:
    hardware = hardware_list(job, schedule)
    context = {
        "job": job,
        "step": "order",
        "hardware": hardware,
        "lines": [(row, _line_form(row, form)) for row in hardware.rows],
        "stops": blocking_findings(request, job, schedule),
        "form": form,
    }
    return render_page(
        request, "fronts/order/page.html", context, partial="order-list", status=status
    )


def _line_form(row: Row, sent: OrderLineForm) -> OrderLineForm:
    """The line's form; the one that was refused keeps what was typed."""
    if sent.is_bound and sent.data.get("item") == row.line.item:
        sent.auto_id = f"{row.key}-%s"
        return sent
    initial = {"item": row.line.item, "need": row.line.need, "note": row.line.note}
    return OrderLineForm(initial=initial, auto_id=f"{row.key}-%s")
