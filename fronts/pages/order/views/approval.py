"""Approving the list, and deciding on what the kitchen changed of it since."""

from functools import partial

from django.http import HttpResponse

from fronts.models import OrderApproval
from fronts.pages.order.forms.order import ApproveForm, ChangesForm
from fronts.pages.order.views.page import answered, approve_form, changes_form, order_page
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import job_view, who
from fronts.rules.results import Schedule
from fronts.selectors.order_progress import order_progress
from fronts.selectors.orders import order_lines
from fronts.selectors.schedules import schedule_of
from fronts.services.order_approvals import (
    differences_settle,
    order_approval_take_back,
    order_approve,
)
from shopjobs.access import SignedInRequest
from shopjobs.models import Job


@job_view("order", "POST")
def order_approve_now(request: SignedInRequest, job: Job) -> HttpResponse:
    """Approve the list as it was seen, or take that back."""
    schedule = schedule_of(job)
    form = approve_form(job, order_lines(job, schedule), order_progress(job), request.POST)
    return form_answer(
        request,
        form,
        show=partial(order_page, request, job, schedule, form),
        save=partial(_approve, request, job, schedule, form),
        done=lambda _: answered(request, job, schedule),
    )


def _approve(
    request: SignedInRequest, job: Job, schedule: Schedule, form: ApproveForm
) -> OrderApproval | None:
    if form.cleaned_data["what"] == "approve":
        return order_approve(job=job, schedule=schedule, **who(request))
    order_approval_take_back(job=job, **who(request))
    return None


@job_view("order", "POST")
def order_changes_settle(request: SignedInRequest, job: Job) -> HttpResponse:
    """Order, accept or dismiss the changes that were ticked."""
    schedule = schedule_of(job)
    form = changes_form(job, order_progress(job), request.POST)
    return form_answer(
        request,
        form,
        show=partial(order_page, request, job, schedule, form),
        save=partial(_settle, request, job, schedule, form),
        done=lambda _: answered(request, job, schedule),
    )


def _settle(
    request: SignedInRequest, job: Job, schedule: Schedule, form: ChangesForm
) -> OrderApproval:
    asked = form.cleaned_data
    return differences_settle(
        job=job, schedule=schedule, looked_at=asked["line"], kind=asked["kind"],
        note=asked["note"], **who(request),
    )  # fmt: skip
