"""The door maker's list: looked through, checked off on receipt, and taken away as files."""

from functools import partial

from django.core.exceptions import ValidationError
from django.http import HttpResponse

from fronts.pages.bought.forms import ReceiptForm
from fronts.pages.bought.rows.files import bought_csv, bought_xlsx
from fronts.pages.bought.rows.lines import BoughtList, Row, bought_list
from fronts.pages.shared.announcing import announce_change
from fronts.pages.shared.blocking_findings import blocking_findings
from fronts.pages.shared.finding_links import Ways
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import job_view, posted, who
from fronts.rules.results import Schedule
from fronts.selectors.labels import keys_by_label
from fronts.selectors.order_states import what_it_waits_for
from fronts.selectors.receipts import received
from fronts.selectors.schedules import schedule_of
from fronts.services.receipts import fronts_receive, receipt_drop, receipt_take_back
from shopjobs.access import SignedInRequest, may
from shopjobs.models import Job
from shopjobs.pages import go_to, render_page, wants_part


@job_view("measure", to_post="order")
def job_bought(request: SignedInRequest, job: Job) -> HttpResponse:
    """Show the fronts that are bought; check off what came of a line, or take that back."""
    schedule = schedule_of(job)
    form = ReceiptForm(posted(request), line_of=received(job, schedule).line)
    return form_answer(
        request,
        form,
        show=partial(_page, request, job, schedule, form),
        save=partial(_mark, request, job, schedule, form),
        done=lambda _: _marked(request, job, schedule),
    )


@job_view("measure", "GET")
def job_bought_csv(request: SignedInRequest, job: Job) -> HttpResponse:
    """The list as a file for a spreadsheet."""
    return bought_csv(job, _list(request, job, schedule_of(job)))


@job_view("measure", "GET")
def job_bought_xlsx(request: SignedInRequest, job: Job) -> HttpResponse:
    """The list as a spreadsheet's own file."""
    return bought_xlsx(job, _list(request, job, schedule_of(job)))


def _mark(request: SignedInRequest, job: Job, schedule: Schedule, form: ReceiptForm) -> None:
    asked, by_whom = form.cleaned_data, who(request)
    item = asked["item"]
    match asked["mark"]:
        case "check":
            fronts_receive(
                job=job, schedule=schedule, line=item, count=asked["came"], note=asked["note"],
                **by_whom,
            )  # fmt: skip
        case "uncheck":
            receipt_take_back(job=job, schedule=schedule, line=item, **by_whom)
        case _:
            gone = (row for row in received(job, schedule).gone if str(row.pk) == item)
            receipt = next(gone, None)
            if receipt is None:
                raise ValidationError("That front is off the list already.")
            receipt_drop(job=job, receipt=receipt, **by_whom)


def _marked(request: SignedInRequest, job: Job, schedule: Schedule) -> HttpResponse:
    if wants_part(request):
        return announce_change(_page(request, job, schedule, ReceiptForm()))
    return go_to(request, "fronts:job-bought", job.pk)


def _page(
    request: SignedInRequest,
    job: Job,
    schedule: Schedule,
    form: ReceiptForm,
    *,
    status: int = 200,
) -> HttpResponse:
    bought = _list(request, job, schedule)
    context = {
        "job": job,
        "step": "order",
        "bought": bought,
        "waits": what_it_waits_for(job),
        "lines": [(row, _line_form(row, form)) for row in bought.rows],
        "stops": blocking_findings(request, job, schedule),
        "form": form,
    }
    return render_page(
        request, "fronts/bought/page.html", context, partial="bought-list", status=status
    )


def _list(request: SignedInRequest, job: Job, schedule: Schedule) -> BoughtList:
    ways = Ways(job, keys_by_label(job), may_edit=may(request.user, "edit_kitchen"))
    return bought_list(received(job, schedule), job.unit, ways.front)


def _line_form(row: Row, sent: ReceiptForm) -> ReceiptForm:
    """The line's form; the one that was refused keeps what was typed."""
    name = row.received.line.front.short_name
    if sent.is_bound and sent.data.get("item") == name:
        sent.auto_id = f"{row.key}-%s"
        return sent
    return ReceiptForm(initial={"item": name, "came": row.missing}, auto_id=f"{row.key}-%s")
