"""What was sent to suppliers, and what came of it."""

from functools import partial

from django.http import Http404, HttpResponse

from fronts.models import OrderSending
from fronts.pages.order.forms.order import ReceiveForm, SendForm
from fronts.pages.order.views.page import (
    answered,
    order_page,
    receive_form,
    send_form,
    sending_form,
)
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import job_view, who
from fronts.selectors.order_progress import Sent, order_progress
from fronts.selectors.schedules import schedule_of
from fronts.services.order_arrivals import last_arrival_take_back, lines_receive
from fronts.services.order_sendings import order_send, sending_change, sending_take_back
from shopjobs.access import SignedInRequest
from shopjobs.models import Job


def _sent_or_404(job: Job, key: int) -> Sent:
    for sent in order_progress(job).sent:
        if sent.row.pk == key:
            return sent
    raise Http404


@job_view("order", "POST")
def order_send_now(request: SignedInRequest, job: Job) -> HttpResponse:
    """Write down that lines went to a supplier."""
    schedule, form = schedule_of(job), send_form(job, order_progress(job), request.POST)
    return form_answer(
        request,
        form,
        show=partial(order_page, request, job, schedule, form),
        save=partial(_send, request, job, form),
        done=lambda _: answered(request, job, schedule),
    )


def _send(request: SignedInRequest, job: Job, form: SendForm) -> OrderSending:
    asked = form.cleaned_data
    return order_send(
        job=job, supplier=asked["supplier"], reference=asked["reference"],
        sent_on=asked["sent_on"], amounts=form.amounts, **who(request),
    )  # fmt: skip


@job_view("order", "POST")
def order_sending_change(request: SignedInRequest, job: Job, sending_id: int) -> HttpResponse:
    """Say otherwise where an order went, when, or under which reference."""
    schedule, sent = schedule_of(job), _sent_or_404(job, sending_id)
    form = sending_form(job, sent, request.POST)
    return form_answer(
        request,
        form,
        show=partial(order_page, request, job, schedule, form, at=sending_id),
        save=lambda: sending_change(
            sending=sent.row, supplier=form.cleaned_data["supplier"],
            reference=form.cleaned_data["reference"], sent_on=form.cleaned_data["sent_on"],
            **who(request),
        ),
        done=lambda _: answered(request, job, schedule),
    )  # fmt: skip


@job_view("order", "POST")
def order_sending_take_back(request: SignedInRequest, job: Job, sending_id: int) -> HttpResponse:
    """It was not sent after all."""
    schedule, sent = schedule_of(job), _sent_or_404(job, sending_id)
    form = sending_form(job, sent, request.POST, taken_back=True)
    return form_answer(
        request,
        form,
        show=partial(order_page, request, job, schedule, form, at=sending_id),
        save=lambda: sending_take_back(job=job, sent=sent, **who(request)),
        done=lambda _: answered(request, job, schedule),
    )


@job_view("order", "POST")
def order_receive_now(request: SignedInRequest, job: Job, sending_id: int) -> HttpResponse:
    """Write down what came, or take back what was written down last."""
    schedule, sent = schedule_of(job), _sent_or_404(job, sending_id)
    form = receive_form(job, sent, request.POST)
    show = partial(order_page, request, job, schedule, form, at=sending_id)
    return form_answer(
        request,
        form,
        show=show,
        save=partial(_receive, request, job, sent, form),
        done=lambda _: answered(request, job, schedule),
        ask=lambda asks: show(status=422, question=asks.message),
    )


def _receive(request: SignedInRequest, job: Job, sent: Sent, form: ReceiveForm) -> None:
    asked = form.cleaned_data
    if asked["what"] == "take back":
        last_arrival_take_back(job=job, sent=sent, **who(request))
        return
    lines_receive(
        job=job, sent=sent, amounts=form.amounts, came_on=asked["came_on"], note=asked["note"],
        confirmed=asked["confirmed"], **who(request),
    )  # fmt: skip
