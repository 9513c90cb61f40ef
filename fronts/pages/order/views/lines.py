"""The hardware order: gone through line by line, and taken away as a file."""

from functools import partial

from django.http import HttpResponse

from fronts.models import OrderCheck
from fronts.pages.order.forms.lines import LinesForm, OrderLineForm
from fronts.pages.order.rows.csv_file import order_csv
from fronts.pages.order.rows.lines import hardware_list
from fronts.pages.order.views.page import answered, order_page
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import job_view, posted, who
from fronts.rules.results import Schedule
from fronts.selectors.order_progress import order_progress
from fronts.selectors.orders import order_check_of, order_lines
from fronts.selectors.schedules import schedule_of
from fronts.services.order_lists import (
    order_line_check,
    order_line_note,
    order_line_uncheck,
    order_lines_check,
)
from shopjobs.access import SignedInRequest
from shopjobs.edit_conflict import last_writer
from shopjobs.models import Job


@job_view("measure", to_post="order")
def job_order(request: SignedInRequest, job: Job) -> HttpResponse:
    """Show the hardware list; check a line of it, write a note on it, or take its mark back."""
    schedule = schedule_of(job)
    form = OrderLineForm(
        posted(request),
        check_of=partial(order_check_of, job),
        written_by=lambda check: last_writer(job, (check,), ""),
    )
    return form_answer(
        request,
        form,
        show=partial(order_page, request, job, schedule, form),
        save=partial(_mark, request, job, schedule, form),
        done=lambda _: answered(request, job, schedule, **_focus(request)),
    )


@job_view("order", "POST")
def order_lines_check_now(request: SignedInRequest, job: Job) -> HttpResponse:
    """Check several lines as they were shown."""
    schedule, form = schedule_of(job), LinesForm(request.POST)
    return form_answer(
        request,
        form,
        show=partial(order_page, request, job, schedule, form),
        save=lambda: order_lines_check(
            job=job, schedule=schedule, looked_at=form.cleaned_data["line"], **who(request)
        ),
        done=lambda _: answered(request, job, schedule, after=request.POST.get("last", "")),
    )


@job_view("measure", "GET")
def job_order_csv(request: SignedInRequest, job: Job) -> HttpResponse:
    """The hardware list as a file for a spreadsheet."""
    lines = order_lines(job, schedule_of(job))
    return order_csv(job, hardware_list(job, lines, order_progress(job)))


def _focus(request: SignedInRequest) -> dict[str, str]:
    """Who checks a line goes on to the next; all else stays at its line."""
    item = request.POST.get("item", "")
    return {"after" if request.POST.get("mark") == "check" else "at": item}


def _mark(
    request: SignedInRequest, job: Job, schedule: Schedule, form: OrderLineForm
) -> OrderCheck | None:
    asked, by_whom = form.cleaned_data, who(request)
    item, note = asked["item"], asked["note"]
    if asked["mark"] in ("uncheck", "drop"):
        order_line_uncheck(job=job, item=item, drop=asked["mark"] == "drop", **by_whom)
        return None
    if asked["mark"] == "note":
        order_line_note(job=job, schedule=schedule, item=item, note=note, **by_whom)
        return None
    return order_line_check(
        job=job, schedule=schedule, item=item, seen=asked["need"], looked_at=asked["looked_at"],
        note=note, **by_whom,
    )  # fmt: skip
