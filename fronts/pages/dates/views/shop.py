"""The shop's calendar: weekdays, the days that stages take, jobs at once, closed days."""

from functools import partial

from django.contrib import messages
from django.http import HttpResponse
from django.utils import timezone
from django.views.decorators.http import require_http_methods, require_POST

from fronts.models import ClosedDays, ShopDates
from fronts.pages.dates.forms import ClosedDaysForm, ShopDatesForm
from fronts.pages.shared.form_answer import form_answer
from fronts.pages.shared.job_view import found_or_404, posted, who
from fronts.selectors.dates import closed_days_of, shop_dates_of
from fronts.services.dates import (
    closed_days_add,
    closed_days_change,
    closed_days_delete,
    shop_dates_set,
)
from shopjobs.access import SignedInRequest, in_turn, needs
from shopjobs.edit_conflict import last_writer
from shopjobs.forms.house import unsaved
from shopjobs.pages import go_to, render_page

PAGE, CLOSED = "fronts/dates/shop.html", "fronts/dates/closed.html"
METHODS = ("GET", "HEAD", "POST")


@needs("jobs")
@require_http_methods(METHODS)
@in_turn
def shop_dates(request: SignedInRequest) -> HttpResponse:
    """Show and change on which weekdays the shop works, how long stages take, jobs at once."""
    form = _dates_form(request)
    return form_answer(
        request,
        form,
        show=partial(_page, request, form, ClosedDaysForm()),
        save=lambda: shop_dates_set(shop=request.shop, facts=form.entered, **who(request)),
        done=lambda _: _saved(request, "The shop's days are saved."),
    )


def _dates_form(request: SignedInRequest, *, blank: bool = False) -> ShopDatesForm:
    sent = None if blank else posted(request)
    form = ShopDatesForm(sent, said=shop_dates_of(request.shop), auto_id="shop-dates-%s")
    rows = ShopDates.objects.filter(shop=request.shop)
    form.written_by = lambda column: last_writer(request.shop, list(rows), column)
    return form


@needs("jobs")
@require_POST
@in_turn
def closed_new(request: SignedInRequest) -> HttpResponse:
    """The shop is closed for some days."""
    form = ClosedDaysForm(posted(request))
    return form_answer(
        request,
        form,
        show=partial(_page, request, _dates_form(request, blank=True), form),
        save=lambda: closed_days_add(shop=request.shop, facts=form.entered, **who(request)),
        done=lambda row: _saved(request, f"Closed: {row.name}."),
    )


@needs("jobs")
@require_http_methods(METHODS)
@in_turn
def closed_page(request: SignedInRequest, closed_id: int) -> HttpResponse:
    """Show a time at which the shop is closed, and change it."""
    row = _closed(request, closed_id)
    form = ClosedDaysForm(posted(request), row=row)
    form.written_by = partial(last_writer, request.shop, [row])
    context = {"form": form, "row": row}
    return form_answer(
        request,
        form,
        show=lambda status=200: render_page(
            request, CLOSED, context, status=unsaved(form) if form.is_bound else status
        ),
        save=lambda: closed_days_change(
            row=_closed(request, closed_id), facts=form.entered, **who(request)
        ),
        done=lambda row: _saved(request, f"Closed: {row.name}."),
    )


@needs("jobs")
@require_POST
@in_turn
def closed_delete_now(request: SignedInRequest, closed_id: int) -> HttpResponse:
    """The shop is open then after all."""
    row = _closed(request, closed_id)
    closed_days_delete(row=row, **who(request))
    return _saved(request, f"Not closed any more: {row.name}.")


def _closed(request: SignedInRequest, key: int) -> ClosedDays:
    row = found_or_404(closed_days_of(request.shop).get, pk=key)
    row.shop = request.shop
    return row


def _saved(request: SignedInRequest, words: str) -> HttpResponse:
    messages.success(request, words)
    return go_to(request, "fronts:shop-dates")


def _page(
    request: SignedInRequest, form: ShopDatesForm, closed: ClosedDaysForm, *, status: int = 200
) -> HttpResponse:
    today, rows = timezone.localdate(), list(closed_days_of(request.shop))
    sent = form if form.is_bound else closed
    context = {
        "form": sent,
        "dates_form": form,
        "closed_form": closed,
        "closed": [each for each in rows if each.last >= today],
        "closed_before": [each for each in reversed(rows) if each.last < today],
    }
    status = unsaved(sent) if sent.is_bound else status
    return render_page(request, PAGE, context, status=status)
